#include "core/measure/section_metrics.h"

#include "core/measure/edge_uncertainty.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;

namespace {

std::vector<Eigen::Vector2d> ellipse(double a, double b, std::size_t n = 2000) {
    std::vector<Eigen::Vector2d> points;
    for (std::size_t i = 0; i < n; ++i) {
        const double t = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(n);
        points.push_back({a * std::cos(t), b * std::sin(t)});
    }
    return points;
}

double of(const MetricValues& values, Metric metric) { return values[static_cast<std::size_t>(metric)]; }

} // namespace

TEST(MetricValues, AgreeWithTheDerivedDiametersOfAnEllipse) {
    // references 11a: "max 30 x min 20 mm: perimeter-derived 25.2506, area-derived 24.4949, mean 25.0" [computed].
    const auto values = metricValues(ellipse(15.0, 10.0));
    EXPECT_NEAR(of(values, Metric::PerimeterDerivedDiameter), 25.2506, 1e-4);
    EXPECT_NEAR(of(values, Metric::AreaDerivedDiameter), 24.4949, 1e-4);
    EXPECT_NEAR(of(values, Metric::MeanDiameter), 25.0, 1e-4);
    EXPECT_NEAR(of(values, Metric::LongestDiameter), 30.0, 1e-4);
    EXPECT_NEAR(of(values, Metric::ShortestDiameter), 20.0, 1e-3);
    EXPECT_NEAR(of(values, Metric::LeastWidth), 20.0, 1e-3);
    EXPECT_NEAR(of(values, Metric::EccentricityIndex), 1.0 / 3.0, 1e-4);
}

TEST(EdgeUncertainty, OfACircleFollowsTheClosedForm) {
    // A shift with power S along the border of length P has the mean shift's variance S / P; area changes by P times
    // the mean shift, D_A by twice it.
    const double radius = 10.0, density = 0.002;
    const double perimeter = 2.0 * std::numbers::pi * radius;
    const auto u = edgeUncertainty(ellipse(radius, radius, 400), {density, 0.8, 0.0});
    EXPECT_NEAR(of(u, Metric::Area), std::sqrt(density * perimeter), 0.01);
    EXPECT_NEAR(of(u, Metric::AreaDerivedDiameter), 2.0 * std::sqrt(density / perimeter), 1e-4);
    EXPECT_NEAR(of(u, Metric::PerimeterDerivedDiameter), 2.0 * std::sqrt(density / perimeter), 1e-4);
}

TEST(EdgeUncertainty, GrowsWithTheRootOfTheNoise) {
    const auto one = edgeUncertainty(ellipse(12, 9, 400), {0.001, 0.8, 0.0});
    const auto four = edgeUncertainty(ellipse(12, 9, 400), {0.004, 0.8, 0.0});
    for (const Metric m : {Metric::Area, Metric::Perimeter, Metric::AreaDerivedDiameter})
        EXPECT_NEAR(of(four, m), 2.0 * of(one, m), 0.02 * of(four, m));
}
