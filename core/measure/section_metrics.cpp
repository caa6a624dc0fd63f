#include "core/measure/section_metrics.h"

#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

template <class Metrics> auto& member(Metrics& m, Metric metric) {
    switch (metric) {
    case Metric::Area: return m.areaMm2;
    case Metric::Perimeter: return m.perimeterMm;
    case Metric::LongestDiameter: return m.longestDiameterMm;
    case Metric::ShortestDiameter: return m.shortestDiameterMm;
    case Metric::LeastWidth: return m.leastWidthMm;
    case Metric::MeanDiameter: return m.meanDiameterMm;
    case Metric::PerimeterDerivedDiameter: return m.perimeterDerivedDiameterMm;
    case Metric::AreaDerivedDiameter: return m.areaDerivedDiameterMm;
    case Metric::EccentricityIndex: break;
    }
    return m.eccentricityIndex;
}

} // namespace

MetricValues metricValues(ContourView contour) {
    const double area = std::abs(signedAreaMm2(contour));
    const double perimeter = perimeterMm(contour);
    const auto [longest, leastWidth] = calipers(contour);
    const Eigen::Vector2d along = (longest.to - longest.from).normalized();
    const double shortest = extentAlong(contour, {-along.y(), along.x()}).lengthMm;
    return {area,
            perimeter,
            longest.lengthMm,
            shortest,
            leastWidth.lengthMm,
            0.5 * (longest.lengthMm + shortest),
            perimeter / std::numbers::pi,
            2.0 * std::sqrt(area / std::numbers::pi),
            1.0 - shortest / longest.lengthMm};
}

Estimate& estimateOf(SectionMetrics& metrics, Metric metric) {
    return member(metrics, metric);
}

const Estimate& estimateOf(const SectionMetrics& metrics, Metric metric) {
    return member(metrics, metric);
}

} // namespace gauge::core
