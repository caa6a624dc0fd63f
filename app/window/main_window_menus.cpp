// Menus and shortcuts of the main window.
#include "app/drawing/mark_roles.h"
#include "app/interaction/tool_actions.h"
#include "app/panels/marks_panel.h"
#include "app/panels/comparison_panel.h"
#include "app/panels/decision_tabs.h"
#include "app/views/cross_section_view.h"
#include "app/window/appendage_page.h"
#include "app/window/help_pages.h"
#include "app/window/main_window.h"
#include "app/window/page_shelf.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <QUndoStack>

namespace gauge::app {

void MainWindow::makeMenus() {
    makeFileMenu();
    makeEditMenu();
    makeViewMenu();
    makeMeasureMenu();
    makeHelpMenu();
}

void MainWindow::makeFileMenu() {
    QMenu* file = menuBar()->addMenu(tr("&File"));
    file->addAction(tr("&Open folder …"), QKeySequence::Open, this, &MainWindow::chooseFolder);
    addCaseActions(*file);
    file->addSeparator();
    addReportActions(*file);
    file->addSeparator();
    addExchangeActions(*file);
    file->addSeparator();
    QAction* quit = file->addAction(tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), this, &QWidget::close);
    quit->setMenuRole(QAction::QuitRole);
}

void MainWindow::makeEditMenu() {
    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    QUndoStack& stack = m_session.document().undoStack();
    QAction* undo = edit->addAction(tr("&Undo"), &stack, &QUndoStack::undo);
    QAction* redo = edit->addAction(tr("&Redo"), &stack, &QUndoStack::redo);
    undo->setShortcuts(QKeySequence::Undo);
    redo->setShortcuts(QKeySequence::Redo);
    undo->setObjectName("undo");
    redo->setObjectName("redo");
    undo->setEnabled(stack.canUndo());
    redo->setEnabled(stack.canRedo());
    connect(&stack, &QUndoStack::canUndoChanged, undo, &QAction::setEnabled);
    connect(&stack, &QUndoStack::canRedoChanged, redo, &QAction::setEnabled);
    // What would be undone, in the words of the command.
    connect(&stack, &QUndoStack::undoTextChanged, undo,
            [this, undo](const QString& what) { undo->setText(what.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(what)); });
    connect(&stack, &QUndoStack::redoTextChanged, redo,
            [this, redo](const QString& what) { redo->setText(what.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(what)); });
    edit->addSeparator();
    edit->addActions(m_values->actions());
    edit->addSeparator();
    edit->addActions(m_decision->actions());
    edit->addSeparator();
    edit->addAction(tr("&Settings …"), QKeySequence(Qt::CTRL | Qt::Key_Comma), this, &MainWindow::showSettings);
}

