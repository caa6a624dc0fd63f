// What the program remembers between runs. One table: key, type, default, meaning. A value equal to its
// default is not written; keys of other versions are left alone.
//
//   key                       type    default   meaning
//   window/geometry           bytes   none      place and size of the main window
//   window/cautions-dismissed text    ""        version whose caution strip was dismissed
//   folders/last              text    ""        folder from which images were opened last
#pragma once

#include <QByteArray>
#include <QSettings>
#include <QString>

namespace gauge::app {

class Settings {
public:
    QByteArray windowGeometry() const;
    void setWindowGeometry(const QByteArray& geometry);
    QString cautionsDismissed() const;
    void setCautionsDismissed(const QString& version);
    QString lastFolder() const;
    void setLastFolder(const QString& folder);

private:
    void store(const QString& key, const QVariant& value, const QVariant& standard);
    QSettings m_store;
};

} // namespace gauge::app
