// What the usual ways of reading echo leave out: the largest of a few views, and chords beside the centre.
#pragma once

#include "core/echo/width_reading.h"
#include "core/measure/estimate.h"
#include "core/result.h"

#include <Eigen/Core>
#include <span>

namespace gauge::core {

/// The largest of the views: a quantity of its own, never to be compared with a diameter of the contour.
struct LargestOfViews {
    Estimate valueMm;
    double angleDeg = 0.0;
};
/// @errors those of averageViews.
/// Noise makes the largest of several too large (+1.0 u for four equal views: the mean of the largest of four normal
/// values is 1.03); this is not taken off, only told by the expected shortfall's counterpart below.
Result<LargestOfViews> largestOfViews(std::span<const WidthReading> readings);

/// By how much the largest of the views at these probe angles misses the true longest diameter (true - largest, mm).
struct Shortfall {
    double meanMm = 0.0;     ///< over all directions of the ellipse, and of the tilt
    double greatestMm = 0.0;
};
/// @param tiltDeg  of the beam to the appendage's axis (widths drawn across the seen axis).
/// 24 x 18 mm, views 0/45/90/135: mean 0.4 mm; greatest 1.3 without tilt, 1.4 at 20 degrees.
/// Accuracy: 0.01 mm (directions on a grid of 0.5 degrees).
Shortfall expectedShortfall(double longestMm, double shortestMm, std::span<const double> probeAnglesDeg,
                            double tiltDeg = 0.0);

/// Chord, mm, through `point` (from the centre, mm, along the longest and the shortest diameter) in a direction counted
/// from the longest diameter; 0 when the point lies outside the ellipse.
double chordThroughMm(double longestMm, double shortestMm, const Eigen::Vector2d& point, double directionRad);

/// What views through a point beside the centre do to the fitted ellipse: fitted - true.
struct OffCentreEffect {
    double longestMm = 0.0, shortestMm = 0.0, areaDerivedMm = 0.0;
};
/// @param point  where the views' common axis passes, from the centre, along longest and shortest diameter, mm.
/// @param directionDeg  probe angle of the longest diameter.
/// @errors InvalidArgument when the point lies outside the ellipse; those of fitWidthEllipse.
Result<OffCentreEffect> offCentreEffect(double longestMm, double shortestMm, double directionDeg,
                                        const Eigen::Vector2d& point, std::span<const double> probeAnglesDeg);

} // namespace gauge::core