void MainWindow::makeViewMenu() {
    QMenu* view = menuBar()->addMenu(tr("&View"));
    for (const PageShelf::Entry& entry : m_shelf->entries())
        view->addAction(entry.show);
    view->addAction(tr("Change between appendage axis and scanner axes"), QKeySequence(Qt::Key_T), this, [this] {
        m_state.setPage(m_state.page() == Page::Scanner ? Page::Appendage : Page::Scanner);
    });
    view->addSeparator();
    view->addAction(tr("Cross-section at the ostium"), QKeySequence(Qt::Key_O), &m_state, &ViewState::showOstium);
    view->addAction(tr("Cross-section at the landing zone"), QKeySequence(Qt::Key_L), &m_state,
                    &ViewState::showLanding);
    view->addAction(tr("&Fit all views"), QKeySequence(Qt::Key_R), this, &MainWindow::resetViews);
    view->addMenu(tr("&Picture"))->addActions(pictureActions(m_state, this));
    view->addSeparator();
    QMenu* themes = view->addMenu(tr("&Theme"));
    auto* group = new QActionGroup(this);
    const QString present = m_settings.theme();
    for (const auto& [name, words] :
         {std::pair(QStringLiteral("dark"), tr("&Dark, for the reading room")),
          std::pair(QStringLiteral("light"), tr("&Light, for print and bright rooms")),
          std::pair(QStringLiteral("system"), tr("As the &system"))}) {
        QAction* action = themes->addAction(words, this, [this, name = name] { useTheme(name); });
        action->setCheckable(true);
        action->setChecked(name == present);
        group->addAction(action);
        connect(this, &MainWindow::themeChanged, action, [action, name = name](const QString& chosen) { action->setChecked(name == chosen); });
    }
    QAction* hide = view->addAction(tr("Hide &names"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
    hide->setCheckable(true);
    hide->setChecked(m_state.namesHidden());
    connect(hide, &QAction::toggled, &m_state, &ViewState::setNamesHidden);
    connect(&m_state, &ViewState::namesHiddenChanged, hide, [this, hide] { hide->setChecked(m_state.namesHidden()); });
    view->addSeparator();
    QAction* meeting = view->addAction(tr("&Meeting: large type on the whole screen"), QKeySequence(Qt::Key_F11));
    meeting->setCheckable(true);
    connect(meeting, &QAction::triggered, this,
            [this](bool on) { m_state.setMode(on ? ViewState::Mode::Meeting : ViewState::Mode::Reading); });
    connect(&m_state, &ViewState::modeChanged, meeting,
            [this, meeting] { meeting->setChecked(m_state.mode() == ViewState::Mode::Meeting); });
    view->addAction(tr("&Whole screen"), QKeySequence(Qt::SHIFT | Qt::Key_F11), this,
                    [this] { isFullScreen() ? showNormal() : showFullScreen(); });
    addActions({meeting, hide}); // also while the menu bar is hidden
}

void MainWindow::makeMeasureMenu() {
    m_measureMenu = menuBar()->addMenu(tr("&Measure"));
    for (const core::MarkKind kind : core::kMarkKinds) {
        const auto key = static_cast<Qt::Key>(Qt::Key_0 + MarksPanel::keyOf(kind));
        m_measureMenu->addAction(tr("Mark: %1").arg(wordOf(roleOf(kind))), QKeySequence(key), this,
                                 [this, kind] { m_marks->toggle(kind); });
    }
    m_measureMenu->addAction(tr("Leave marking"), QKeySequence(Qt::Key_Escape), this,
                             [this] { m_state.arm(std::nullopt); });
    m_measureMenu->addSeparator();
    m_measureMenu->addAction(tr("&Confirm or release the ostium"), QKeySequence(Qt::Key_C), this, [this] {
        if (m_session.record().ostium)
            m_session.releaseOstium();
        else
            m_session.confirmOstium();
    });
    m_measureMenu->addSeparator();
    m_measureMenu->addMenu(tr("&Draw"))->addActions(drawingToolActions(m_state, this));
    m_measureMenu->addMenu(tr("Put into the &table"))->addActions(drawingRoleActions(m_session, m_state, this));
    m_measureMenu->addMenu(tr("&Planes"))->addActions(planeActions(m_session, m_state, this));
    m_measureMenu->addMenu(tr("C&ontour"))->addActions(m_appendage->crossSection().contourActions(this));
    m_measureMenu->addSeparator();
    showTools();
}

void MainWindow::showTools() {
    if (!m_measureMenu) return;
    for (QAction* action : std::as_const(m_pageTools))
        m_measureMenu->removeAction(action);
    const PageShelf::Entry* page = m_shelf->current();
    m_pageTools = page ? page->tools : QList<QAction*>();
    m_measureMenu->addActions(m_pageTools);
}

void MainWindow::makeHelpMenu() {
    QMenu* help = menuBar()->addMenu(tr("&Help"));
    help->addAction(tr("&Help on what is under the pointer"), QKeySequence(Qt::Key_F1), this, &MainWindow::helpOnPointer);
    help->addAction(tr("&Keys"), QKeySequence(Qt::CTRL | Qt::Key_F1), this, [this] { showKeys(this); });
    help->addAction(tr("&Cautions"), this, [this] { showCautions(this); });
    help->addAction(tr("&About and licences"), this, [this] { showAbout(this); });
}

} // namespace gauge::app
