#include "core/geometry/smoothing_spline.h"

#include "core/geometry/polyline.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

using namespace gauge::core;

namespace {

// Rounding through a banded solve of up to a few hundred unknowns.
constexpr double kSolveToleranceMm = 1e-9;

std::vector<PatientPoint> noisyHelix(int n, double noiseMm, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, noiseMm > 0 ? noiseMm : 1.0);
    std::vector<PatientPoint> out;
    for (int i = 0; i < n; ++i) {
        const double t = 3.0 * i / n;
        Eigen::Vector3d p(15 * std::cos(t), 15 * std::sin(t), 8 * t);
        if (noiseMm > 0) p += Eigen::Vector3d(noise(random), noise(random), noise(random));
        out.push_back({p});
    }
    return out;
}

std::vector<double> unevenWeights(std::size_t n) {
    std::vector<double> out;
    for (std::size_t i = 0; i < n; ++i)
        out.push_back(0.5 + static_cast<double>(i % 7));
    return out;
}

/// Energy of the natural cubic spline through values g at knots t, by its definition as a dense quadratic form:
/// K = Q R^-1 Q^T (Green and Silverman 1994, sec. 2.1, from memory).
Eigen::MatrixXd roughness(const std::vector<double>& t) {
    const auto n = static_cast<Eigen::Index>(t.size());
    const auto h = [&](Eigen::Index i) {
        return t[static_cast<std::size_t>(i + 1)] - t[static_cast<std::size_t>(i)];
    };
    Eigen::MatrixXd q = Eigen::MatrixXd::Zero(n, n - 2), r = Eigen::MatrixXd::Zero(n - 2, n - 2);
    for (Eigen::Index j = 0; j < n - 2; ++j) {
        q(j, j) = 1 / h(j);
        q(j + 1, j) = -1 / h(j) - 1 / h(j + 1);
        q(j + 2, j) = 1 / h(j + 1);
        r(j, j) = (h(j) + h(j + 1)) / 3;
        if (j > 0) r(j, j - 1) = r(j - 1, j) = h(j) / 6;
    }
    return q * r.ldlt().solve(Eigen::MatrixXd(q.transpose()));
}

} // namespace

TEST(SpaceSpline, EqualsTheDenseSolutionOfItsDefinition) {
    const auto points = noisyHelix(60, 0.4, 7);
    const auto weights = unevenWeights(points.size());
    const double lambda = 3.7;
    const auto spline = SpaceSpline::smooth(points, weights, lambda);
    ASSERT_TRUE(spline);
    Eigen::MatrixXd a = lambda * roughness(spline->knots());
    Eigen::MatrixXd y(points.size(), 3);
    for (std::size_t i = 0; i < points.size(); ++i) {
        a(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(i)) += weights[i];
        y.row(static_cast<Eigen::Index>(i)) = weights[i] * points[i].mm.transpose();
    }
    const Eigen::MatrixXd expected = a.ldlt().solve(y);
    for (std::size_t i = 0; i < points.size(); ++i)
        EXPECT_LT((spline->values()[i].mm - expected.row(static_cast<Eigen::Index>(i)).transpose()).norm(),
                  kSolveToleranceMm);
}

TEST(SpaceSpline, PassesThroughThePointsWithoutSmoothing) {
    const auto points = noisyHelix(40, 0.4, 3);
    const auto spline = SpaceSpline::smooth(points, unevenWeights(40), 0.0);
    ASSERT_TRUE(spline);
    for (std::size_t i = 0; i < points.size(); ++i)
        EXPECT_LT(distanceMm(spline->pointAt(spline->knots()[i]), points[i]), kSolveToleranceMm);
}

TEST(SpaceSpline, TendsToTheLeastSquaresLine) {
    // Uneven noise about a straight line; with great lambda the regression line on t remains.
    std::vector<PatientPoint> points;
    for (int i = 0; i < 30; ++i)
        points.push_back({{1.0 * i, 0.3 * std::sin(5.0 * i), 2.0}});
    const auto spline = SpaceSpline::smooth(points, std::vector<double>(30, 1.0), 1e9);
    ASSERT_TRUE(spline);
    Eigen::MatrixXd design(30, 2);
    Eigen::MatrixXd y(30, 3);
    for (Eigen::Index i = 0; i < 30; ++i) {
        design.row(i) << 1.0, spline->knots()[static_cast<std::size_t>(i)];
        y.row(i) = points[static_cast<std::size_t>(i)].mm.transpose();
    }
    const Eigen::MatrixXd line = design * design.colPivHouseholderQr().solve(y);
    for (Eigen::Index i = 0; i < 30; ++i)
        EXPECT_LT((spline->values()[static_cast<std::size_t>(i)].mm - line.row(i).transpose()).norm(), 1e-4);
}

TEST(SpaceSpline, LeavesAStraightLineAlone) {
    std::vector<PatientPoint> points;
    for (const double x : {0.0, 1.0, 2.5, 2.75, 9.0})
        points.push_back({{x, 2 * x, -x}});
    const auto smooth = smoothPolyline(points, unevenWeights(5), 100.0);
    ASSERT_TRUE(smooth);
    for (std::size_t i = 0; i < 5; ++i)
        EXPECT_LT(distanceMm((*smooth)[i], points[i]), kSolveToleranceMm);
}

