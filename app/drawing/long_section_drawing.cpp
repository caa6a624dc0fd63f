#include "app/drawing/long_section_drawing.h"

#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"
#include "app/drawing/seat_drawing.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <Eigen/Geometry>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

/// Where a section's contour crosses the plane of `frame`: lowest and highest v, in section coordinates of
/// `frame`.
std::optional<std::pair<Eigen::Vector2d, Eigen::Vector2d>> crossing(const core::Section& section,
                                                                    const core::SectionFrame& frame) {
    std::optional<std::pair<Eigen::Vector2d, Eigen::Vector2d>> ends;
    const std::size_t count = section.contour.size();
    for (std::size_t i = 0; i < count; ++i) {
        const core::PatientPoint a = section.frame.patientFromSection(section.contour[i]);
        const core::PatientPoint b = section.frame.patientFromSection(section.contour[(i + 1) % count]);
        const double da = core::signedDistanceMm(frame.plane(), a),
                     db = core::signedDistanceMm(frame.plane(), b);
        if ((da < 0) == (db < 0)) continue;
        const Eigen::Vector2d at = frame.sectionFromPatient(a + (da / (da - db)) * (b - a));
        if (!ends)
            ends.emplace(at, at);
        else if (at.y() < ends->first.y())
            ends->first = at;
        else if (at.y() > ends->second.y())
            ends->second = at;
    }
    return ends;
}

void drawOutline(QPainter& painter, const SectionMap& map, const core::AppendageMeasurement& measurement) {
    QPainterPath low, high;
    for (const auto& entry : measurement.profile) {
        const auto ends = crossing(entry.section, map.frame);
        if (!ends) continue;
        const QPointF a = map.fromSection(ends->first), b = map.fromSection(ends->second);
        low.elementCount() ? low.lineTo(a) : low.moveTo(a);
        high.elementCount() ? high.lineTo(b) : high.moveTo(b);
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(QColor(255, 255, 255, 150), 1.2, Qt::DotLine));
    painter.drawPath(low);
    painter.drawPath(high);
    painter.restore();
}

/// The axis, faint where it lies more than `kNearMm` off the shown plane.
void drawAxis(QPainter& painter, const SectionMap& map, const core::AppendageAxis& axis) {
    constexpr double kNearMm = 2.0;
    std::vector<core::PatientPoint> points(axis.approach);
    points.insert(points.end(), axis.points.begin(), axis.points.end());
    QPainterPath near, far;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const bool isNear = std::abs(core::signedDistanceMm(map.frame.plane(), points[i])) <= kNearMm;
        QPainterPath& path = isNear ? near : far;
        const QPointF from = map.fromPatient(points[i]);
        if (path.elementCount() == 0 || (path.currentPosition() - from).manhattanLength() > 1e-6)
            path.moveTo(from);
        path.lineTo(map.fromPatient(points[i + 1]));
    }
    painter.save();
    painter.setOpacity(0.45);
    drawHaloPath(painter, far, penOf(Role::Axis, 1.5));
    painter.restore();
    drawHaloPath(painter, near, penOf(Role::Axis, 2.0));
}

/// The word "axis" on the atrium's side, where little else is drawn.
std::optional<Label> axisLabel(const QRectF& area, const SectionMap& map, const core::AppendageMeasurement& m) {
    if (m.axis.approach.empty()) return std::nullopt;
    using enum LabelSide;
    Label label{wordOf(Role::Axis), colourOf(Role::Axis), {}};
    for (const double beforeMm : {-7.0, -12.0, -17.0})
        if (const QPointF at = map.fromPatient(core::axisPointAt(m, beforeMm)); area.contains(at))
            label.spots.push_back({at, {Below, Above}});
    return label.spots.empty() ? std::nullopt : std::optional(std::move(label));
}

/// A plane seen edge-on or obliquely: the part of it inside the contour, with a short tail at both ends. Returns its upper and
/// its lower end.
std::optional<std::pair<QPointF, QPointF>> drawPlane(QPainter& painter, const SectionMap& map, const core::Section& section,
                                                     Role role) {
    const auto ends = crossing(section, map.frame);
    if (!ends || (ends->second - ends->first).norm() < 0.5) return std::nullopt;
    constexpr double kTailMm = 3.0;
    const Eigen::Vector2d along = (ends->second - ends->first).normalized() * kTailMm;
    const QPointF a = map.fromSection(ends->first - along), b = map.fromSection(ends->second + along);
    drawHaloLine(painter, a, b, penOf(role, 2.0));
    return a.y() < b.y() ? std::pair(a, b) : std::pair(b, a);
}

/// Across the axis where the shown cross-section lies.
void drawCursor(QPainter& painter, const SectionMap& map, const core::AppendageMeasurement& m, double depthMm) {
    const core::PatientVector along = core::axisDirectionAt(m, depthMm);
    const Eigen::Vector2d c = map.frame.sectionFromPatient(core::axisPointAt(m, depthMm));
    const Eigen::Vector2d d{along.dot(map.frame.u), along.dot(map.frame.v)};
    if (d.norm() <= 0.2) return;
    const Eigen::Vector2d across = Eigen::Vector2d(-d.y(), d.x()).normalized() * 14.0;
    drawHaloLine(painter, map.fromSection(c - across), map.fromSection(c + across), penOf(Role::Section, 1.5));
}

