#include "app/window/theme.h"

#include <QApplication>
#include <QFont>
#include <QPalette>
#include <QRegularExpression>
#include <QStyleFactory>
#include <QWidget>
#include <algorithm>
#include <cmath>

// Resources of a static library must be asked for, and from the global namespace.
static void initialiseResources() {
    Q_INIT_RESOURCE(ostium_gauge);
}

namespace gauge::app {
namespace {

/// What the theme puts together from the neutral colours of the palette.
struct Derived {
    QColor hover;       ///< a raised surface under the pointer, or chosen
    QColor outline;     ///< of what can be ticked: 3:1 against what lies around it
    QColor grip;        ///< of scroll bars: the same
    QColor disabled;    ///< words of what cannot be done now: still readable
    QColor primary, onPrimary, primaryHover;
    QColor caution, onCaution, cautionEdge;
};

Derived derived() {
    const bool dark = theme() == Theme::Dark;
    Derived d;
    d.hover = dark ? tone::raised.lighter(140) : tone::raised.darker(110);
    d.outline = d.grip = dark ? QColor(0x7C, 0x87, 0x92) : QColor(0x6E, 0x78, 0x82);
    d.disabled = tone::faint;
    d.primary = tone::text;
    d.onPrimary = dark ? QColor(0x10, 0x13, 0x16) : QColor(0xFF, 0xFF, 0xFF);
    d.primaryHover = dark ? QColor(0xFF, 0xFF, 0xFF) : QColor(0x2C, 0x35, 0x3E);
    d.caution = dark ? QColor(0x2C, 0x27, 0x15) : QColor(0xFF, 0xF3, 0xD1);
    d.onCaution = dark ? QColor(0xF3, 0xE3, 0xB3) : QColor(0x4A, 0x36, 0x00);
    d.cautionEdge = dark ? QColor(0x55, 0x49, 0x1F) : QColor(0xD9, 0xB8, 0x5C);
    return d;
}

QPalette paletteOfTheme() {
    const Derived d = derived();
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
    p.setColor(QPalette::Highlight, d.hover);
    p.setColor(QPalette::HighlightedText, tone::text);
    p.setColor(QPalette::PlaceholderText, tone::faint);
    p.setColor(QPalette::Link, tone::link);
    p.setColor(QPalette::LinkVisited, tone::link);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, d.disabled);
    return p;
}

constexpr auto kStyle = R"(
QMainWindow, QMainWindow > QWidget { background: @window; }
QLabel#heading { font-weight: 600; font-size: 13px; color: @text; }
QLabel#soft { color: @soft; font-size: 12px; }
QLabel#title { font-size: 30px; font-weight: 600; }
QLabel#lead { font-size: 15px; color: @text; }
QLabel#warning { color: @warning; }
QLabel#error { color: @error; }
QToolButton, QPushButton { background: @raised; border: 1px solid @border; border-radius: 4px; padding: 4px 10px; color: @text; }
QToolButton:hover, QPushButton:hover { background: @hover; }
QToolButton:focus, QPushButton:focus { border-color: @soft; }
QToolButton:pressed, QPushButton:pressed { background: @border; }
QToolButton:checked { background: @hover; border-color: @text; }
QToolButton:disabled, QPushButton:disabled { color: @disabled; background: @panel; }
QToolButton::menu-indicator { image: none; }
QPushButton#primary { background: @primary; color: @onPrimary; border-color: @primary; font-weight: 600; padding: 9px 18px; font-size: 14px; }
QPushButton#primary:hover { background: @lightPrimary; }
QPushButton#link { background: transparent; border: none; color: @link; padding: 3px 0px; text-align: left; }
QPushButton#link:disabled { color: @disabled; }
QPushButton#link:hover, QPushButton#link:focus { text-decoration: underline; }
QToolButton#markButton { text-align: left; padding: 3px 6px; background: transparent; border-color: transparent; }
QToolButton#markButton:hover { background: @raised; }
QToolButton#markButton:checked { background: @hover; border-color: @text; }
QToolButton#markButton:focus { border-color: @soft; }
QToolButton#removeButton { background: transparent; border: none; padding: 2px 6px; color: @soft; }
QToolButton#removeButton:hover { color: @text; background: @raised; }
QToolButton#removeButton:disabled { color: transparent; }
QWidget#pageBar { background: @window; border-bottom: 1px solid @border; }
QFrame#messageLine { background: @panel; border-top: 1px solid @border; }
QFrame#cautionStrip { background: @caution; border-bottom: 1px solid @cautionEdge; }
QFrame#cautionStrip QLabel { color: @onCaution; }
QFrame#side { background: @panel; }
QWidget#rule { background: @border; }
QSplitter::handle { background: @border; }
QSplitter::handle:horizontal { width: 1px; }
QSplitter::handle:vertical { height: 1px; }
QProgressBar { background: @raised; border: none; border-radius: 4px; color: @text; }
QProgressBar::chunk { background: @soft; border-radius: 4px; }
QCheckBox, QRadioButton { color: @text; spacing: 7px; }
QCheckBox:disabled, QRadioButton:disabled { color: @disabled; }
QCheckBox::indicator, QRadioButton::indicator { width: 14px; height: 14px; border: 1px solid @outline; background: @panel; }
QCheckBox::indicator { border-radius: 3px; }
QRadioButton::indicator { border-radius: 7px; }
QCheckBox::indicator:hover, QRadioButton::indicator:hover, QCheckBox::indicator:focus, QRadioButton::indicator:focus { border-color: @text; }
QCheckBox:focus, QRadioButton:focus { text-decoration: underline; }
QCheckBox::indicator:checked { background: @primary; border-color: @primary; image: url(:/icons/check-@theme.svg); }
QCheckBox::indicator:indeterminate { background: @primary; border-color: @primary; image: url(:/icons/part-@theme.svg); }
QRadioButton::indicator:checked { background: @primary; border: 4px solid @panel; width: 8px; height: 8px; outline: none; }
QCheckBox::indicator:disabled, QRadioButton::indicator:disabled { border-color: @border; background: @window; }
QCheckBox::indicator:checked:disabled { background: @disabled; }
QComboBox { background: @raised; color: @text; border: 1px solid @border; border-radius: 4px; padding: 4px 8px; min-height: 16px; }
QComboBox:hover { background: @hover; }
QComboBox:focus { border-color: @soft; }
QComboBox:disabled { color: @disabled; background: @panel; }
QComboBox::drop-down { border: none; width: 20px; }
QComboBox::down-arrow { image: url(:/icons/down-@theme.svg); width: 12px; height: 12px; }
QSpinBox, QDoubleSpinBox, QDateEdit { background: @panel; color: @text; border: 1px solid @border; border-radius: 3px; padding: 3px 6px; selection-background-color: @hover; selection-color: @text; }
QSpinBox:focus, QDoubleSpinBox:focus, QDateEdit:focus { border-color: @soft; }
QSpinBox:disabled, QDoubleSpinBox:disabled { color: @disabled; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { border: none; width: 16px; background: transparent; }
QAbstractSpinBox::up-arrow { image: url(:/icons/up-@theme.svg); width: 10px; height: 10px; }
QAbstractSpinBox::down-arrow { image: url(:/icons/down-@theme.svg); width: 10px; height: 10px; }
QGroupBox { border: none; margin-top: 20px; color: @text; font-weight: 600; }
QGroupBox::title { subcontrol-origin: margin; left: 0; color: @text; }
QListWidget, QListView { background: @panel; color: @text; border: 1px solid @border; border-radius: 4px; }
QFrame#drop { border: 1px dashed @outline; border-radius: 8px; }
QToolTip { background: @raised; color: @text; border: 1px solid @border; padding: 4px 6px; }
QMenuBar { background: @panel; border-bottom: 1px solid @border; color: @text; }
QMenuBar::item { padding: 5px 10px; background: transparent; }
QMenuBar::item:selected { background: @raised; }
QMenu { background: @raised; border: 1px solid @border; padding: 4px; color: @text; }
QMenu::item { padding: 5px 28px 5px 22px; border-radius: 3px; }
QMenu::item:selected { background: @hover; }
QMenu::item:disabled { color: @disabled; }
QMenu::separator { height: 1px; background: @border; margin: 4px 8px; }
QMenu::indicator { width: 12px; height: 12px; left: 5px; border-radius: 3px; }
QMenu::indicator:checked { background: @primary; border: 1px solid @primary; image: url(:/icons/check-@theme.svg); }
QMenu::indicator:unchecked { border: 1px solid @outline; }
QHeaderView::section { background: @panel; color: @soft; border: none; padding: 3px 6px; }
QLineEdit, QPlainTextEdit, QTextEdit { background: @panel; color: @text; border: 1px solid @border; border-radius: 3px; padding: 3px 6px; selection-background-color: @hover; selection-color: @text; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus { border-color: @soft; }
QComboBox QAbstractItemView { background: @raised; color: @text; selection-background-color: @hover; selection-color: @text; }
QTabWidget::pane { border: none; }
QTabBar { qproperty-drawBase: 0; }
QTabBar::tab { background: transparent; color: @soft; padding: 6px 9px; border-bottom: 2px solid transparent; }
QTabBar::tab:selected { color: @text; border-bottom-color: @text; }
QTabBar::tab:focus { color: @text; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar::handle:vertical { background: @grip; border-radius: 4px; min-height: 28px; margin: 1px 2px; }
QScrollBar::handle:vertical:hover { background: @soft; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 0; }
QScrollBar::handle:horizontal { background: @grip; border-radius: 4px; min-width: 28px; margin: 2px 1px; }
QScrollBar::handle:horizontal:hover { background: @soft; }
QScrollBar::add-line, QScrollBar::sub-line { height: 0; width: 0; }
QTextBrowser { background: @panel; border: none; }
)";

double g_textScale = 1.0;

int scaledPx(int px) {
    return static_cast<int>(std::lround(px * g_textScale));
}

/// Sizes of letters follow the person's choice; borders and margins stay.
QString scaled(const QString& style) {
    static const QRegularExpression size(QStringLiteral("font-size: ([0-9]+)px"));
    QString result;
    qsizetype from = 0;
    for (auto match = size.globalMatch(style); match.hasNext();) {
        const auto found = match.next();
        result += style.mid(from, found.capturedStart(1) - from) + QString::number(scaledPx(found.captured(1).toInt()));
        from = found.capturedEnd(1);
    }
    return result + style.mid(from);
}

QString styleSheet() {
    const Derived d = derived();
    const std::pair<const char*, QColor> names[] = {
        {"@window", tone::window}, {"@panel", tone::panel}, {"@raised", tone::raised}, {"@border", tone::border},
        {"@text", tone::text}, {"@soft", tone::soft}, {"@link", tone::link}, {"@warning", tone::warning},
        {"@error", tone::error}, {"@hover", d.hover}, {"@outline", d.outline}, {"@grip", d.grip}, {"@disabled", d.disabled}, {"@onPrimary", d.onPrimary},
        {"@lightPrimary", d.primaryHover}, {"@primary", d.primary}, {"@cautionEdge", d.cautionEdge},
        {"@onCaution", d.onCaution}, {"@caution", d.caution}};
    QString style = QString::fromLatin1(kStyle);
    for (const auto& [name, colour] : names)
        style.replace(QLatin1String(name), colour.name());
    style.replace(QLatin1String("@theme"), theme() == Theme::Dark ? QLatin1String("dark") : QLatin1String("light"));
    return scaled(style);
}

/// Known once, before our own palette covers it.
bool desktopIsDark() {
    static const bool dark = QGuiApplication::palette().color(QPalette::Window).lightnessF() < 0.5;
    return dark;
}

} // namespace

Theme themeFrom(const QString& setting) {
    const bool systemIsDark = desktopIsDark();
    if (setting == QLatin1String("light")) return Theme::Light;
    if (setting == QLatin1String("system")) return systemIsDark ? Theme::Dark : Theme::Light;
    return Theme::Dark;
}

void applyTheme(QApplication& application, Theme theme) {
    initialiseResources();
    desktopIsDark();
    setTheme(theme);
    // Under a style sheet the application's style is Qt's own wrapper: ours is set once.
    static const bool styled = (application.setStyle(QStyleFactory::create(QStringLiteral("Fusion"))), true);
    Q_UNUSED(styled);
    application.setPalette(paletteOfTheme());
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(scaledPx(12));
    application.setFont(font);
    application.setStyleSheet(styleSheet());
    for (QWidget* widget : QApplication::allWidgets())
        widget->update(); // what paints itself follows too
}

void setTextScale(double scale) {
    g_textScale = std::clamp(scale, 1.0, kLargestTextScale);
    setLabelScale(g_textScale);
}

double textScale() {
    return g_textScale;
}

QList<TextPair> markPairs() {
    const Derived d = derived();
    return {{"outline of a box to tick", d.outline, tone::panel},
            {"ticked box", d.primary, tone::panel},
            {"tick in its box", d.onPrimary, d.primary},
            {"box in a menu", d.outline, tone::raised},
            {"arrow of a list", tone::soft, tone::raised},
            {"grip of a scroll bar", d.grip, tone::panel},
            {"edge of the place to drop on", d.outline, tone::window},
            {"focus", tone::soft, tone::raised}};
}

QList<TextPair> textPairs() {
    const Derived d = derived();
    QList<TextPair> pairs{
        {"button", tone::text, tone::raised},
        {"button under the pointer", tone::text, d.hover},
        {"button that cannot be used", d.disabled, tone::panel},
        {"button pressed", tone::text, tone::border},
        {"leading button", d.onPrimary, d.primary},
        {"leading button under the pointer", d.onPrimary, d.primaryHover},
        {"caution strip", d.onCaution, d.caution},
        {"menu entry that cannot be used", d.disabled, tone::raised},
        {"menu entry under the pointer", tone::text, d.hover},
        {"tooltip", tone::text, tone::raised},
        {"choice that cannot be made", d.disabled, tone::panel},
        {"chosen line of a list", tone::text, d.hover},
    };
    for (const auto& [where, ground] : {std::pair("window", tone::window), std::pair("panel", tone::panel),
                                        std::pair("raised surface", tone::raised)})
        for (const QColor& text : {tone::text, tone::soft, tone::faint, tone::warning, tone::error, tone::link})
            pairs.append({where, text, ground});
    for (const QColor& text : {tone::onImage, tone::onImageSoft, tone::onImageWarning})
        pairs.append({"picture", text, tone::image});
    return pairs;
}

} // namespace gauge::app
