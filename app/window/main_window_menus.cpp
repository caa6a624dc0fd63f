// Menus and shortcuts of the main window.
#include "app/drawing/mark_roles.h"
#include "app/panels/marks_panel.h"
#include "app/panels/value_panel.h"
#include "app/window/help_pages.h"
#include "app/window/main_window.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QUndoStack>

namespace gauge::app {

void MainWindow::makeMenus() {
    QMenu* file = menuBar()->addMenu(tr("&File"));
    file->addAction(tr("Open folder …"), QKeySequence(Qt::CTRL | Qt::Key_O), this, &MainWindow::chooseFolder);
    file->addSeparator();
    file->addAction(tr("Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), this, &QWidget::close);

    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    QUndoStack& stack = m_session.document().undoStack();
    QAction* undo = stack.createUndoAction(this, tr("Undo"));
    undo->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Z));
    QAction* redo = stack.createRedoAction(this, tr("Redo"));
    redo->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z));
    edit->addActions({undo, redo});
    edit->addSeparator();
    edit->addAction(tr("Copy the values"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C), m_values,
                    &ValuePanel::copyTable);

    makeMarkActions();

    QMenu* view = menuBar()->addMenu(tr("&View"));
    view->addAction(
        tr("Change between appendage axis and scanner axes"), QKeySequence(Qt::Key_T), this, [this] {
            m_state.setPage(m_state.page() == ViewState::Page::Scanner ? ViewState::Page::Appendage
                                                                       : ViewState::Page::Scanner);
        });
    view->addAction(tr("Cross-section at the ostium"), QKeySequence(Qt::Key_O), &m_state,
                    &ViewState::showOstium);
    view->addAction(tr("Cross-section at the landing zone"), QKeySequence(Qt::Key_L), &m_state,
                    &ViewState::showLanding);
    view->addAction(tr("Fit all views"), QKeySequence(Qt::Key_R), this, &MainWindow::resetViews);
    view->addSeparator();
    view->addAction(tr("Whole screen"), QKeySequence(Qt::Key_F11), this,
                    [this] { isFullScreen() ? showNormal() : showFullScreen(); });

    QMenu* help = menuBar()->addMenu(tr("&Help"));
    help->addAction(tr("Help: mouse and keys"), QKeySequence(Qt::Key_F1), this, [this] { showHelp(this); });
    help->addAction(tr("Cautions"), this, [this] { showCautions(this); });
    help->addAction(tr("About and licences"), this, [this] { showAbout(this); });
}

void MainWindow::makeMarkActions() {
    QMenu* mark = menuBar()->addMenu(tr("&Mark"));
    for (const core::MarkKind kind : core::kMarkKinds) {
        const auto key = static_cast<Qt::Key>(Qt::Key_0 + MarksPanel::keyOf(kind));
        mark->addAction(wordOf(roleOf(kind)), QKeySequence(key), this,
                        [this, kind] { m_marks->toggle(kind); });
    }
    mark->addAction(tr("Leave marking"), QKeySequence(Qt::Key_Escape), this,
                    [this] { m_state.arm(std::nullopt); });
    mark->addSeparator();
    mark->addAction(tr("Confirm or release the ostium"), QKeySequence(Qt::Key_C), this, [this] {
        if (m_session.record().ostium)
            m_session.releaseOstium();
        else
            m_session.confirmOstium();
    });
}

} // namespace gauge::app
