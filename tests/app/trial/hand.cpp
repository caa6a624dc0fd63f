#include "tests/app/trial/hand.h"

#include "tests/app/trial/sample_stage.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QCompleter>
#include <QDialogButtonBox>
#include <QDir>
#include <QElapsedTimer>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QMouseEvent>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>
#include <QTextEdit>
#include <QTimer>
#include <QWheelEvent>
#include <optional>
#include <gtest/gtest.h>
#include <iostream>

namespace gauge::trial {
namespace {

/// "&Open folder …" as it is read: "Open folder …".
QString read(QString text) {
    text.replace(QStringLiteral("&&"), QStringLiteral("\u0001")).remove(QLatin1Char('&')).replace(QChar(1), QLatin1Char('&'));
    return text.replace(QChar(0x00A0), QLatin1Char(' ')).simplified();
}

/// What names a field for a reader: its accessible name, or the label beside it.
bool isNamed(const QWidget& widget, const QString& label) {
    if (read(widget.accessibleName()) == label) return true;
    for (const QLabel* words : widget.window()->findChildren<QLabel*>())
        if (words->buddy() == &widget && words->isVisible() && read(words->text()) == label) return true;
    return false;
}

QAction* entryOf(const QMenu& menu, const QString& text) {
    for (QAction* action : menu.actions())
        if (read(action->text()) == text && action->isVisible()) return action;
    return nullptr;
}

} // namespace

void Hand::act(const QString& what) {
    m_acts.push_back(what.toStdString());
    QCoreApplication::processEvents();
}

QWidget* Hand::front() const {
    QWidget* modal = QApplication::activeModalWidget();
    return modal ? modal : const_cast<QMainWindow*>(&m_window);
}

/// The one that fits and that a pointer can reach: visible, enabled, scrolled into sight (which is an act where it takes one).
QWidget* Hand::reachable(const QString& what, const std::function<bool(const QWidget&)>& fits) {
    QWidget* hidden = nullptr;
    // What scrolls inside is covered by its viewport, and may be longer than its room: the middle of what is seen of it counts.
    const auto place = [](const QWidget& widget) {
        const auto* area = qobject_cast<const QAbstractScrollArea*>(&widget);
        const QWidget& shown = area ? *area->viewport() : widget;
        const QRegion seen = shown.visibleRegion();
        const QPoint at = area ? seen.boundingRect().center() : shown.rect().center();
        return seen.contains(at) ? std::optional(shown.mapTo(&widget, at)) : std::nullopt;
    };
    for (QWidget* widget : front()->findChildren<QWidget*>()) {
        if (!fits(*widget) || !widget->isVisible()) continue;
        hidden = widget;
        if (!widget->isEnabled()) continue;
        if (!place(*widget)) {
            // Turns the wheel over the part that scrolls.
            for (QWidget* up = widget->parentWidget(); up; up = up->parentWidget())
                if (auto* area = qobject_cast<QScrollArea*>(up)) {
                    area->ensureWidgetVisible(widget, 8, 8);
                    act(QStringLiteral("scroll to “%1”").arg(what));
                }
        }
        const auto at = place(*widget);
        if (!at) continue;
        QWidget* top = front()->childAt(widget->mapTo(front(), *at));
        if (top && (top == widget || widget->isAncestorOf(top))) return widget;
    }
    ADD_FAILURE() << "“" << what.toStdString() << "” " << (hidden ? "cannot be pressed now" : "is nowhere on screen") << ". On screen: "
                  << readable().left(1500).toStdString();
    return nullptr;
}

void Hand::press(QWidget& widget, const QPoint& at, const QString& what) {
    QTest::mouseClick(&widget, Qt::LeftButton, {}, at);
    act(what);
}

void Hand::press(const QString& text) {
    QWidget* button = reachable(text, [&](const QWidget& widget) {
        const auto* one = qobject_cast<const QAbstractButton*>(&widget);
        return one && (read(one->text()) == text || (one->text().isEmpty() && read(one->accessibleName()) == text));
    });
    if (button) press(*button, button->rect().center(), QStringLiteral("press “%1”").arg(text));
}

void Hand::turnTo(const QString& tab) {
    QWidget* bar = reachable(tab, [&](const QWidget& widget) {
        const auto* one = qobject_cast<const QTabBar*>(&widget);
        for (int i = 0; one && i < one->count(); ++i)
            if (read(one->tabText(i)) == tab) return true;
        return false;
    });
    auto* tabs = qobject_cast<QTabBar*>(bar);
    for (int i = 0; tabs && i < tabs->count(); ++i)
        if (read(tabs->tabText(i)) == tab) press(*tabs, tabs->tabRect(i).center(), QStringLiteral("turn to “%1”").arg(tab));
}

void Hand::choose(const QString& menu, const QString& entry) {
    choose(menu, {}, entry);
}

void Hand::choose(const QString& menu, const QString& inner, const QString& entry) {
    auto* bar = m_window.menuBar();
    for (QAction* title : bar->actions()) {
        if (read(title->text()) != menu || !bar->isVisible()) continue;
        QTest::mouseClick(bar, Qt::LeftButton, {}, bar->actionGeometry(title).center());
        act(QStringLiteral("open the menu “%1”").arg(menu));
        QMenu* open = title->menu();
        if (!inner.isEmpty()) {
            QAction* in = entryOf(*open, inner);
            if (!in || !in->menu()) break;
            QTest::mouseClick(open, Qt::LeftButton, {}, open->actionGeometry(in).center());
            act(QStringLiteral("open “%1” in it").arg(inner));
            open = in->menu();
            if (!waitUntil([&] { return open->isVisible(); })) break; // a menu within a menu opens after a moment
        }
        QAction* action = entryOf(*open, entry);
        if (!action || !action->isEnabled() || !open->isVisible()) break;
        m_acts.push_back(QStringLiteral("choose “%1”").arg(entry).toStdString());
        QTest::mouseClick(open, Qt::LeftButton, {}, open->actionGeometry(action).center());
        QCoreApplication::processEvents();
        // A screen gives the focus back when a menu closes; without one nobody does.
        if (!QApplication::activeModalWidget() && !QApplication::activePopupWidget()) m_window.activateWindow();
        return;
    }
    ADD_FAILURE() << "The menu has no “" << menu.toStdString() << " → " << inner.toStdString() << " → " << entry.toStdString() << "” to choose";
}

void Hand::pick(const QString& label, const QString& entry) {
    auto* box = qobject_cast<QComboBox*>(reachable(label, [&](const QWidget& widget) {
        return qobject_cast<const QComboBox*>(&widget) && isNamed(widget, label);
    }));
    if (!box) return;
    press(*box, box->rect().center(), QStringLiteral("open the list “%1”").arg(label));
    for (int i = 0; i < box->count(); ++i) {
        if (!read(box->itemText(i)).contains(entry)) continue;
        QAbstractItemView* list = box->view();
        const QModelIndex at = list->model()->index(i, 0);
        list->scrollTo(at);
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(at).center());
        act(QStringLiteral("take “%1”").arg(entry));
        return;
    }
    ADD_FAILURE() << "The list “" << label.toStdString() << "” has no “" << entry.toStdString() << "”";
}

