// Planes moved and tilted by hand.
#pragma once

#include "core/geometry/plane.h"

#include <optional>

namespace gauge::core {

/// Along its normal, mm; positive to the side to which it points.
Plane shifted(const Plane& plane, double mm);

/// Turned about its point by the right-hand rule about `axis` (not the zero vector), degrees. Turning back gives the plane
/// again to rounding.
Plane tilted(const Plane& plane, const PatientVector& axis, double deg);

/// The angle, degrees in (-180, 180], by which `from` must be turned about `axis` to come as near to `to` as it can: that of
/// their parts square to the axis. 0 where one of them has none.
double turnBetweenDeg(const PatientVector& axis, const PatientVector& from, const PatientVector& to);

/// Where `plane` cuts `section`: the point of that line next to the plane's point within the plane, and the line's unit
/// direction. Nothing when they are within about 12 degrees of parallel.
struct LineInSection {
    PatientPoint point;
    PatientVector direction;
};
std::optional<LineInSection> lineInSection(const Plane& section, const Plane& plane);

} // namespace gauge::core
