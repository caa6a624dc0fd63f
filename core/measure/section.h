// A cross-section of the blood pool: its contour, its metrics, and the uncertainty of each.
// Definitions of the metrics: DEVELOPERS.md, "Section metrics".
#pragma once

#include "core/geometry/plane.h"
#include "core/measure/estimate.h"

#include <Eigen/Core>
#include <vector>

namespace gauge::core {

/// Metrics of one section, lengths in mm, area in mm2, eccentricity index without unit.
struct SectionMetrics {
    Estimate areaMm2;
    Estimate perimeterMm;
    Estimate longestDiameterMm;          ///< D_max: greatest distance between two contour points
    Estimate shortestDiameterMm;         ///< D_min: widest extent perpendicular to D_max
    Estimate leastWidthMm;               ///< minimum caliper
    Estimate meanDiameterMm;             ///< (D_max + D_min) / 2
    Estimate perimeterDerivedDiameterMm; ///< P / pi
    Estimate areaDerivedDiameterMm;      ///< 2 sqrt(A / pi)
    Estimate eccentricityIndex;          ///< 1 - D_min / D_max
};

/// A measured section. The contour is a polygon on a smooth closed curve, counter-clockwise seen from the side to
/// which the frame's normal points (the appendage tip), first point not repeated.
struct Section {
    SectionFrame frame;                   ///< origin: the plane's point as asked for
    std::vector<Eigen::Vector2d> contour; ///< section coordinates in `frame`, mm
    PatientPoint center;                  ///< area centroid of the contour
    SectionMetrics metrics;
    /// Ends of the longest diameter, and of the extent perpendicular to it, in section coordinates.
    Eigen::Vector2d longestFrom, longestTo, shortestFrom, shortestTo;
    double bloodHu = 0.0; ///< blood level found in this section
    double wallHu = 0.0;  ///< mean level of the wall found around it
    /// Within the spread of its placement the plane opens into a neighbour or leaves the lumen: the plane component
    /// then rests on the other side alone.
    bool opensWithinSpread = false;
};

/// How far a plane may lie from where it was meant: standard deviations of a shift along the normal and of a tilt
/// about each of two axes in the plane.
struct PlacementSpread {
    double shiftMm = 1.0;
    double tiltDeg = 3.0;

    static constexpr PlacementSpread confirmed() { return {1.0, 3.0}; }
    static constexpr PlacementSpread proposed() { return {2.0, 5.0}; }
};

} // namespace gauge::core
