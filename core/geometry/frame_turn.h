// Turning a frame: what a view does that is looked around with.
#pragma once

#include "core/geometry/plane.h"
#include "core/units/angle.h"

namespace gauge::core {

/// The frame turned about the unit direction `axis` through its origin by `deg` (right-handed), made orthonormal again so
/// that thousands of small turns add no distortion.
inline SectionFrame turned(const SectionFrame& frame, const PatientVector& axis, double deg) {
    const Eigen::Matrix3d turn = Eigen::AngleAxisd(deg * kRadPerDegree, axis.mm).toRotationMatrix();
    SectionFrame result = frame;
    result.u.mm = (turn * frame.u.mm).normalized();
    result.normal.mm = result.u.mm.cross(turn * frame.v.mm).normalized();
    result.v.mm = result.normal.mm.cross(result.u.mm);
    return result;
}

} // namespace gauge::core
