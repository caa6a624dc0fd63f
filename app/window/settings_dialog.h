// What the person may set once for all cases. Every change holds at once and is kept; the language from the next start.
#pragma once

#include "app/models/view_state.h"
#include "app/settings/settings.h"

#include <QDialog>

class QFormLayout;

namespace gauge::app {

class SettingsDialog : public QDialog {
    Q_OBJECT
public:
    SettingsDialog(Settings& settings, ViewState& state, QWidget* parent = nullptr);

signals:
    /// "dark", "light" or "system".
    void themeChosen(const QString& theme);
    void autosaveChanged(bool on);

private:
    void addScreen(QFormLayout& form);
    void addCases(QFormLayout& form);
    void addPictures(QFormLayout& form);

    Settings& m_settings;
    ViewState& m_state;
};

} // namespace gauge::app