TEST(SpaceSpline, KeepsUndulationsByTheFactorThatTheHeaderGives) {
    const double h = 0.5, wave = 12.0, lambda = 2.0, amplitude = 0.01, k = 2 * std::numbers::pi / wave;
    std::vector<PatientPoint> points;
    for (int i = 0; i < 480; ++i)
        points.push_back({{i * h, amplitude * std::sin(k * i * h), 0}});
    const auto smooth = smoothPolyline(points, std::vector<double>(480, 1.0), lambda);
    ASSERT_TRUE(smooth);
    const double factor = 1.0 / (1.0 + lambda * h * std::pow(k, 4)); // 0.93; away from the ends
    for (std::size_t i = 200; i < 280; ++i)
        EXPECT_NEAR((*smooth)[i].mm.y(), factor * points[i].mm.y(), 0.002 * amplitude);
}

TEST(SpaceSpline, BringsNoisyPointsNearerToTheTruth) {
    const auto truth = noisyHelix(120, 0.0, 0), noisy = noisyHelix(120, 0.3, 11);
    const auto smooth = smoothPolyline(noisy, std::vector<double>(120, 1.0), 20.0);
    ASSERT_TRUE(smooth);
    const auto line = *Polyline::make(truth);
    double before = 0, after = 0;
    for (std::size_t i = 5; i < 115; ++i) {
        before += std::pow(line.nearestTo(noisy[i]).distanceMm, 2);
        after += std::pow(line.nearestTo((*smooth)[i]).distanceMm, 2);
    }
    EXPECT_LT(after, 0.3 * before);
}

TEST(SpaceSpline, HeavyWeightHoldsItsPoint) {
    const auto points = noisyHelix(50, 0.5, 5);
    std::vector<double> weights(50, 1.0);
    weights[20] = 1e9;
    const auto smooth = smoothPolyline(points, weights, 50.0);
    ASSERT_TRUE(smooth);
    EXPECT_LT(distanceMm((*smooth)[20], points[20]), 1e-6);
}

TEST(SpaceSpline, DerivativesAgreeWithDifferencesAndEndStraight) {
    const auto spline = *SpaceSpline::smooth(noisyHelix(30, 0.2, 9), unevenWeights(30), 1.0);
    const double length = spline.knots().back(), d = 1e-4;
    for (const double t : {0.1, 0.37 * length, spline.knots()[12], 0.93 * length, -2.0, length + 2.0}) {
        const PatientVector slope = (spline.pointAt(t + d) - spline.pointAt(t - d)) * (0.5 / d);
        EXPECT_LT((slope - spline.derivativeAt(t)).norm(), 1e-6) << t;
        const PatientVector bend = (spline.derivativeAt(t + d) - spline.derivativeAt(t - d)) * (0.5 / d);
        EXPECT_LT((bend - spline.secondDerivativeAt(t)).norm(), 1e-3) << t;
    }
    EXPECT_EQ(spline.secondDerivativeAt(0.0).norm(), 0.0);
}

TEST(SpaceSpline, TwoPointsGiveTheStraightLine) {
    const std::vector<PatientPoint> points{{{0, 0, 0}}, {{0, 0, 4}}};
    const auto spline = SpaceSpline::smooth(points, std::vector<double>{1, 1}, 5.0);
    ASSERT_TRUE(spline);
    EXPECT_TRUE(spline->pointAt(1.0).mm.isApprox(Eigen::Vector3d(0, 0, 1)));
}

TEST(SpaceSpline, NamesWhatIsWrong) {
    const auto points = noisyHelix(4, 0.0, 0);
    const std::vector<double> ones(4, 1.0);
    const auto expectError = [](const auto& result, ErrorCode code, const std::string& message) {
        ASSERT_FALSE(result);
        EXPECT_EQ(result.error().code, code);
        EXPECT_EQ(result.error().message, message);
    };
    expectError(smoothPolyline(std::vector<PatientPoint>{points[0]}, std::vector<double>{1.0}, 1.0),
                ErrorCode::TooFewPoints, "Cannot smooth the line: it has 1 points; at least 2 are needed.");
    expectError(smoothPolyline(points, std::vector<double>{1.0}, 1.0), ErrorCode::InvalidArgument,
                "Cannot smooth the line: 1 weights were given for 4 points.");
    expectError(smoothPolyline(points, ones, -1.0), ErrorCode::InvalidArgument,
                "Cannot smooth the line: lambda is -1.000000; it must be finite and not negative.");
    auto repeated = points;
    repeated[2] = repeated[1];
    expectError(smoothPolyline(repeated, ones, 1.0), ErrorCode::Degenerate,
                "Cannot smooth the line: point 3 of 4 repeats the one before it.");
    auto broken = points;
    broken[3].mm.x() = std::nan("");
    expectError(smoothPolyline(broken, ones, 1.0), ErrorCode::NonFinite,
                "Cannot smooth the line: point 4 of 4 is not a finite number.");
    expectError(smoothPolyline(points, std::vector<double>{1, 1, 0, 1}, 1.0), ErrorCode::InvalidArgument,
                "Cannot smooth the line: the weight of point 3 of 4 is 0.000000; it must be finite and above 0.");
}
