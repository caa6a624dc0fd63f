// The marked points of the septum, in pictures and on buttons.
#include "app/drawing/septum_drawing.h"

#include <QPainterPath>
#include <cmath>

namespace gauge::app {

void drawSeptumMarker(QPainter& painter, const QPointF& at, SeptumPoint kind, double opacity, Ground ground) {
    constexpr double r = 4.5;
    QPainterPath shape;
    switch (kind) {
    case SeptumPoint::Annulus:
        shape.addEllipse(at, r, r);
        break;
    case SeptumPoint::Coaptation:
        shape.moveTo(at + QPointF(-r, -r));
        shape.lineTo(at + QPointF(r, r));
        shape.moveTo(at + QPointF(-r, r));
        shape.lineTo(at + QPointF(r, -r));
        break;
    case SeptumPoint::Fossa:
        shape.addRect(at.x() - 0.85 * r, at.y() - 0.85 * r, 1.7 * r, 1.7 * r);
        break;
    case SeptumPoint::AorticRoot:
        shape.addEllipse(at, 1.4 * r, 1.4 * r);
        shape.moveTo(at - QPointF(1.4 * r, 0));
        shape.lineTo(at + QPointF(1.4 * r, 0));
        shape.moveTo(at - QPointF(0, 1.4 * r));
        shape.lineTo(at + QPointF(0, 1.4 * r));
        break;
    }
    const QColor colour = kind == SeptumPoint::Fossa ? colourOf(Role::Crossing, ground) : ground == Ground::Image ? tone::onImage : tone::text;
    painter.save();
    painter.setOpacity(opacity);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ground == Ground::Image ? haloPen(1.8) : QPen(tone::panel, 4.0));
    painter.drawPath(shape);
    painter.setPen(QPen(colour, 1.8));
    painter.drawPath(shape);
    painter.restore();
}

std::vector<Label> drawSeptumPoints(QPainter& painter, const QRectF& area, const SectionMap& map, const core::SeptumMarks& marks,
                                    std::optional<SeptumPoint> armed) {
    using enum LabelSide;
    std::vector<Label> words;
    constexpr double kNearMm = 2.0, kShownMm = 8.0, kFaint = 0.35;
    for (const SeptumPoint kind : kSeptumPoints) {
        const auto points = pointsOf(marks, kind);
        for (std::size_t i = 0; i < points.size(); ++i) {
            const double off = std::abs(core::signedDistanceMm(map.frame.plane(), points[i]));
            const QPointF at = map.fromPatient(points[i]);
            if (off > kShownMm || !area.contains(at)) continue;
            drawSeptumMarker(painter, at, kind, off <= kNearMm ? 1.0 : kFaint);
            if (off <= kNearMm && armed == kind)
                words.push_back({QStringLiteral("%1 %2").arg(wordOf(kind)).arg(i + 1), tone::onImage, {{at, {Right, Left, Below, Above}}}});
        }
    }
    return words;
}

} // namespace gauge::app
