// Case files: open, save, recent and never saved cases.
#include "app/document/case_file.h"
#include "app/library/ui/library_window.h"
#include "app/models/recent_cases.h"
#include "app/window/main_window.h"

#include <QAction>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>

namespace gauge::app {

void MainWindow::addCaseActions(QMenu& file) {
    file.addAction(tr("Open &case …"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O), this, &MainWindow::chooseCase);
    QMenu* recent = file.addMenu(tr("&Recent cases"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(*recent); });
    file.addSeparator();
    file.addAction(tr("&Save"), QKeySequence::Save, this, &MainWindow::saveCase);
    file.addAction(tr("Save &as …"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), this, &MainWindow::saveCaseAs);
    file.addAction(tr("&Images of the case are in …"), this, &MainWindow::findImages);
    m_library = std::make_unique<LibraryWindow>(m_session, this);
    file.addSeparator();
    file.addActions(m_library->actions());
    connect(&m_session, &Session::imagesMissing, this, &MainWindow::findImages, Qt::QueuedConnection);
}

void MainWindow::fillRecent(QMenu& menu) {
    menu.clear();
    for (const RecentCase& one : readRecentCases(m_settings.recentCases()) + readLeftCases(unsavedFolder())) {
        QAction* action = menu.addAction(recentWords(one, m_state.namesHidden()).replace(QLatin1Char('\n'), QStringLiteral(" · ")),
                                         this, [this, one] { one.isLeft ? void(m_session.openLeftCase(one.path)) : openCase(one.path); });
        action->setEnabled(one.problem.isEmpty());
    }
    if (menu.isEmpty()) menu.addAction(tr("No case was opened yet"))->setEnabled(false);
}

void MainWindow::chooseCase() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a case"), startFolder(),
                                                      tr("Cases (*.json);;All files (*)"));
    if (!path.isEmpty()) openCase(path);
}

void MainWindow::openCase(const QString& path) {
    if (m_session.openCase(path)) m_settings.addRecentCase(QFileInfo(path).absoluteFilePath());
    refreshOpen();
}

/// Where file dialogs begin. The name of the folder used last often tells the patient.
QString MainWindow::startFolder() const {
    return m_state.namesHidden() ? QDir::homePath() : m_settings.lastFolder();
}

void MainWindow::saveCase() {
    if (m_session.document().path().isEmpty())
        saveCaseAs();
    else
        m_session.saveCase();
    refreshTitle();
}

void MainWindow::saveCaseAs() {
    QString path = QFileDialog::getSaveFileName(this, tr("Save the case"), startFolder(), tr("Cases (*.json)"));
    if (path.isEmpty()) return;
    if (!path.endsWith(QLatin1String(".json"))) path += QStringLiteral(".case.json");
    if (m_session.saveCase(path)) m_settings.addRecentCase(QFileInfo(path).absoluteFilePath());
    refreshTitle();
}

void MainWindow::findImages() {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Folder with the images of the case"), startFolder());
    if (!folder.isEmpty()) m_session.findImagesIn(folder);
}

} // namespace gauge::app
