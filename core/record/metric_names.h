// How the metrics of a contour are called in the ids of recorded values, and their units there.
#pragma once

#include "core/measure/section_metrics.h"

#include <array>

namespace gauge::core {

struct MetricName {
    Metric metric;
    const char* id;
    const char* unit;
};

/// In the order in which they are recorded.
inline constexpr std::array<MetricName, kMetricCount> kMetricNames{{
    {Metric::Area, "area", "mm2"},
    {Metric::Perimeter, "perimeter", "mm"},
    {Metric::LongestDiameter, "longest-diameter", "mm"},
    {Metric::ShortestDiameter, "shortest-diameter", "mm"},
    {Metric::LeastWidth, "least-width", "mm"},
    {Metric::MeanDiameter, "mean-diameter", "mm"},
    {Metric::PerimeterDerivedDiameter, "perimeter-derived-diameter", "mm"},
    {Metric::AreaDerivedDiameter, "area-derived-diameter", "mm"},
    {Metric::EccentricityIndex, "eccentricity-index", "1"},
}};

} // namespace gauge::core
