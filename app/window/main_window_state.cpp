// Title, theme, mode and the room of the parts of the main window.
#include "app/document/case_file.h"
#include "app/document/seats.h"
#include "app/views/radiograph_view.h"
#include "app/window/help_pages.h"
#include "app/window/main_window.h"
#include "app/window/meeting_view.h"
#include "app/window/settings_dialog.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QCursor>
#include <QFileInfo>
#include <QMessageBox>
#include <QMenuBar>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>
#include <cmath>

namespace gauge::app {

/// What the case is called, with a mark while the case file does not hold all that was done; without names nothing that tells it.
void MainWindow::refreshTitle() {
    const LoadedImages* images = m_session.images();
    const CaseDocument& document = m_session.document();
    const auto& patient = m_session.record().patient;
    QString what;
    if (m_state.namesHidden())
        what = isOpen() ? tr("Case without names") : QString();
    else if (patient && !patient->content.title.empty())
        what = QString::fromStdString(patient->content.title);
    else if (!document.path().isEmpty())
        what = QFileInfo(document.path()).fileName().remove(QLatin1String(kCaseSuffix));
    else if (images)
        what = QString::fromStdString(images->index->series[images->series].description);
    else if (isOpen())
        what = tr("New case");
    setWindowTitle(what.isEmpty() ? tr("Ostium Gauge") : tr("%1[*] — Ostium Gauge").arg(what));
    setWindowModified(!what.isEmpty() && (document.hasUnsavedWork() || (!document.path().isEmpty() && !document.isInCaseFile())));
}

bool MainWindow::isWorking() const {
    if (m_session.isLoading() || m_session.isMeasuring() || m_answers.isWorking() || m_answers.seats().isWorking() || m_planner.isWorking() || m_sample.isRunning()) return true;
    for (const RadiographView* view : findChildren<RadiographView*>())
        if (view->isVisible() && view->isWorking()) return true;
    for (const auto& [id, entry] : m_session.record().evidence)
        if (const auto cine = m_images.openCine(id); cine && !cine->data() && !cine->failure()) return true;
    return false;
}

void MainWindow::helpOnPointer() {
    const QWidget* there = QApplication::widgetAt(QCursor::pos());
    if (!there || there->window() != this) there = QApplication::focusWidget();
    showHelp(this, helpTopicOf(there));
}

void MainWindow::useTheme(const QString& setting) {
    m_settings.setTheme(setting);
    applyTheme(*qApp, themeFrom(setting));
    emit themeChanged(setting);
}

void MainWindow::useTextSize(int percent) {
    setTextScale(percent / 100.0);
    applyTheme(*qApp, themeFrom(m_settings.theme()));
    setLeastWidths();
}

/// What the editors of the course, and the tables at the right, need at the letters of now: with the usual ones the window fits 1280
/// pixels in every language, with the largest 1600.
void MainWindow::setLeastWidths() {
    constexpr double kLeastCoursePx = 510.0, kLeastRightPx = 422.0; // with the usual letters
    m_shelf->entry(Page::Course)->widget->setMinimumWidth(static_cast<int>(std::lround(kLeastCoursePx * textScale())));
    m_right->setMinimumWidth(static_cast<int>(std::lround(kLeastRightPx * textScale())));
}

/// Work that is kept is offered again; only what nothing keeps is asked about.
bool MainWindow::mayLeaveCase() {
    if (m_settings.autosave() || !m_session.document().hasUnsavedWork()) return true;
    const auto answer = QMessageBox::question(
        this, tr("Unsaved work"), tr("This case was never saved, and unsaved work is not kept: the settings say so. Save it now?"),
        QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Save);
    if (answer == QMessageBox::Save) saveCase();
    return answer == QMessageBox::Discard || (answer == QMessageBox::Save && !m_session.document().hasUnsavedWork());
}

void MainWindow::makeMeeting() {
    m_meeting = new MeetingView(m_session, m_state, m_answers, m_images);
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
    connect(dialog, &SettingsDialog::textSizeChosen, this, &MainWindow::useTextSize);
    connect(dialog, &SettingsDialog::autosaveChanged, this,
            [this](bool on) { m_session.document().keepUnsavedIn(on ? unsavedFolder() : QString()); });
    dialog->show();
}

void MainWindow::restorePlaces() {
    resize(QSize(1440, 900).boundedTo(screen()->availableSize()));
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
