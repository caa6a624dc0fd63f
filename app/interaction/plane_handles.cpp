#include "app/interaction/plane_handles.h"

#include "app/drawing/drawn_lines.h"
#include "app/drawing/marks_drawing.h"
#include "core/geometry/plane_moves.h"

#include <cmath>

namespace gauge::app {
namespace {

constexpr double kFarMm = 25.0, kReachPx = 10.0;

double apart(const QPointF& a, const QPointF& b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

} // namespace

std::optional<PlaneHandles> PlaneHandles::on(const SectionMap& map, const core::Plane& plane, double halfMm) {
    const auto line = core::lineInSection(map.frame.plane(), plane);
    if (!line || core::distanceMm(line->point, plane.point) > kFarMm) return std::nullopt;
    PlaneHandles handles(map, plane);
    handles.m_middle = line->point;
    handles.m_places = {map.fromPatient(line->point + (-halfMm) * line->direction), map.fromPatient(line->point),
                        map.fromPatient(line->point + halfMm * line->direction)};
    return handles;
}

std::optional<PlaneHandles::Grip> PlaneHandles::gripAt(const QPointF& at) const {
    if (apart(at, m_places[1]) <= kReachPx) return Grip::Move;
    if (apart(at, m_places[0]) <= kReachPx || apart(at, m_places[2]) <= kReachPx) return Grip::Tilt;
    return std::nullopt;
}

core::Plane PlaneHandles::dragged(Grip grip, const QPointF& from, const QPointF& to) const {
    const core::PatientPoint a = m_map.patientFrom(from), b = m_map.patientFrom(to);
    if (grip == Grip::Move) return core::shifted(m_plane, (b - a).dot(m_plane.normal));
    const core::PatientVector& about = m_map.frame.normal;
    return core::tilted(m_plane, about, core::turnBetweenDeg(about, a - m_middle, b - m_middle));
}

void PlaneHandles::draw(QPainter& painter, Role role, bool tilts) const {
    drawHaloLine(painter, m_places[0], m_places[2], penOf(role, 2.0));
    drawHandle(painter, m_places[1], colourOf(role), true);
    if (!tilts) return;
    drawHandle(painter, m_places[0], colourOf(role), false);
    drawHandle(painter, m_places[2], colourOf(role), false);
}

} // namespace gauge::app
