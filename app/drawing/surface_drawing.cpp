#include "app/drawing/surface_drawing.h"

#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr double kHiddenOpacity = 0.35;
constexpr double kOnSurfaceMm = 1.2; // a contour lies on the surface, now a little before, now a little behind

/// The line in two parts: what the surface leaves free and what it hides.
struct Parts {
    QPainterPath seen, hidden;
};

Parts partsOf(const std::vector<core::PatientPoint>& line, bool closed, const SectionMap& map,
              const SurfacePicture& picture) {
    Parts parts;
    const std::size_t segments = closed ? line.size() : line.size() - 1;
    for (std::size_t i = 0; i < segments; ++i) {
        const core::PatientPoint& a = line[i];
        const core::PatientPoint& b = line[(i + 1) % line.size()];
        QPainterPath& path = picture.hides(a + 0.5 * (b - a), kOnSurfaceMm) ? parts.hidden : parts.seen;
        const QPointF from = map.fromPatient(a);
        if (path.elementCount() == 0 || (path.currentPosition() - from).manhattanLength() > 1e-6) path.moveTo(from);
        path.lineTo(map.fromPatient(b));
    }
    return parts;
}

void drawLine(QPainter& painter, const std::vector<core::PatientPoint>& line, bool closed, const QPen& pen,
              const SectionMap& map, const SurfacePicture& picture) {
    if (line.size() < 2) return;
    const Parts parts = partsOf(line, closed, map, picture);
    painter.save();
    painter.setOpacity(kHiddenOpacity);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen);
    painter.drawPath(parts.hidden);
    painter.restore();
    drawHaloPath(painter, parts.seen, pen);
}

std::vector<core::PatientPoint> contourOf(const core::Section& section) {
    std::vector<core::PatientPoint> points;
    for (const auto& ab : section.contour)
        points.push_back(section.frame.patientFromSection(ab));
    return points;
}

/// The contour's point highest on the screen: where its label stands.
QPointF topOf(const std::vector<core::PatientPoint>& contour, const SectionMap& map) {
    QPointF top = map.fromPatient(contour.front());
    for (const auto& p : contour)
        if (const QPointF at = map.fromPatient(p); at.y() < top.y()) top = at;
    return top;
}

void drawContour(QPainter& painter, const core::Section& section, Role role, const QString& label, const SectionMap& map,
                 const SurfacePicture& picture, std::vector<Label>& labels) {
    const auto contour = contourOf(section);
    if (contour.empty()) return;
    drawLine(painter, contour, true, penOf(role, 2.2), map, picture);
    using enum LabelSide;
    labels.push_back({label, colourOf(role), {{topOf(contour, map), {Above, Right, Left, Below}}}});
}

void drawMarkAt(QPainter& painter, const QRectF& area, const core::PatientPoint& p, Role role, const SectionMap& map,
                const SurfacePicture& picture, std::vector<Label>& labels, LabelPlaces& places) {
    const QPointF at = map.fromPatient(p);
    if (!area.adjusted(6, 6, -6, -6).contains(at)) return;
    drawMarker(painter, at, role, picture.hides(p, kOnSurfaceMm) ? kHiddenOpacity : 1.0);
    using enum LabelSide;
    places.keepFree(around(at, kMarkerReach));
    labels.push_back({wordOf(role), colourOf(role), {{at, {Right, Left, Below, Above}}}, 11});
}

/// "appendage" and "atrium" beside a sample of their colours, at the lower right.
void drawKey(QPainter& painter, const QRectF& area, LabelPlaces& places) {
    const QString words[2] = {QCoreApplication::translate("Surface", "atrium"),
                              QCoreApplication::translate("Surface", "appendage")};
    constexpr double kSample = 10.0, kLeading = 3.0;
    const double line = QFontMetricsF(labelFont(11)).height() + kLeading;
    const double width = std::max(labelWidth(words[0], 11), labelWidth(words[1], 11)) + kSample;
    const QRectF plate(area.right() - width - 8, area.bottom() - 2 * line - 8, width, 2 * line);
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(8, 10, 12, 200));
    painter.drawRoundedRect(plate, 3, 3);
    painter.setFont(labelFont(11));
    for (int i = 0; i < 2; ++i) {
        const QRectF row(plate.left() + 4, plate.top() + i * line, width - 4, line);
        painter.setPen(Qt::NoPen);
        painter.setBrush(surfaceColour(i == 1));
        painter.drawRect(QRectF(row.left(), row.center().y() - 4, 8, 8));
        painter.setPen(tone::onImageSoft);
        painter.drawText(row.adjusted(kSample + 3, 0, 0, 0), Qt::AlignVCenter, words[i]);
    }
    painter.restore();
    places.keepFree(plate);
}

} // namespace

