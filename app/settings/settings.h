// What the program remembers between runs. One table: key, type, default, meaning. A value equal to its
// default is not written; keys of other versions are left alone.
//
//   key                       type    default    meaning
//   window/geometry           bytes   none       place and size of the main window
//   window/splitter/NAME      bytes   none       how the parts of the window share their room
//   window/cautions-dismissed text    ""         version whose caution strip was dismissed
//   folders/last              text    ""         folder from which images were opened last
//   cases/recent              texts   none       case files opened or saved last, newest first
//   screen/language           text    ""         "en", "de", "fr"; empty: that of the system
//   screen/theme              text    "dark"     "dark", "light", "system"
//   screen/text-size          int     100        size of letters in per cent: 100, 115 or 130
//   screen/names-hidden       bool    false      name-free from the start
//   cases/autosave            bool    true       unsaved work is kept in a file beside the settings
//   cases/unsaved-folder      text    ""         where unsaved work is kept; empty: in the person's data folder
//   cases/library             text    ""         how the case library is kept; empty: the program decides
//   person/author             text    ""         name written into journals and reports; empty: the system's user
//   person/role               text    ""         put behind the name where a decision is signed
//   sizing/chart              text    ""         chart file that a new case begins with; empty: none
//   surface/drawing           text    ""         who draws the surface: "opengl", "processor"; empty: the program decides
//   c-arm/source-isocentre    number  0          mm from the source to the isocentre, for simulated radiographs; 0: assumed
//   c-arm/source-detector     number  0          mm from the source to the detector; 0: assumed
//   pictures/dpi              int     150        of pictures and printed pages, 72 to 600
#pragma once

#include <QByteArray>
#include <QSettings>
#include <QString>
#include <QStringList>

namespace gauge::app {

class Settings {
public:
    QByteArray windowGeometry() const;
    void setWindowGeometry(const QByteArray& geometry);
    QByteArray splitter(const QString& name) const;
    void setSplitter(const QString& name, const QByteArray& state);
    QString cautionsDismissed() const;
    void setCautionsDismissed(const QString& version);
    QString lastFolder() const;
    void setLastFolder(const QString& folder);
    QStringList recentCases() const;
    /// Puts the path first and keeps the ten newest.
    void addRecentCase(const QString& path);
    void removeRecentCase(const QString& path);
    void clearRecentCases();

    QString language() const;
    void setLanguage(const QString& language);
    QString theme() const;
    void setTheme(const QString& theme);
    int textPercent() const;
    void setTextPercent(int percent);
    bool namesHidden() const;
    void setNamesHidden(bool hidden);
    bool autosave() const;
    void setAutosave(bool on);
    QString unsavedFolder() const;
    void setUnsavedFolder(const QString& folder);
    QString library() const;
    void setLibrary(const QString& kind);
    QString author() const;
    void setAuthor(const QString& name);
    QString role() const;
    void setRole(const QString& role);
    QString defaultChart() const;
    void setDefaultChart(const QString& path);
    QString surfaceDrawing() const;
    double sourceToIsocentreMm() const;
    void setSourceToIsocentreMm(double mm);
    double sourceToDetectorMm() const;
    void setSourceToDetectorMm(double mm);
    int dpi() const;
    void setDpi(int dpi);

private:
    void store(const QString& key, const QVariant& value, const QVariant& standard);
    QSettings m_store;
};

} // namespace gauge::app
