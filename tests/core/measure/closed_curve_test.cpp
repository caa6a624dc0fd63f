#include "core/measure/closed_curve.h"

#include "core/geometry/ellipse.h"
#include "core/geometry/planar_contour.h"

#include <gtest/gtest.h>
#include <numbers>
#include <random>

using namespace gauge::core;

namespace {

constexpr double kNoiseLengthMm = 1.4; // as section_measure.cpp uses it
constexpr double kFinestMm = 2.5;

/// Points on an ellipse, about equally spaced, each moved along its normal by noise that is alike over about a
/// millimetre.
std::vector<Eigen::Vector2d> noisyEllipse(double a, double b, double noiseMm, std::mt19937& random) {
    std::vector<Eigen::Vector2d> dense;
    for (int i = 0; i < 4000; ++i) {
        const double t = 2.0 * std::numbers::pi * i / 4000;
        dense.push_back({a * std::cos(t), b * std::sin(t)});
    }
    auto points = resampleByArcLength(dense, static_cast<std::size_t>(perimeterMm(dense) / 0.35));
    std::normal_distribution<double> normal;
    std::vector<double> white(points.size());
    for (double& w : white)
        w = normal(random);
    const std::size_t n = points.size();
    const auto even = points;
    for (std::size_t i = 0; i < n; ++i) {
        // Mean of three neighbours, scaled back to the noise asked for.
        const double shift = noiseMm / std::sqrt(3.0) * (white[(i + n - 1) % n] + white[i] + white[(i + 1) % n]);
        const Eigen::Vector2d along = even[(i + 1) % n] - even[(i + n - 1) % n];
        points[i] += shift * Eigen::Vector2d(along.y(), -along.x()).normalized();
    }
    return points;
}

} // namespace

TEST(SmoothClosedCurve, FreesThePerimeterOfTheBiasOfNoise) {
    std::mt19937 random(4);
    for (const auto& [a, b] : {std::pair{10.0, 10.0}, {13.0, 9.0}, {15.0, 10.0}}) {
        double rough = 0.0, smooth = 0.0;
        constexpr int kDraws = 60;
        for (int draw = 0; draw < kDraws; ++draw) {
            const auto points = noisyEllipse(a, b, 0.15, random);
            rough += perimeterMm(points) / kDraws;
            smooth += perimeterMm(smoothClosedCurve(points, kNoiseLengthMm, kFinestMm).sample(400)) / kDraws;
        }
        // 2 pi 10; references 11a: P(13, 9) 69.68742708723019, P(15, 10) 79.32719794645295 [computed].
        const double truth = perimeterMm(Ellipse{{}, a, b, 0.0});
        EXPECT_GT(rough - truth, 1.0) << "the noise should fold the polygon";
        EXPECT_NEAR(smooth, truth, 0.1) << a << " x " << b; // D_P within 0.03 mm
    }
}

TEST(SmoothClosedCurve, KeepsTheDiametersOfAnEllipse) {
    std::mt19937 random(9);
    double longest = 0.0;
    constexpr int kDraws = 60;
    for (int draw = 0; draw < kDraws; ++draw)
        longest += maximumCaliper(smoothClosedCurve(noisyEllipse(14.0, 9.0, 0.1, random), kNoiseLengthMm, kFinestMm)
                                      .sample(400))
                       .lengthMm /
                   kDraws;
    EXPECT_NEAR(longest, 28.0, 0.05);
}

TEST(ClosedCurve, FitsItsOwnHarmonicsExactly) {
    std::vector<Eigen::Vector2d> points;
    for (int i = 0; i < 40; ++i) {
        const double t = 2.0 * std::numbers::pi * i / 40;
        points.push_back({5.0 + 8.0 * std::cos(t) + 0.4 * std::sin(3.0 * t), -2.0 + 6.0 * std::sin(t)});
    }
    const ClosedCurve curve = ClosedCurve::fit(points, 3);
    for (int i = 0; i < 40; ++i)
        EXPECT_LT((curve.at(i / 40.0) - points[static_cast<std::size_t>(i)]).norm(), 1e-12);
    EXPECT_LT((curve.sample(40)[7] - points[7]).norm(), 1e-12);
    // By central difference.
    const Eigen::Vector2d slope = (curve.at(0.3 + 1e-6) - curve.at(0.3 - 1e-6)) / 2e-6;
    EXPECT_LT((curve.tangentAt(0.3) - slope).norm(), 1e-4);
}