void drawMarkOn(QPainter& painter, const SectionMap& map, const core::PatientPoint& p, Role role) {
    constexpr double kNearMm = 3.0, kFarOpacity = 0.4;
    const bool isNear = std::abs(core::signedDistanceMm(map.frame.plane(), p)) <= kNearMm;
    drawMarker(painter, map.fromPatient(p), role, isNear ? 1.0 : kFarOpacity);
}

} // namespace

core::SectionFrame longSectionFrame(const core::AppendageMeasurement& measurement, double turnDeg) {
    const core::Section& ostium = measurement.ostium.section;
    const Eigen::Vector3d u = ostium.frame.normal.mm.normalized();
    const core::PatientPoint tip = core::axisPointAt(measurement, measurement.axis.lengthMm);
    const auto across = [&](const Eigen::Vector3d& d) -> Eigen::Vector3d { return d - d.dot(u) * u; };
    constexpr double kOffAxisMm = 1.0; // nearer than this, the tip gives no direction
    Eigen::Vector3d v = across((tip - ostium.center).mm);
    if (v.norm() < kOffAxisMm) v = across(-Eigen::Vector3d::UnitZ());
    if (v.norm() < 1e-3) v = across(Eigen::Vector3d::UnitY());
    v.normalize();
    if (v.z() > 0) v = -v;
    v = Eigen::AngleAxisd(turnDeg * M_PI / 180.0, u) * v;
    return {ostium.center, {u}, {v}, {u.cross(v)}};
}

QString landingWords(const core::LandingZone& landing) {
    const QString depth = quantity(landing.depthMm, Unit::Millimetre);
    if (landing.kind == core::LandingKind::Plug)
        return QCoreApplication::translate("Drawing", "plug plane, %1 beyond the ridge").arg(depth);
    return landing.tiltDeg ? QCoreApplication::translate("Drawing", "%1 %2, tilted %3")
                                 .arg(wordOf(Role::Landing), depth, quantity(*landing.tiltDeg, Unit::Degree))
                           : wordOf(Role::Landing) + QLatin1Char(' ') + depth;
}

std::vector<QRectF> drawLongSection(QPainter& painter, const QRectF& area, const SectionMap& map,
                                    const LongSectionScene& scene) {
    using enum LabelSide;
    painter.save();
    painter.setClipRect(area);
    const core::AppendageMeasurement& m = *scene.measurement;
    drawOutline(painter, map, m);
    drawAxis(painter, map, m.axis);
    if (scene.cursorMm) drawCursor(painter, map, m, *scene.cursorMm);
    const QPainterPath seat = scene.seat && scene.seat->seated ? drawSeat(painter, map, *scene.seat->seated) : QPainterPath();

    std::vector<Label> labels; // the first come first
    const auto addPlane = [&](const core::Section& section, Role role, const QString& text, bool fromAbove) {
        const auto ends = drawPlane(painter, map, section, role);
        if (!ends) return;
        const auto& [above, below] = *ends;
        const Label::Spot up{above, {Above, Right, Left}}, down{below, {Below, Right, Left}};
        labels.push_back({text, colourOf(role), {}});
        if (fromAbove)
            labels.back().spots = {up, down};
        else
            labels.back().spots = {{below + QPointF(0, 8), {Right}}, down, up}; // clear of the ostium, which lies to its left
    };
    addPlane(m.ostium.section, Role::Ostium,
             m.ostium.proposed ? QCoreApplication::translate("Drawing", "ostium, proposed") : wordOf(Role::Ostium), true);
    for (const auto* landing : scene.landings)
        addPlane(landing->section, Role::Landing, landingWords(*landing), false);
    const QPointF tip = map.fromPatient(core::axisPointAt(m, m.axis.lengthMm));
    drawMarker(painter, tip, Role::Tip);
    labels.push_back({wordOf(Role::Tip), colourOf(Role::Tip), {{tip, {Right, Below, Above, Left}}}});
    if (!seat.isEmpty()) {
        const QRectF box = seat.boundingRect();
        labels.push_back({seatLabel(*scene.seat), colourOf(Role::Device),
                          {{{box.center().x(), box.bottom()}, {Below}}, {{box.center().x(), box.top()}, {Above}}, {{box.right(), box.center().y()}, {Right}}}});
    }
    if (auto axis = axisLabel(area, map, m)) labels.push_back(std::move(*axis));
    LabelPlaces places;
    places.keepFree(scene.title);
    places.keepFree(around(tip, kMarkerReach));
    const auto drawMark = [&](const std::optional<core::PatientPoint>& mark, Role role) {
        if (!mark) return;
        drawMarkOn(painter, map, *mark, role);
        places.keepFree(around(map.fromPatient(*mark), kMarkerReach));
    };
    if (scene.marks) {
        drawMark(scene.marks->circumflex, Role::Circumflex);
        drawMark(scene.marks->ridge, Role::Ridge);
    }
    if (scene.handles) scene.handles(painter);

    for (const QRectF& letters : drawOrientation(painter, area, map.frame, scene.title))
        places.keepFree(letters);
    places.keepFree(drawScaleBar(painter, area, map.pixelsPerMm));
    for (const QRectF& place : scene.keepFree)
        places.keepFree(place);
    for (const Label& label : labels)
        places.draw(painter, label, area);
    painter.restore();
    return places.taken();
}

} // namespace gauge::app
