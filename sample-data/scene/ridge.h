// The fold between appendage and upper left vein, and places at a stated distance from the pool.
#pragma once

#include "sample-data/scene/scene.h"

#include <functional>

namespace gauge::sample_case {

/// The fold, looked at in the plane of lobe 0's axis and the direction to the vein.
struct RidgeCrest {
    double s = 0.0;         ///< of the crest, along lobe 0's tangent from its s = 0
    Eigen::Vector3d crest;  ///< outermost point of the fold, on the pool's boundary, scene mm
    Eigen::Vector3d inside; ///< middle of the fold at the asked depth below its crest
};

/// Finds the crest by bisection: the least s at which tissue separates the two lumens.
/// @param towardsVein  unit vector perpendicular to lobe 0's tangent at s = 0.
/// Precondition: lobe 0 is straight for |s| < 8 mm; vein 0 lies on that side.
RidgeCrest findRidgeCrest(const Scene& scene, const Eigen::Vector3d& towardsVein, double depthMm);

/// Replaces vein 0 by `veinAt(offset)`, with the offset from lobe 0's axis at s = 0 (mm, between `near` and
/// `far`) at which the crest lies at `wantedS`.
/// @return that offset.
double placeVeinForCrest(Scene& scene, const Eigen::Vector3d& towardsVein, double wantedS, double near,
                       double far, const std::function<Tube(double)>& veinAt);

/// From `from` along `direction` (unit), the first place where the pool is `clearanceMm` away.
Eigen::Vector3d placeClearOfPool(const Scene& scene, const Eigen::Vector3d& from,
                                 const Eigen::Vector3d& direction, double clearanceMm);

} // namespace gauge::sample_case
