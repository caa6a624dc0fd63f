#include "app/drawing/palette.h"

#include <QFont>

namespace gauge::app {

QColor colourOf(Role role) {
    switch (role) {
    case Role::Ostium:
        return QColor(0xE6, 0x9F, 0x00);
    case Role::Landing:
        return QColor(0x56, 0xB4, 0xE9);
    case Role::Axis:
    case Role::Tip:
        return QColor(0x00, 0x9E, 0x73);
    case Role::Circumflex:
        return QColor(0xD5, 0x5E, 0x00);
    case Role::Ridge:
        return QColor(0xCC, 0x79, 0xA7);
    case Role::Atrium:
    case Role::Aorta:
    case Role::Section:
        return tone::text;
    }
    return tone::text;
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
    default:
        return Qt::SolidLine;
    }
}

QString wordOf(Role role) {
    switch (role) {
    case Role::Ostium:
        return QStringLiteral("ostium");
    case Role::Landing:
        return QStringLiteral("landing zone");
    case Role::Axis:
        return QStringLiteral("axis");
    case Role::Atrium:
        return QStringLiteral("atrium");
    case Role::Tip:
        return QStringLiteral("tip");
    case Role::Circumflex:
        return QStringLiteral("circumflex artery");
    case Role::Ridge:
        return QStringLiteral("ridge");
    case Role::Aorta:
        return QStringLiteral("aorta");
    case Role::Section:
        return QStringLiteral("cross-section");
    }
    return {};
}

QPen penOf(Role role, double width) {
    QPen pen(colourOf(role), width, lineStyleOf(role), Qt::RoundCap, Qt::RoundJoin);
    if (lineStyleOf(role) == Qt::DashLine) pen.setDashPattern({5.0, 3.5});
    return pen;
}

QPen haloPen(double width) {
    return QPen(QColor(0, 0, 0, 170), width + 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
}

QFont labelFont(int pixelSize, bool strong) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(pixelSize);
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

} // namespace gauge::app
