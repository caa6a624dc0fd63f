// What the person may set once for all cases. Every change holds at once and is kept; the language from the next start. Units
// cannot be chosen: mm, mm², mL and mmHg everywhere, so that one figure looks alike on every screen of a team.
#pragma once

#include "app/models/view_state.h"
#include "app/settings/settings.h"

#include <QDialog>
#include <functional>

class QFormLayout;
class QLineEdit;
class QTabWidget;

namespace gauge::app {

class SettingsDialog : public QDialog {
    Q_OBJECT
public:
    SettingsDialog(Settings& settings, ViewState& state, QWidget* parent = nullptr);
    QTabWidget& parts() { return *m_parts; }

signals:
    /// "dark", "light" or "system".
    void themeChosen(const QString& theme);
    void textSizeChosen(int percent);
    void autosaveChanged(bool on);

private:
    QFormLayout& addPart(const QString& title);
    void addScreen(QFormLayout& form);
    void addPerson(QFormLayout& form);
    void addCases(QFormLayout& form);
    void addReports(QFormLayout& form);
    /// A line for a path, with a button that looks for one; `choose` returns it, or nothing.
    QLineEdit* addPath(QFormLayout& form, const QString& label, const QString& tip, const std::function<QString()>& choose);

    Settings& m_settings;
    ViewState& m_state;
    QTabWidget* m_parts;
};

} // namespace gauge::app
