#include "app/drawing/marks_drawing.h"

#include "app/format/quantity.h"
#include "app/format/words.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <array>

namespace gauge::app {
namespace {

constexpr double kGap = 7.0;

QPointF plateCorner(const QPointF& anchor, const QSizeF& size, LabelSide side) {
    switch (side) {
    case LabelSide::Right:
        return {anchor.x() + kGap, anchor.y() - size.height() / 2};
    case LabelSide::Left:
        return {anchor.x() - kGap - size.width(), anchor.y() - size.height() / 2};
    case LabelSide::Above:
        return {anchor.x() - size.width() / 2, anchor.y() - kGap - size.height()};
    case LabelSide::Below:
        return {anchor.x() - size.width() / 2, anchor.y() + kGap};
    }
    return anchor;
}

QPainterPath markerShape(Role role, const QPointF& c, double r) {
    QPainterPath path;
    switch (role) {
    case Role::Tip:
        path.addPolygon(QPolygonF{{c.x(), c.y() - 1.2 * r},
                                  {c.x() + 1.1 * r, c.y() + 0.8 * r},
                                  {c.x() - 1.1 * r, c.y() + 0.8 * r}});
        path.closeSubpath();
        break;
    case Role::Circumflex:
    case Role::PulmonaryArtery:
        path.addRect(c.x() - 0.9 * r, c.y() - 0.9 * r, 1.8 * r, 1.8 * r);
        break;
    case Role::Ridge:
        path.addPolygon(QPolygonF{{c.x(), c.y() - 1.25 * r},
                                  {c.x() + 1.25 * r, c.y()},
                                  {c.x(), c.y() + 1.25 * r},
                                  {c.x() - 1.25 * r, c.y()}});
        path.closeSubpath();
        break;
    default:
        path.addEllipse(c, r, r);
        break;
    }
    return path;
}

} // namespace

double labelWidth(const QString& text, int pixelSize) {
    return QFontMetricsF(labelFont(pixelSize)).horizontalAdvance(text) + 10;
}

QRectF labelPlate(const QPointF& anchor, const QString& text, LabelSide side, const QRectF& bounds, int pixelSize) {
    const QSizeF size(labelWidth(text, pixelSize), QFontMetricsF(labelFont(pixelSize)).height() + 4);
    QRectF plate(plateCorner(anchor, size, side), size);
    plate.moveLeft(std::clamp(plate.left(), bounds.left() + 2,
                              std::max(bounds.left() + 2, bounds.right() - 2 - size.width())));
    plate.moveTop(std::clamp(plate.top(), bounds.top() + 2,
                             std::max(bounds.top() + 2, bounds.bottom() - 2 - size.height())));
    return plate;
}

QRectF drawLabel(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
                 LabelSide side, const QRectF& bounds, int pixelSize, const QColor& plateColour) {
    const QFont font = labelFont(pixelSize);
    const QRectF plate = labelPlate(anchor, text, side, bounds, pixelSize);
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(plateColour);
    painter.drawRoundedRect(plate, 3, 3);
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(plate, Qt::AlignCenter, text);
    painter.restore();
    return plate;
}

bool LabelPlaces::draw(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
                       std::initializer_list<LabelSide> sides, const QRectF& bounds, int pixelSize,
                       const QColor& plateColour) {
    for (const LabelSide side : sides) {
        const QRectF plate = labelPlate(anchor, text, side, bounds, pixelSize);
        const bool free = std::none_of(m_taken.begin(), m_taken.end(), [&](const QRectF& r) { return r.intersects(plate); });
        if (!free) continue;
        m_taken.push_back(drawLabel(painter, anchor, text, colour, side, bounds, pixelSize, plateColour));
        return true;
    }
    return false;
}

void drawMarker(QPainter& painter, const QPointF& at, Role role, double opacity, double radius) {
    painter.save();
    painter.setOpacity(opacity);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPainterPath shape = markerShape(role, at, radius);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(haloPen(2.0));
    painter.drawPath(shape);
    painter.setPen(QPen(colourOf(role), 2.0));
    painter.drawPath(shape);
    painter.setBrush(colourOf(role));
    painter.setPen(Qt::NoPen);
    if (role == Role::Aorta) {
        painter.setPen(QPen(colourOf(role), 1.5));
        painter.drawLine(at - QPointF(radius, 0), at + QPointF(radius, 0));
        painter.drawLine(at - QPointF(0, radius), at + QPointF(0, radius));
    } else {
        painter.drawEllipse(at, 1.4, 1.4);
    }
    painter.restore();
}

void drawHaloLine(QPainter& painter, const QPointF& from, const QPointF& to, const QPen& pen) {
    QPainterPath path(from);
    path.lineTo(to);
    drawHaloPath(painter, path, pen);
}

void drawHaloPath(QPainter& painter, const QPainterPath& path, const QPen& pen) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(haloPen(pen.widthF()));
    painter.drawPath(path);
    painter.setPen(pen);
    painter.drawPath(path);
    painter.restore();
}

