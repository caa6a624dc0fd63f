// A plane of the case held by one of its handles, in any view that shows a section.
#pragma once

#include "app/document/session.h"
#include "app/interaction/plane_handles.h"

#include <vector>

namespace gauge::app {

enum class HeldPlane { Ostium, Landing };

/// A plane where a section cuts it.
struct PlaneInSection {
    HeldPlane which = HeldPlane::Ostium;
    PlaneHandles handles;

    Role role() const { return which == HeldPlane::Ostium ? Role::Ostium : Role::Landing; }
};

/// The planes of the case that `map` cuts, as they are to be shown now.
std::vector<PlaneInSection> planesIn(const Session& session, const SectionMap& map);

class PlaneDrag {
public:
    /// Grips the handle there; nothing where there is none.
    static std::optional<PlaneDrag> grip(const Session& session, const SectionMap& map, const QPointF& at);
    /// What the handle there does and which keys do the same; empty where there is none.
    static QString hint(const Session& session, const SectionMap& map, const QPointF& at);

    HeldPlane which() const { return m_plane.which; }
    /// Shows the plane as dragged there; nothing is recorded.
    void moveTo(Session& session, const QPointF& to);
    /// Records where the plane was dragged to, as one step of undo.
    void record(Session& session) const;

private:
    PlaneDrag(PlaneInSection plane, PlaneHandles::Grip grip, const QPointF& from, double depthMm)
        : m_plane(std::move(plane)), m_grip(grip), m_from(from), m_depthMm(depthMm) {}

    PlaneInSection m_plane; ///< as it was when it was gripped
    PlaneHandles::Grip m_grip;
    QPointF m_from;
    double m_depthMm;              ///< of the landing plane, then
    std::optional<core::Plane> m_to; ///< nothing: not moved yet
};

} // namespace gauge::app
