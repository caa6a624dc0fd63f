// A plane near marked points: total least squares, that is the least sum of squared distances square to the plane.
// Neighbours: plane.h, ellipse_fit.h.
#pragma once

#include "core/geometry/plane.h"
#include "core/result.h"

#include <cstddef>
#include <span>
#include <string_view>

namespace gauge::core {

struct PlaneFit {
    Plane plane;               ///< through the points' centroid; the sign of the normal means nothing
    double rmsMm = 0.0;        ///< root of the mean squared distance of the points from the plane
    double largestMm = 0.0;    ///< distance of the point farthest from it
    std::size_t farthest = 0;  ///< index of that point
    /// Root mean squares of the points along the two principal directions within the plane, mm: the long and the short
    /// extent over which they are spread. A short extent of the size of the residual leaves the tilt to chance.
    double longSpreadMm = 0.0, shortSpreadMm = 0.0;
};

struct PlaneFitOptions {
    /// The short extent that the points must have for their plane to be known, mm, >= 0.
    double leastSpreadMm = 0.0;
};

/// @param points  at least 3, LPS, mm; their order does not matter.
/// @param of      what they were marked on, as it stands in a message: "the mitral annulus".
/// @errors TooFewPoints below 3; NonFinite; Degenerate when they lie in one place or on one line, to rounding or to
/// `leastSpreadMm`, or when they are spread across their best plane more than half as far as along its short direction.
/// Accuracy: that of the singular value decomposition of the centred points. Unchanged by rigid motion and order.
/// Source: common practice (orthogonal regression by singular values), no source read.
Result<PlaneFit> fitPlane(std::span<const PatientPoint> points, std::string_view of = "the points",
                          const PlaneFitOptions& options = {});

} // namespace gauge::core