std::vector<QRectF> drawOrientation(QPainter& painter, const QRectF& area, const core::SectionFrame& frame, double topFrom) {
    std::vector<QRectF> places;
    painter.save();
    const QFont font = labelFont(12, true);
    painter.setFont(font);
    const QRectF inner = area.adjusted(8, 6, -8, -6);
    const auto text = [&](int flags, const QString& letters, double from = 0.0) {
        const QRectF box = inner.adjusted(from, 0, 0, 0);
        painter.setPen(QColor(0, 0, 0, 200));
        painter.drawText(box.translated(1, 1), flags, letters);
        painter.setPen(tone::onImageSoft);
        painter.drawText(box, flags, letters, &places.emplace_back());
    };
    text(Qt::AlignRight | Qt::AlignVCenter, directionLetters(frame.u));
    text(Qt::AlignLeft | Qt::AlignVCenter, directionLetters(-frame.u));
    text(Qt::AlignHCenter | Qt::AlignBottom, directionLetters(frame.v));
    constexpr double kHalfLetters = 14.0;
    if (topFrom + kHalfLetters < inner.center().x())
        text(Qt::AlignHCenter | Qt::AlignTop, directionLetters(-frame.v));
    else
        text(Qt::AlignLeft | Qt::AlignTop, directionLetters(-frame.v), topFrom);
    painter.restore();
    return places;
}

QRectF drawScaleBar(QPainter& painter, const QRectF& area, double pixelsPerMm) {
    constexpr std::array<double, 6> lengths{50.0, 20.0, 10.0, 5.0, 2.0, 1.0};
    double mm = lengths.back();
    for (const double candidate : lengths) {
        if (candidate * pixelsPerMm <= 0.22 * area.width()) {
            mm = candidate;
            break;
        }
    }
    painter.save();
    const QPointF left(area.left() + 12, area.bottom() - 12);
    const QPointF right = left + QPointF(mm * pixelsPerMm, 0);
    painter.setPen(QPen(QColor(0, 0, 0, 170), 4));
    painter.drawLine(left, right);
    painter.setPen(QPen(tone::onImageSoft, 2, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(left, right);
    painter.setFont(labelFont(11));
    const QString text = QString::number(mm, 'f', 0) + QStringLiteral("\u00A0mm");
    const QFontMetricsF metrics(painter.font());
    const QRectF box(left.x(), left.y() - 4 - metrics.height(), metrics.horizontalAdvance(text) + 4, metrics.height());
    painter.setPen(QColor(0, 0, 0, 200));
    painter.drawText(box.translated(1, 1), Qt::AlignLeft | Qt::AlignVCenter, text);
    painter.setPen(tone::onImageSoft);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, text);
    painter.restore();
    return box.united(QRectF(left, right).adjusted(0, -2, 0, 2));
}

} // namespace gauge::app
