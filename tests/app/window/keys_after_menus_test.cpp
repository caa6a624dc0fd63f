// Single keys still act after a menu was used, on a real screen (Xvfb): the offscreen platform gives the window no focus back
// when a menu closes, so it cannot tell.
#include "app/window/main_window.h"
#include "tests/app/support/synthetic_session.h"

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QTest>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

QAction* entry(const QWidget& menu, const QString& words) {
    for (QAction* action : menu.actions())
        if (action->text().remove(QLatin1Char('&')).startsWith(words)) return action;
    return nullptr;
}

/// By the mouse, through the menu within it.
void choose(MainWindow& window, const QString& title, const QString& inner, const QString& words) {
    QMenuBar* bar = window.menuBar();
    QAction* top = entry(*bar, title);
    ASSERT_TRUE(top);
    QTest::mouseClick(bar, Qt::LeftButton, {}, bar->actionGeometry(top).center());
    QMenu* menu = top->menu();
    ASSERT_TRUE(QTest::qWaitFor([&] { return menu->isVisible(); }));
    QAction* in = entry(*menu, inner);
    ASSERT_TRUE(in && in->menu());
    QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(in).center());
    ASSERT_TRUE(QTest::qWaitFor([&] { return in->menu()->isVisible(); }));
    QAction* action = entry(*in->menu(), words);
    ASSERT_TRUE(action);
    QTest::mouseClick(in->menu(), Qt::LeftButton, {}, in->menu()->actionGeometry(action).center());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !menu->isVisible() && !in->menu()->isVisible(); }));
}

/// As the screen delivers it: to the window that has the focus.
void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    ASSERT_TRUE(QTest::qWaitFor([] { return QGuiApplication::focusWindow() != nullptr; })) << "nothing has the focus";
    QTest::keyClick(QGuiApplication::focusWindow(), key, modifiers);
    QCoreApplication::processEvents();
}

} // namespace

TEST(KeysAfterMenus, TheSlabFollowsItsKeysAfterAMenuWasUsed) {
    MainWindow window;
    window.resize(1200, 800);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    fixture::openAndMeasure(window.session());
    ASSERT_TRUE(fixture::waitUntil([&] { return !window.isWorking(); }));
    key(Qt::Key_BracketRight);
    EXPECT_EQ(window.state().slab().thicknessMm, 1.0) << "before any menu";
    choose(window, QStringLiteral("View"), QStringLiteral("Picture"), QStringLiteral("Thicker slab"));
    EXPECT_EQ(window.state().slab().thicknessMm, 2.0) << "by the menu";
    for (const auto& [one, modifiers] : {std::pair(Qt::Key_BracketRight, Qt::KeyboardModifiers()), std::pair(Qt::Key_PageUp, Qt::KeyboardModifiers(Qt::ControlModifier))})
        key(one, modifiers);
    EXPECT_EQ(window.state().slab().thicknessMm, 4.0) << "by keys after the menu";
    key(Qt::Key_BracketLeft);
    key(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(window.state().slab().thicknessMm, 2.0);
    const auto shows = window.state().slab().shows;
    key(Qt::Key_X);
    EXPECT_NE(window.state().slab().shows, shows);
    key(Qt::Key_Backslash);
    EXPECT_EQ(window.state().slab().shows, shows);
}
