// A catheter of known outer diameter: a smooth course that ends straight.
#pragma once

#include "sample-data/fluoro/c_arm.h"

#include <vector>

namespace gauge::sample_case {

struct Catheter {
    /// Centre line, points close together, from the entry to the tip; the part behind the last bend is straight.
    std::vector<core::PatientPoint> course;
    double outerDiameterMm = 2.0;
    double straightMm = 0.0; ///< length of the straight end
};

/// A course through the given places (Catmull-Rom), straight between the last two.
Catheter catheterThrough(const std::vector<core::PatientPoint>& places, double outerDiameterMm);

/// Where the silhouette's two edges lie across the centre line at `beforeTipMm`: the tangent points of the rays.
struct CatheterEdges {
    core::PatientPoint centre;
    Eigen::Vector2d firstPixel, secondPixel;
};
/// Precondition: `beforeTipMm` lies in the straight end.
CatheterEdges catheterEdges(const Catheter& catheter, const CArm& arm, double beforeTipMm);

} // namespace gauge::sample_case
