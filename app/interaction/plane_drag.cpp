#include "app/interaction/plane_drag.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

/// From the middle of a plane to the handles at its ends: past the wall, the ostium's farther than the landing zone's.
double halfMm(const core::Section& section, double beyondMm) {
    return 0.5 * section.metrics.longestDiameterMm.value + beyondMm;
}

} // namespace

std::vector<PlaneInSection> planesIn(const Session& session, const SectionMap& map) {
    constexpr double kBeyondOstiumMm = 7.0, kBeyondLandingMm = 4.0;
    std::vector<PlaneInSection> planes;
    if (!session.measurement()) return planes;
    if (const auto plane = session.landingPlane())
        if (auto handles = PlaneHandles::on(map, *plane, halfMm(session.landingShown()->section, kBeyondLandingMm)))
            planes.push_back({HeldPlane::Landing, std::move(*handles)});
    if (const auto plane = session.ostiumPlane())
        if (auto handles = PlaneHandles::on(map, *plane, halfMm(session.measurement()->ostium.section, kBeyondOstiumMm)))
            planes.push_back({HeldPlane::Ostium, std::move(*handles)});
    return planes;
}

std::optional<PlaneDrag> PlaneDrag::grip(const Session& session, const SectionMap& map, const QPointF& at) {
    for (auto& plane : planesIn(session, map))
        if (const auto grip = plane.handles.gripAt(at)) {
            const auto landing = session.landingPlace();
            return PlaneDrag(std::move(plane), *grip, at, landing ? landing->depthMm : 0.0);
        }
    return std::nullopt;
}

QString PlaneDrag::hint(const Session& session, const SectionMap& map, const QPointF& at) {
    const auto drag = grip(session, map, at);
    if (!drag) return {};
    if (drag->m_plane.which == HeldPlane::Ostium)
        return drag->m_grip == PlaneHandles::Grip::Move
                   ? QCoreApplication::translate("Handles", "Drag to move the ostium plane along its normal. Keys, while the ostium is shown (O): Alt+Left, Alt+Right; with Shift in finer steps.")
                   : QCoreApplication::translate("Handles", "Drag to tilt the ostium plane. Keys, while the ostium is shown (O): Alt+Up, Alt+Down in the picture, Alt+Page Up, Alt+Page Down out of it; with Shift in finer steps.");
    return drag->m_grip == PlaneHandles::Grip::Move
               ? QCoreApplication::translate("Handles", "Drag to move the landing plane along the axis. Keys, while the landing zone is shown (L): Alt+Left, Alt+Right; with Shift in finer steps.")
               : QCoreApplication::translate("Handles", "Drag to tilt the landing plane. Keys, while the landing zone is shown (L): Alt+Up, Alt+Down in the picture, Alt+Page Up, Alt+Page Down out of it; with Shift in finer steps. Alt+Home sets it square to the axis.");
}

void PlaneDrag::moveTo(Session& session, const QPointF& to) {
    m_to = m_plane.handles.dragged(m_grip, m_from, to);
    if (m_plane.which == HeldPlane::Ostium)
        session.previewOstium(*m_to);
    else if (m_grip == PlaneHandles::Grip::Tilt)
        session.previewLandingTilt(m_to->normal);
    else // the landing plane is carried along the axis
        session.previewLanding(m_depthMm + m_plane.handles.wayBetween(m_from, to).dot(
                                               core::axisDirectionAt(*session.measurement(), m_depthMm)));
}

void PlaneDrag::record(Session& session) const {
    if (!m_to) return;
    static int gesture = 1 << 24; // each drag its own
    ++gesture;
    const bool tilts = m_grip == PlaneHandles::Grip::Tilt;
    if (m_plane.which == HeldPlane::Ostium)
        tilts ? session.tiltOstium(*m_to, gesture) : session.moveOstium(*m_to, gesture);
    else if (session.isPreviewing()) // nothing is shown where there is no such plane
        tilts ? session.tiltLanding(session.landingPlane()->normal, gesture)
              : session.moveLanding(session.landingPlace()->depthMm, gesture);
}

} // namespace gauge::app
