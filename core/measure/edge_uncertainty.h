// How the noise at the border of a contour becomes an uncertainty of its metrics.
#pragma once

#include "core/geometry/planar_contour.h"
#include "core/measure/section_metrics.h"

namespace gauge::core {

/// Noise of a border as a random shift along its outward normal.
struct EdgeNoise {
    /// Power at long waves, mm3: the mean shift over a length L of border has the variance lineDensity / L.
    double lineDensityMm3 = 0.0;
    double correlationMm = 0.8; ///< waves shorter than a few of these are damped
    /// Standard uncertainty of a shift common to the whole border: levels, blur and grid, mm.
    double commonMm = 0.0;
};

/// Standard uncertainty of each metric: the shift is expanded in waves around the contour, each metric's
/// sensitivity to each wave is taken by central differences, and the independent parts add in quadrature.
/// @param contour  smooth, counter-clockwise, at least 24 points about equally spaced.
MetricValues edgeUncertainty(ContourView contour, const EdgeNoise& noise);

} // namespace gauge::core