void Hand::type(const QString& label, const QString& words) {
    QWidget* field = reachable(label, [&](const QWidget& widget) {
        return (qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QPlainTextEdit*>(&widget)) && isNamed(widget, label);
    });
    if (!field) return;
    auto* text = qobject_cast<QPlainTextEdit*>(field);
    press(text ? *text->viewport() : *field, field->rect().center(), QStringLiteral("click into “%1”").arg(label));
    QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(field, words);
    if (!text) QTest::keyClick(field, Qt::Key_Return);
    act(QStringLiteral("type “%1”").arg(words));
}

void Hand::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QWidget* there = QApplication::focusWidget() ? QApplication::focusWidget() : front();
    QTest::keyClick(there, key, modifiers);
    act(QStringLiteral("press the key %1").arg(QKeySequence(QKeyCombination(modifiers, key)).toString()));
}

void Hand::click(QWidget& view, const QPoint& at) {
    EXPECT_TRUE(view.isVisible() && view.visibleRegion().contains(at)) << "a click outside of what is seen";
    press(view, at, QStringLiteral("click on the picture"));
}

void Hand::drag(QWidget& view, const QPoint& from, const QPoint& to, Qt::MouseButton button) {
    constexpr int kSteps = 8;
    QTest::mousePress(&view, button, {}, from);
    for (int step = 1; step <= kSteps; ++step) {
        const QPointF at = QPointF(from) + (QPointF(to) - QPointF(from)) * step / kSteps;
        QMouseEvent move(QEvent::MouseMove, at, view.mapToGlobal(at), Qt::NoButton, button, Qt::NoModifier);
        QCoreApplication::sendEvent(&view, &move);
        QCoreApplication::processEvents();
    }
    QTest::mouseRelease(&view, button, {}, to);
    act(QStringLiteral("drag on the picture"));
}

void Hand::wheel(QWidget& view, const QPoint& at, int notches) {
    QWheelEvent event(at, view.mapToGlobal(QPointF(at)), {}, {0, 120 * notches}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&view, &event);
    act(QStringLiteral("turn the wheel"));
}

