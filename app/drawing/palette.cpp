#include "app/drawing/palette.h"

#include <QCoreApplication>
#include <QFont>
#include <algorithm>
#include <cmath>

namespace gauge::app {

namespace {

Theme g_theme = Theme::Dark;
double g_labelScale = 1.0;

/// A colour and its twin of at least 4.5:1 on the light theme's pages.
struct Twins {
    QColor bright, dark;
};

Twins twinsOf(Role role) {
    switch (role) {
    case Role::Ostium:
        return {QColor(0xE6, 0x9F, 0x00), QColor(0x8A, 0x5C, 0x00)};
    case Role::Landing:
        return {QColor(0x56, 0xB4, 0xE9), QColor(0x1B, 0x66, 0x9C)};
    case Role::Axis:
    case Role::Tip:
        return {QColor(0x00, 0x9E, 0x73), QColor(0x00, 0x6B, 0x4E)};
    case Role::Circumflex:
        return {QColor(0xD5, 0x5E, 0x00), QColor(0xA8, 0x44, 0x00)};
    case Role::Ridge:
        return {QColor(0xCC, 0x79, 0xA7), QColor(0x94, 0x3B, 0x6D)};
    case Role::Crossing:
        return {QColor(0xF0, 0xE4, 0x42), QColor(0x6F, 0x61, 0x00)};
    case Role::Device:
        return {QColor(0xFF, 0xFF, 0xFF), QColor(0x1A, 0x1A, 0x1A)};
    case Role::Atrium:
    case Role::Aorta:
    case Role::PulmonaryArtery:
    case Role::Section:
    case Role::Drawing:
        return {tone::onImage, QColor(0x15, 0x19, 0x1D)};
    }
    return {tone::onImage, tone::onImage};
}

} // namespace

namespace tone {
QColor window, panel, raised, border, text, soft, faint, warning, error, link;
} // namespace tone

void setTheme(Theme theme) {
    g_theme = theme;
    const bool dark = theme == Theme::Dark;
    tone::window = dark ? QColor(0x12, 0x15, 0x18) : QColor(0xF1, 0xF3, 0xF5);
    tone::panel = dark ? QColor(0x1A, 0x1E, 0x22) : QColor(0xFF, 0xFF, 0xFF);
    tone::raised = dark ? QColor(0x25, 0x2B, 0x31) : QColor(0xE6, 0xEA, 0xEE);
    tone::border = dark ? QColor(0x33, 0x3A, 0x42) : QColor(0xC3, 0xCA, 0xD1);
    tone::text = dark ? QColor(0xE8, 0xEB, 0xEE) : QColor(0x15, 0x19, 0x1D);
    tone::soft = dark ? QColor(0xB4, 0xBC, 0xC5) : QColor(0x3C, 0x46, 0x50);
    tone::faint = dark ? QColor(0x9A, 0xA4, 0xAF) : QColor(0x54, 0x5E, 0x68);
    tone::warning = dark ? QColor(0xF2, 0xC9, 0x7D) : QColor(0x75, 0x48, 0x00);
    tone::error = dark ? QColor(0xFF, 0x9B, 0x85) : QColor(0xA0, 0x1E, 0x0C);
    tone::link = dark ? QColor(0x9F, 0xC7, 0xE8) : QColor(0x12, 0x55, 0x8A);
}

Theme theme() {
    return g_theme;
}

namespace {
/// The dark theme holds from the start, also where no window is made.
[[maybe_unused]] const bool g_themeSet = (setTheme(Theme::Dark), true);
} // namespace

QColor colourOf(Role role, Ground ground) {
    const Twins twins = twinsOf(role);
    // On a dark page the artery's colour alone would stay below 4.5:1.
    if (role == Role::Circumflex && ground == Ground::Page && g_theme == Theme::Dark) return QColor(0xE6, 0x6A, 0x0A);
    return ground == Ground::Image || g_theme == Theme::Dark ? twins.bright : twins.dark;
}

Qt::PenStyle lineStyleOf(Role role) {
    switch (role) {
    case Role::Landing:
        return Qt::DashLine;
    case Role::Axis:
    case Role::Tip:
        return Qt::DashDotLine;
    case Role::Section:
        return Qt::DotLine;
    case Role::Crossing:
        return Qt::DashDotDotLine;
    default:
        return Qt::SolidLine;
    }
}

QString wordOf(Role role) {
    switch (role) {
    case Role::Ostium:
        return QCoreApplication::translate("Role", "ostium");
    case Role::Landing:
        return QCoreApplication::translate("Role", "landing zone");
    case Role::Axis:
        return QCoreApplication::translate("Role", "axis");
    case Role::Atrium:
        return QCoreApplication::translate("Role", "atrium");
    case Role::Tip:
        return QCoreApplication::translate("Role", "tip");
    case Role::Circumflex:
        return QCoreApplication::translate("Role", "circumflex artery");
    case Role::Ridge:
        return QCoreApplication::translate("Role", "ridge");
    case Role::Aorta:
        return QCoreApplication::translate("Role", "aorta");
    case Role::PulmonaryArtery:
        return QCoreApplication::translate("Role", "pulmonary artery");
    case Role::Section:
        return QCoreApplication::translate("Role", "cross-section");
    case Role::Crossing:
        return QCoreApplication::translate("Role", "septal crossing");
    case Role::Device:
        return QCoreApplication::translate("Role", "device");
    case Role::Drawing:
        return QCoreApplication::translate("Role", "measurement");
    }
    return {};
}

QPen penOf(Role role, double width, Ground ground) {
    QPen pen(colourOf(role, ground), width, lineStyleOf(role), Qt::RoundCap, Qt::RoundJoin);
    if (lineStyleOf(role) == Qt::DashLine) pen.setDashPattern({5.0, 3.5});
    return pen;
}

QPen haloPen(double width) {
    return QPen(QColor(0, 0, 0, 170), width + 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
}

void setLabelScale(double scale) {
    g_labelScale = std::max(1.0, scale);
}

double labelScale() {
    return g_labelScale;
}

QFont labelFont(int pixelSize, bool strong) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(static_cast<int>(std::lround(std::max(pixelSize, kSmallestLabelPx) * g_labelScale)));
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

} // namespace gauge::app
