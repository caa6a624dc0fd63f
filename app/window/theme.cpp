#include "app/window/theme.h"

#include "app/drawing/palette.h"

#include <QApplication>
#include <QFont>
#include <QPalette>
#include <QStyleFactory>

// Resources of a static library must be asked for, and from the global namespace.
static void initialiseResources() {
    Q_INIT_RESOURCE(ostium_gauge);
}

namespace gauge::app {
namespace {

QPalette darkPalette() {
    QPalette p;
    p.setColor(QPalette::Window, tone::panel);
    p.setColor(QPalette::WindowText, tone::text);
    p.setColor(QPalette::Base, tone::panel);
    p.setColor(QPalette::AlternateBase, tone::raised);
    p.setColor(QPalette::Text, tone::text);
    p.setColor(QPalette::Button, tone::raised);
    p.setColor(QPalette::ButtonText, tone::text);
    p.setColor(QPalette::ToolTipBase, tone::raised);
    p.setColor(QPalette::ToolTipText, tone::text);
    p.setColor(QPalette::Highlight, tone::raised.lighter(150));
    p.setColor(QPalette::HighlightedText, tone::text);
    p.setColor(QPalette::PlaceholderText, tone::faint);
    p.setColor(QPalette::Link, QColor(0x9F, 0xC7, 0xE8));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, QColor(0x6B, 0x74, 0x7E));
    return p;
}

// %1 window, %2 panel, %3 raised, %4 border, %5 text, %6 soft, %7 raised and lighter
constexpr auto kStyle = R"(
QMainWindow, QMainWindow > QWidget { background: %1; }
QLabel#heading { font-weight: 600; font-size: 13px; color: %5; }
QLabel#soft { color: %6; font-size: 12px; }
QLabel#title { font-size: 30px; font-weight: 600; }
QLabel#lead { font-size: 15px; color: %5; }
QToolButton, QPushButton { background: %3; border: 1px solid %4; border-radius: 4px; padding: 4px 10px; color: %5; }
QToolButton:hover, QPushButton:hover { background: %7; }
QToolButton:focus, QPushButton:focus { border-color: %6; }
QToolButton:pressed, QPushButton:pressed { background: %4; }
QToolButton:checked { background: %7; border-color: %5; }
QToolButton:disabled, QPushButton:disabled { color: #6B747E; background: %2; }
QPushButton#primary { background: %5; color: #101316; border-color: %5; font-weight: 600; padding: 9px 18px; font-size: 14px; }
QPushButton#primary:hover { background: #FFFFFF; }
QToolButton#markButton { text-align: left; padding: 3px 6px; background: transparent; border-color: transparent; }
QToolButton#markButton:hover { background: %3; }
QToolButton#markButton:checked { background: %7; border-color: %5; }
QToolButton#markButton:focus { border-color: %6; }
QToolButton#removeButton { background: transparent; border: none; padding: 2px 6px; color: %6; }
QToolButton#removeButton:hover { color: %5; background: %3; }
QToolButton#removeButton:disabled { color: transparent; }
QFrame#messageLine { background: %2; border-top: 1px solid %4; }
QFrame#cautionStrip { background: #2C2715; border-bottom: 1px solid #55491F; }
QFrame#cautionStrip QLabel { color: #F3E3B3; }
QFrame#side { background: %2; }
QWidget#rule { background: %4; }
QSplitter::handle { background: %4; }
QSplitter::handle:horizontal { width: 1px; }
QSplitter::handle:vertical { height: 1px; }
QProgressBar { background: %3; border: none; border-radius: 4px; }
QProgressBar::chunk { background: %6; border-radius: 4px; }
QToolTip { background: %3; color: %5; border: 1px solid %4; padding: 4px 6px; }
QMenuBar { background: %2; border-bottom: 1px solid %4; }
QMenuBar::item { padding: 5px 10px; background: transparent; }
QMenuBar::item:selected { background: %3; }
QMenu { background: %3; border: 1px solid %4; padding: 4px; }
QMenu::item { padding: 5px 28px 5px 22px; border-radius: 3px; }
QMenu::item:selected { background: %7; }
QMenu::item:disabled { color: #7B858F; }
QMenu::separator { height: 1px; background: %4; margin: 4px 8px; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar::handle:vertical { background: %4; border-radius: 4px; min-height: 28px; margin: 1px 2px; }
QScrollBar::handle:vertical:hover { background: %6; }
QScrollBar::add-line, QScrollBar::sub-line { height: 0; width: 0; }
QTextBrowser { background: %2; border: none; }
)";

} // namespace

void applyTheme(QApplication& application) {
    initialiseResources();
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    application.setPalette(darkPalette());
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(12);
    application.setFont(font);
    application.setStyleSheet(QString::fromLatin1(kStyle).arg(
        tone::window.name(), tone::panel.name(), tone::raised.name(), tone::border.name(), tone::text.name(),
        tone::soft.name(), tone::raised.lighter(140).name()));
}

} // namespace gauge::app
