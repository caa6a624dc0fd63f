// Title, theme and the room of the parts of the main window.
#include "app/window/main_window.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QSplitter>

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
