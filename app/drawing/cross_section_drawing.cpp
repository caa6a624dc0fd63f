#include "app/drawing/cross_section_drawing.h"

#include "app/drawing/depth_strip_drawing.h"
#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>

namespace gauge::app {
namespace {

/// The curve's line style in the colour of lines on pictures, which are dark in every theme.
QPen penOnPicture(StripCurve curve) {
    QPen pen = penOf(curve);
    pen.setColor(tone::onImage);
    return pen;
}

/// One line of the key: a sample of the line style, and what it measures.
QRectF drawKey(QPainter& painter, const QPointF& at, const QPen& pen, const QString& text, const QRectF& area) {
    constexpr double kSamplePx = 24.0;
    const QRectF plate =
        drawLabel(painter, at + QPointF(kSamplePx, 0), text, tone::onImage, LabelSide::Right, area);
    drawHaloLine(painter, {at.x(), plate.center().y()}, {at.x() + kSamplePx, plate.center().y()}, pen);
    return plate;
}

/// Returns the place of all lines.
QRectF drawKeys(QPainter& painter, const QRectF& area, const core::SectionMetrics& m, const QPen& outline) {
    constexpr double kStepPx = 23.0;
    const QPointF key = area.topLeft() + QPointF(12, 18);
    QRectF place = drawKey(painter, key, outline,
                           QCoreApplication::translate("Drawing", "perimeter-derived %1")
                               .arg(estimate(m.perimeterDerivedDiameterMm, Unit::Millimetre)),
                           area);
    place |= drawKey(painter, key + QPointF(0, kStepPx), penOnPicture(StripCurve::Longest),
                     QCoreApplication::translate("Drawing", "longest %1").arg(estimate(m.longestDiameterMm, Unit::Millimetre)), area);
    place |= drawKey(painter, key + QPointF(0, 2 * kStepPx), penOnPicture(StripCurve::Shortest),
                     QCoreApplication::translate("Drawing", "shortest %1").arg(estimate(m.shortestDiameterMm, Unit::Millimetre)), area);
    return place;
}

/// The word of a diameter, beyond its right or lower end.
QRectF drawWord(QPainter& painter, const QRectF& area, const SectionMap& map, const Eigen::Vector2d& from,
                const Eigen::Vector2d& to, StripCurve curve) {
    const QPointF a = map.fromSection(from), b = map.fromSection(to);
    const bool upright = std::abs(a.y() - b.y()) > std::abs(a.x() - b.x());
    const QPointF end = upright ? (a.y() > b.y() ? a : b) : (a.x() > b.x() ? a : b);
    constexpr double kLettersPx = 40.0; // the orientation letters keep the edge
    const bool fits = end.x() + labelWidth(wordOf(curve), 11) + kLettersPx < area.right();
    const LabelSide side = upright ? LabelSide::Below : fits ? LabelSide::Right : LabelSide::Above;
    return drawLabel(painter, end, wordOf(curve), tone::onImage, side, area, 11);
}

} // namespace

SectionMap crossSectionMap(const core::Section& section, const QRectF& area, double halfWidthMm) {
    SectionMap map;
    map.frame = section.frame;
    map.pixelsPerMm = 0.5 * std::min(area.width(), area.height()) / std::max(halfWidthMm, 1.0);
    const Eigen::Vector2d center = section.frame.sectionFromPatient(section.center);
    map.zero = area.center() - QPointF(center.x(), center.y()) * map.pixelsPerMm;
    return map;
}

double fittingHalfWidthMm(const core::Section& section) {
    constexpr double kSurroundings = 1.75, kLeastMm = 12.0;
    return std::max(kLeastMm, kSurroundings * 0.5 * section.metrics.longestDiameterMm.value);
}

LabelPlaces drawCrossSection(QPainter& painter, const QRectF& area, const SectionMap& map,
                             const core::Section& section, Role role, CrossSectionLabels labels,
                             const QString& title) {
    LabelPlaces places;
    painter.save();
    painter.setClipRect(area);
    QPainterPath contour;
    for (const auto& point : section.contour)
        contour.elementCount() ? contour.lineTo(map.fromSection(point))
                               : contour.moveTo(map.fromSection(point));
    contour.closeSubpath();
    QPen outline = penOf(role, 2.0);
    if (role == Role::Section) outline.setStyle(Qt::SolidLine);
    drawHaloPath(painter, contour, outline);

    drawHaloLine(painter, map.fromSection(section.longestFrom), map.fromSection(section.longestTo),
                 penOnPicture(StripCurve::Longest));
    drawHaloLine(painter, map.fromSection(section.shortestFrom), map.fromSection(section.shortestTo),
                 penOnPicture(StripCurve::Shortest));
    const QRectF head = drawTitle(painter, title, area, colourOf(role));
    places.keepFree(head);
    for (const QRectF& letters : drawOrientation(painter, area, map.frame, head))
        places.keepFree(letters);
    if (labels == CrossSectionLabels::Key) {
        places.keepFree(drawKeys(painter, area, section.metrics, outline));
    } else {
        places.keepFree(drawWord(painter, area, map, section.longestFrom, section.longestTo, StripCurve::Longest));
        places.keepFree(drawWord(painter, area, map, section.shortestFrom, section.shortestTo, StripCurve::Shortest));
    }
    places.keepFree(drawScaleBar(painter, area, map.pixelsPerMm));
    painter.restore();
    return places;
}

} // namespace gauge::app