void Hand::clickRow(const QString& table, const QString& text) {
    auto* view = qobject_cast<QAbstractItemView*>(reachable(table, [&](const QWidget& widget) {
        return qobject_cast<const QAbstractItemView*>(&widget) && read(widget.accessibleName()) == table;
    }));
    if (!view) return;
    for (int row = 0; row < view->model()->rowCount(); ++row) {
        const QModelIndex at = view->model()->index(row, 0);
        if (!read(at.data().toString()).contains(text)) continue;
        view->scrollTo(at);
        const QPoint centre = view->visualRect(at).center();
        for (QWidget* up = view->parentWidget(); up; up = up->parentWidget())
            if (auto* area = qobject_cast<QScrollArea*>(up); area && !view->viewport()->visibleRegion().contains(centre)) {
                const QPoint inside = view->viewport()->mapTo(area->widget(), centre);
                area->ensureVisible(inside.x(), inside.y(), 20, 40);
                act(QStringLiteral("scroll to “%1”").arg(text));
            }
        EXPECT_TRUE(view->viewport()->visibleRegion().contains(centre)) << "the row is out of sight";
        press(*view->viewport(), centre, QStringLiteral("click the row “%1”").arg(text));
        return;
    }
    ADD_FAILURE() << "“" << table.toStdString() << "” has no row “" << text.toStdString() << "”";
}

void Hand::answerFileDialog(const QString& path, const std::function<void()>& act) {
    int step = 0;
    QTimer timer;
    timer.setInterval(100);
    QObject::connect(&timer, &QTimer::timeout, &timer, [&] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        auto* name = dialog ? dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit")) : nullptr;
        if (!name || !name->isVisible()) return;
        if (step++ == 0) {
            name->setFocus();
            name->selectAll();
            QTest::keyClicks(name, path);
            m_acts.push_back("type the path into the dialog");
            return;
        }
        if (step == 2) m_acts.push_back("confirm it");
        if (name->completer() && name->completer()->popup()) name->completer()->popup()->hide(); // else the click is the list's
        for (QAbstractButton* button : dialog->findChildren<QAbstractButton*>()) {
            auto* box = qobject_cast<QDialogButtonBox*>(button->parentWidget());
            if (box && box->buttonRole(button) == QDialogButtonBox::AcceptRole && button->isEnabled())
                return QTest::mouseClick(button, Qt::LeftButton);
        }
        if (step > 50) dialog->reject(); // the test fails rather than wait for ever
    });
    timer.start();
    act();
    EXPECT_GT(step, 1) << "no dialog asked for a path";
    EXPECT_LE(step, 50) << "the dialog did not take the path";
}

QString Hand::readable() const {
    QStringList words;
    for (const QWidget* widget : front()->findChildren<QWidget*>()) {
        if (!widget->isVisible()) continue;
        if (const auto* label = qobject_cast<const QLabel*>(widget)) words << label->text();
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) words << button->text();
        if (const auto* line = qobject_cast<const QLineEdit*>(widget)) words << line->text();
        if (const auto* text = qobject_cast<const QTextEdit*>(widget)) words << text->toPlainText();
    }
    words.removeAll(QString());
    return read(words.join(QStringLiteral(" | ")));
}

bool Hand::waitUntil(const std::function<bool()>& done) {
    QElapsedTimer clock;
    clock.start();
    const bool came = waitFor(done);
    m_waitedS += 1e-3 * static_cast<double>(clock.elapsed());
    return came;
}

bool Hand::waitForWords(const QString& words) {
    const bool came = waitUntil([&] { return readable().contains(words); });
    EXPECT_TRUE(came) << "“" << words.toStdString() << "” never came. On screen: " << readable().left(1500).toStdString();
    return came;
}

void Hand::look(const QString& name) {
    const QString folder = qEnvironmentVariable("GAUGE_TRIAL_PICTURES");
    if (folder.isEmpty()) return;
    QCoreApplication::processEvents();
    QDir().mkpath(folder);
    m_window.grab().save(QDir(folder).filePath(QStringLiteral("%1-%2.png").arg(++m_pictures, 2, 10, QLatin1Char('0')).arg(name)));
}

void Hand::report(const std::string& title, double secondsAnAct) const {
    std::cout << title << '\n';
    for (const std::string& one : m_acts)
        std::cout << "  " << one << '\n';
    std::cout << "  = " << acts() << " acts, at " << secondsAnAct << " s each " << acts() * secondsAnAct << " s; the program let wait "
              << m_waitedS << " s; together " << acts() * secondsAnAct + m_waitedS << " s\n";
}

} // namespace gauge::trial
