#include "core/geometry/plane_moves.h"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

namespace gauge::core {

Plane shifted(const Plane& plane, double mm) {
    return {plane.point + mm * plane.normal, plane.normal};
}

Plane tilted(const Plane& plane, const PatientVector& axis, double deg) {
    const Eigen::AngleAxisd turn(deg * std::numbers::pi / 180.0, axis.mm.normalized());
    return {plane.point, {(turn * plane.normal.mm).normalized()}};
}

double turnBetweenDeg(const PatientVector& axis, const PatientVector& from, const PatientVector& to) {
    const Eigen::Vector3d n = axis.mm.normalized();
    const Eigen::Vector3d a = from.mm - from.mm.dot(n) * n, b = to.mm - to.mm.dot(n) * n;
    return std::atan2(n.dot(a.cross(b)), a.dot(b)) * 180.0 / std::numbers::pi;
}

std::optional<LineInSection> lineInSection(const Plane& section, const Plane& plane) {
    constexpr double kLeastSine = 0.2;
    const Eigen::Vector3d across = section.normal.mm.cross(plane.normal.mm);
    if (across.norm() < kLeastSine) return std::nullopt;
    // Within the plane, square to the line, towards the section.
    const Eigen::Vector3d towards = section.normal.mm - section.normal.dot(plane.normal) * plane.normal.mm;
    const double way = -signedDistanceMm(section, plane.point) / towards.dot(section.normal.mm);
    return LineInSection{{plane.point.mm + way * towards}, {across.normalized()}};
}

} // namespace gauge::core
