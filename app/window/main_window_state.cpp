// Title, theme, mode and the room of the parts of the main window.
#include "app/window/main_window.h"
#include "app/window/meeting_view.h"
#include "app/window/settings_dialog.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QMenuBar>
#include <QSplitter>
#include <QStackedWidget>

namespace gauge::app {

/// What the case is called; without names only what kind of images it rests on.
void MainWindow::refreshTitle() {
    const LoadedImages* images = m_session.images();
    const auto& patient = m_session.record().patient;
    QString what;
    if (m_state.namesHidden())
        what = images ? tr("Case without names") : QString();
    else if (patient && !patient->content.title.empty())
        what = QString::fromStdString(patient->content.title);
    else if (images)
        what = QString::fromStdString(images->index->series[images->series].description);
    setWindowTitle(what.isEmpty() ? tr("Ostium Gauge") : tr("%1 — Ostium Gauge").arg(what));
}

void MainWindow::useTheme(const QString& setting) {
    m_settings.setTheme(setting);
    applyTheme(*qApp, themeFrom(setting));
    emit themeChanged(setting);
}

void MainWindow::makeMeeting() {
    m_meeting = new MeetingView(m_session, m_state, m_answers);
    m_whole->addWidget(m_meeting);
    connect(m_meeting, &MeetingView::left, this, [this] { m_state.setMode(ViewState::Mode::Reading); });
}

void MainWindow::refreshMode() {
    const bool meeting = m_state.mode() == ViewState::Mode::Meeting;
    menuBar()->setVisible(!meeting);
    if (meeting) {
        m_wasMaximized = isMaximized();
        showFullScreen();
    } else {
        m_wasMaximized ? showMaximized() : showNormal();
    }
    m_whole->setCurrentIndex(meeting ? 1 : 0);
}

void MainWindow::showSettings() {
    auto* dialog = new SettingsDialog(m_settings, m_state, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &SettingsDialog::themeChosen, this, &MainWindow::useTheme);
    dialog->show();
}

void MainWindow::restorePlaces() {
    resize(1440, 900);
    restoreGeometry(m_settings.windowGeometry());
    for (QSplitter* splitter : {m_body, m_left, m_right})
        splitter->setObjectName(splitter == m_body ? "body" : splitter == m_left ? "left" : "right");
    for (QSplitter* splitter : {m_body, m_left, m_right})
        splitter->restoreState(m_settings.splitter(splitter->objectName()));
}

void MainWindow::keepPlaces() {
    m_settings.setWindowGeometry(saveGeometry());
    for (const QSplitter* splitter : {m_body, m_left, m_right})
        m_settings.setSplitter(splitter->objectName(), splitter->saveState());
}

} // namespace gauge::app
