#include "app/drawing/marks_drawing.h"

#include "app/format/quantity.h"
#include "app/format/words.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <array>

namespace gauge::app {
namespace {

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

std::vector<QRectF> drawOrientation(QPainter& painter, const QRectF& area, const core::SectionFrame& frame, const QRectF& title) {
    std::vector<QRectF> places;
    painter.save();
    const QFont font = labelFont(12, true);
    painter.setFont(font);
    const QRectF inner = area.adjusted(8, 6, -8, -6);
    const auto text = [&](const QRectF& box, int flags, const QString& letters) {
        painter.setPen(QColor(0, 0, 0, 200));
        painter.drawText(box.translated(1, 1), flags | Qt::TextDontClip, letters);
        painter.setPen(tone::onImageSoft);
        painter.drawText(box, flags | Qt::TextDontClip, letters, &places.emplace_back());
    };
    text(inner, Qt::AlignRight | Qt::AlignVCenter, directionLetters(frame.u));
    text(inner, Qt::AlignLeft | Qt::AlignVCenter, directionLetters(-frame.u));
    text(inner, Qt::AlignHCenter | Qt::AlignBottom, directionLetters(frame.v));
    const QString upper = directionLetters(-frame.v);
    const double wide = QFontMetricsF(font).horizontalAdvance(upper);
    constexpr double kClear = 4.0;
    if (title.right() + kClear < inner.center().x() - wide / 2)
        text(inner, Qt::AlignHCenter | Qt::AlignTop, upper);
    else if (title.right() + kClear + wide < inner.right())
        text(inner.adjusted(title.right() + kClear - inner.left(), 0, 0, 0), Qt::AlignLeft | Qt::AlignTop, upper);
    else
        text(inner.adjusted(0, title.bottom() + kClear - inner.top(), 0, 0), Qt::AlignHCenter | Qt::AlignTop, upper);
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
