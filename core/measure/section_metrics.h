// The metrics of one closed contour as plain numbers; section.h carries them with their uncertainty.
//
//   D_max  greatest distance between two contour points      D_P = P / pi
//   D_min  widest extent perpendicular to D_max              D_A = 2 sqrt(A / pi)
//   least width  minimum caliper                             eccentricity index = 1 - D_min / D_max
#pragma once

#include "core/geometry/planar_contour.h"
#include "core/measure/section.h"

#include <array>

namespace gauge::core {

/// Order of the numbers in `MetricValues`.
enum class Metric : std::size_t {
    Area,
    Perimeter,
    LongestDiameter,
    ShortestDiameter,
    LeastWidth,
    MeanDiameter,
    PerimeterDerivedDiameter,
    AreaDerivedDiameter,
    EccentricityIndex,
};
inline constexpr std::size_t kMetricCount = 9;

/// Values in mm, mm2 or without unit, indexed by `Metric`.
using MetricValues = std::array<double, kMetricCount>;

/// All metrics of a contour. Precondition: `validateContour` accepts it.
/// Accuracy: exact for the polygon, which must be fine (0.25 mm steps on a 20 mm circle read 0.003 % low).
MetricValues metricValues(ContourView contour);

/// The member of `metrics` that holds `metric`.
Estimate& estimateOf(SectionMetrics& metrics, Metric metric);
const Estimate& estimateOf(const SectionMetrics& metrics, Metric metric);

} // namespace gauge::core
