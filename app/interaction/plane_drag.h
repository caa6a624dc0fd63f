// The ostium plane dragged by one of its handles.
#pragma once

#include "app/document/session.h"
#include "app/interaction/plane_handles.h"

namespace gauge::app {

struct PlaneDrag {
    PlaneHandles handles; ///< as the plane was when it was gripped
    PlaneHandles::Grip grip = PlaneHandles::Grip::Move;
    QPointF from;
    std::optional<core::Plane> to; ///< nothing: not moved yet
};

/// Records where the plane was dragged to, as one step of undo.
inline void recordDrag(Session& session, const PlaneDrag& drag) {
    if (!drag.to) return;
    static int gesture = 1 << 24; // each drag its own
    if (drag.grip == PlaneHandles::Grip::Move)
        session.moveOstium(*drag.to, ++gesture);
    else
        session.tiltOstium(*drag.to, ++gesture);
}

} // namespace gauge::app