SectionMap surfaceMap(const core::AppendageMeasurement& measurement, const core::SectionFrame& orientation,
                      const QRectF& area, double zoom) {
    constexpr double kMarginMm = 5.0;
    SectionMap map;
    map.frame = orientation;
    map.frame.origin = core::axisPointAt(measurement, 0.5 * measurement.axis.lengthMm);
    const double radiusMm = std::max(0.5 * measurement.axis.lengthMm,
                                     0.5 * measurement.ostium.section.metrics.longestDiameterMm.value) + kMarginMm;
    map.pixelsPerMm = zoom * 0.5 * std::min(area.width(), area.height()) / radiusMm;
    map.zero = area.center();
    return map;
}

void drawSurfaceOverlay(QPainter& painter, const QRectF& area, const SectionMap& map, const SurfacePicture& picture,
                        const SurfaceOverlay& overlay) {
    painter.save();
    painter.setClipRect(area);
    painter.setRenderHint(QPainter::Antialiasing);
    const core::AppendageMeasurement& m = *overlay.measurement;
    std::vector<Label> labels; // the first come first
    LabelPlaces places;
    std::vector<core::PatientPoint> axis(m.axis.approach);
    axis.insert(axis.end(), m.axis.points.begin(), m.axis.points.end());
    painter.save();
    if (!overlay.cutOpen) painter.setOpacity(0.8);
    drawLine(painter, axis, false, penOf(Role::Axis, 1.8), map, picture);
    painter.restore();

    if (overlay.landing)
        drawContour(painter, overlay.landing->section, Role::Landing,
                    wordOf(Role::Landing) + QLatin1Char(' ') + quantity(overlay.landing->depthMm, Unit::Millimetre), map,
                    picture, labels);
    drawContour(painter, m.ostium.section, Role::Ostium,
                m.ostium.proposed ? QCoreApplication::translate("Surface", "ostium, proposed") : wordOf(Role::Ostium),
                map, picture, labels);
    if (overlay.shown)
        drawContour(painter, overlay.shown->section, Role::Section,
                    QCoreApplication::translate("Surface", "depth %1").arg(quantity(overlay.shown->sMm, Unit::Millimetre)),
                    map, picture, labels);
    using enum LabelSide;
    for (const SurfaceLine& line : overlay.lines) {
        if (line.points.size() < 2) continue;
        drawLine(painter, line.points, line.closed, penOf(line.role, line.closed ? 2.0 : 1.2), map, picture);
        if (!line.label.isEmpty())
            labels.push_back({line.label, colourOf(line.role), {{topOf(line.points, map), {Above, Right, Left, Below}}}});
    }
    drawMarkAt(painter, area, core::axisPointAt(m, m.axis.lengthMm), Role::Tip, map, picture, labels, places);
    if (overlay.marks) {
        if (overlay.marks->circumflex)
            drawMarkAt(painter, area, *overlay.marks->circumflex, Role::Circumflex, map, picture, labels, places);
        if (overlay.marks->ridge) drawMarkAt(painter, area, *overlay.marks->ridge, Role::Ridge, map, picture, labels, places);
    }

    places.keepFree(overlay.title);
    for (const QRectF& letters : drawOrientation(painter, area, map.frame, overlay.title))
        places.keepFree(letters);
    places.keepFree(drawScaleBar(painter, area, map.pixelsPerMm));
    drawKey(painter, area, places);
    for (const Label& label : labels)
        places.draw(painter, label, area);
    painter.restore();
}

} // namespace gauge::app
