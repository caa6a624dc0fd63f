#include "app/drawing/cross_section_drawing.h"

#include "app/drawing/marks_drawing.h"
#include "app/format/quantity.h"

#include <QPainterPath>
#include <algorithm>

namespace gauge::app {
namespace {

/// One line of the key: a sample of the line style, and what it measures.
void drawKey(QPainter& painter, const QPointF& at, const QPen& pen, const QString& text, const QRectF& area) {
    constexpr double kSamplePx = 24.0;
    const QRectF plate = drawLabel(painter, at + QPointF(kSamplePx, 0), text, tone::text, LabelSide::Right, area);
    drawHaloLine(painter, {at.x(), plate.center().y()}, {at.x() + kSamplePx, plate.center().y()}, pen);
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
    constexpr double kSurroundings = 1.5, kLeastMm = 12.0;
    return std::max(kLeastMm, kSurroundings * 0.5 * section.metrics.longestDiameterMm.value);
}

void drawCrossSection(QPainter& painter, const QRectF& area, const SectionMap& map, const core::Section& section,
                      Role role) {
    painter.save();
    painter.setClipRect(area);
    QPainterPath contour;
    for (const auto& point : section.contour)
        contour.elementCount() ? contour.lineTo(map.fromSection(point)) : contour.moveTo(map.fromSection(point));
    contour.closeSubpath();
    QPen outline = penOf(role, 2.0);
    if (role == Role::Section)
        outline.setStyle(Qt::SolidLine);
    drawHaloPath(painter, contour, outline);

    const QPen solid(tone::text, 1.6, Qt::SolidLine);
    QPen dashed(tone::text, 1.6, Qt::CustomDashLine);
    dashed.setDashPattern({3.0, 3.0});
    drawHaloLine(painter, map.fromSection(section.longestFrom), map.fromSection(section.longestTo), solid);
    drawHaloLine(painter, map.fromSection(section.shortestFrom), map.fromSection(section.shortestTo), dashed);
    drawOrientation(painter, area, map.frame);
    constexpr double kKeyStepPx = 23.0;
    const QPointF key = area.topLeft() + QPointF(12, 18);
    const auto& m = section.metrics;
    drawKey(painter, key, outline,
            QStringLiteral("perimeter-derived ") + estimate(m.perimeterDerivedDiameterMm, Unit::Millimetre), area);
    drawKey(painter, key + QPointF(0, kKeyStepPx), solid,
            QStringLiteral("longest ") + estimate(m.longestDiameterMm, Unit::Millimetre), area);
    drawKey(painter, key + QPointF(0, 2 * kKeyStepPx), dashed,
            QStringLiteral("shortest ") + estimate(m.shortestDiameterMm, Unit::Millimetre), area);
    drawScaleBar(painter, area, map.pixelsPerMm);
    painter.restore();
}

} // namespace gauge::app
