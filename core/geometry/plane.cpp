#include "core/geometry/plane.h"

#include <cassert>
#include <cmath>

namespace gauge::core {

SectionFrame frameOf(const Plane& plane) {
    const bool nearLeftRight = std::abs(plane.normal.mm.x()) > 0.9 * plane.normal.norm();
    return frameOf(plane, {nearLeftRight ? Eigen::Vector3d::UnitY() : Eigen::Vector3d::UnitX()});
}

SectionFrame frameOf(const Plane& plane, const PatientVector& hint) {
    const Eigen::Vector3d n = plane.normal.mm.normalized();
    const Eigen::Vector3d inPlane = hint.mm - hint.mm.dot(n) * n;
    assert(inPlane.norm() > 1e-9 * hint.norm());
    const Eigen::Vector3d u = inPlane.normalized();
    return {plane.point, {u}, {n.cross(u)}, {n}};
}

} // namespace gauge::core
