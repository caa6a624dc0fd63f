// Ellipses against SciPy and scikit-image.
#include "core/geometry/ellipse_fit.h"

#include "tests/outside/python_reference.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr double kPi = std::numbers::pi;

std::vector<Eigen::Vector2d> noisyEllipse(const Ellipse& e, double arc, int n, double sigma, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, sigma);
    std::vector<Eigen::Vector2d> out;
    for (int i = 0; i < n; ++i)
        out.push_back(pointAt(e, arc * i / n) + Eigen::Vector2d(noise(random), noise(random)));
    return out;
}

struct Case {
    Ellipse truth;
    double arc;
    int points;
    double sigma;
};

const Case kCases[] = {
    {{{3, -7}, 12, 8, 0.5}, 2 * kPi, 60, 0.3},
    {{{120, 85}, 15, 14, -1.1}, 2 * kPi, 40, 0.5}, // near circle, away from the origin
    {{{0, 0}, 18, 6, 1.4}, 2 * kPi, 25, 0.4},
    {{{5, 5}, 14, 9, -0.2}, 1.3 * kPi, 50, 0.2}, // part of the way round
};

void expectSameEllipse(const Ellipse& e, const nlohmann::json& other, double tolerance) {
    EXPECT_NEAR(e.center.x(), other["center"][0].get<double>(), tolerance);
    EXPECT_NEAR(e.center.y(), other["center"][1].get<double>(), tolerance);
    EXPECT_NEAR(e.semiMajorMm, other["a"].get<double>(), tolerance);
    EXPECT_NEAR(e.semiMinorMm, other["b"].get<double>(), tolerance);
    EXPECT_NEAR(std::remainder(e.angleRad - other["angle"].get<double>(), kPi), 0.0, tolerance);
}

} // namespace

TEST(EllipseOutside, EllipticIntegralEqualsScipy) {
    std::vector<double> ratios;
    for (int i = 0; i <= 300; ++i)
        ratios.push_back(std::pow(10.0, -6.0 + 6.0 * i / 300)); // 1e-6 to 1
    const auto expected = askPython("elliptic_e", {{"axis_ratio", ratios}}).get<std::vector<double>>();
    // SciPy takes m = 1 - q^2, which is rounded; E turns that into a few 1e-16.
    for (std::size_t i = 0; i < ratios.size(); ++i)
        EXPECT_NEAR(completeEllipticE(ratios[i]), expected[i], 1e-14 * expected[i]) << ratios[i];
}

TEST(EllipseOutside, PerimeterEqualsQuadratureOfTheArcLength) {
    for (const auto& [a, b] : {std::pair{12.0, 8.0}, {15.0, 14.9}, {10.0, 1.0}, {20.0, 0.1}}) {
        const double expected = askPython("arc_length_of_ellipse", {{"a", a}, {"b", b}}).get<double>();
        EXPECT_NEAR(perimeterMm(Ellipse{{0, 0}, a, b, 0}), expected, 1e-10 * expected) << a << " x " << b;
    }
}

TEST(EllipseOutside, DirectFitEqualsThatOfScikitImage) {
    unsigned seed = 1;
    for (const auto& c : kCases) {
        const auto points = noisyEllipse(c.truth, c.arc, c.points, c.sigma, seed++);
        const auto direct = fitEllipseDirect(points);
        ASSERT_TRUE(direct);
        SCOPED_TRACE(seed);
        // The library does not centre its points, which costs it digits away from the origin.
        expectSameEllipse(*direct, askPython("ellipse_model", {{"points", toJson(points)}}), 1e-5);
    }
}

TEST(EllipseOutside, GeometricFitEqualsScipysOnAnotherFormulation) {
    unsigned seed = 11;
    for (const auto& c : kCases) {
        const auto points = noisyEllipse(c.truth, c.arc, c.points, c.sigma, seed++);
        const auto fit = fitEllipse(points);
        ASSERT_TRUE(fit);
        const auto& t = c.truth;
        const auto other = askPython(
            "geometric_fit", {{"points", toJson(points)},
                              {"start", {t.center.x(), t.center.y(), t.semiMajorMm, t.semiMinorMm, t.angleRad}}});
        SCOPED_TRACE(seed);
        const double squares = std::pow(fit->rmsDistanceMm, 2) * c.points;
        EXPECT_NEAR(squares, other["squares"].get<double>(), 1e-9);
        expectSameEllipse(fit->ellipse, other, 1e-5); // sums of squares are flat to rounding within about 1e-7
    }
}
