#include "sample-data/random.h"
#include "sample-data/scene/centre_curve.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <numbers>

namespace gauge::sample_case {
namespace {

constexpr double kPi = std::numbers::pi;
/// Arithmetic in closed form: only rounding is left.
constexpr double kExactMm = 1e-9;

CentreCurve bentCurve() {
    return CentreCurve({1.0, -2.0, 3.0}, {0.3, -0.5, 0.8}, {1.0, 0.2, 0.0}, -6.0,
                       {{9.0, 0.0, 0.0}, {15.0, 1.6, 0.7}, {6.0, 0.4, -2.0}, {8.0, 0.0, 0.0}});
}

TEST(CentreCurve, QuarterCircleEndsWhereGeometrySays) {
    // Along x, bending towards y (its normal) by 90 degrees at radius 10: ends at (10, 10, 0), heading along
    // y.
    const CentreCurve curve({0, 0, 0}, {1, 0, 0}, {0, 1, 0}, 0.0, {{5.0 * kPi, 0.5 * kPi, 0.0}});
    const CentreCurve::Frame end = curve.at(curve.lastS());
    EXPECT_LT((end.point - Eigen::Vector3d(10, 10, 0)).norm(), kExactMm);
    EXPECT_LT((end.tangent - Eigen::Vector3d(0, 1, 0)).norm(), kExactMm);
    EXPECT_LT((end.normal - Eigen::Vector3d(-1, 0, 0)).norm(), kExactMm);
}

TEST(CentreCurve, IsMeasuredByArcLengthAndItsTangentIsItsDerivative) {
    const CentreCurve curve = bentCurve();
    constexpr double kStep = 1e-5;
    for (double s = curve.firstS() - 2.0; s < curve.lastS() + 2.0; s += 0.37) {
        const Eigen::Vector3d derivative =
            (curve.at(s + kStep).point - curve.at(s - kStep).point) / (2.0 * kStep);
        // The difference quotient errs by curvature times step, twice at the joins.
        EXPECT_LT((derivative - curve.at(s).tangent).norm(), 1e-5) << "at s = " << s;
    }
}

TEST(CentreCurve, CarriesARightHandedFrame) {
    const CentreCurve curve = bentCurve();
    for (double s = curve.firstS(); s < curve.lastS(); s += 0.5) {
        const CentreCurve::Frame f = curve.at(s);
        EXPECT_LT((f.tangent.cross(f.normal) - f.binormal).norm(), kExactMm);
        EXPECT_NEAR(f.normal.norm(), 1.0, kExactMm);
    }
}

TEST(CentreCurve, NearestPointBeatsEveryPointOfAFineWalk) {
    const CentreCurve curve = bentCurve();
    Random random(5);
    for (int trial = 0; trial < 200; ++trial) {
        const Eigen::Vector3d x =
            curve.at(random.uniform(-10.0, 40.0)).point +
            Eigen::Vector3d(random.uniform(-9, 9), random.uniform(-9, 9), random.uniform(-9, 9));
        const CentreCurve::Foot foot = curve.nearest(x);
        double walked = 1e9;
        for (double s = -25.0; s < 55.0; s += 0.02)
            walked = std::min(walked, (curve.at(s).point - x).norm());
        const double found = std::hypot(foot.alongNormal, foot.alongBinormal);
        // The walk misses the foot by up to half its step, along the curve.
        EXPECT_LE(found, walked + kExactMm) << "trial " << trial;
        EXPECT_GE(found, walked - 0.01) << "trial " << trial;
        const CentreCurve::Frame f = curve.at(foot.s);
        EXPECT_LT((f.point + foot.alongNormal * f.normal + foot.alongBinormal * f.binormal - x).norm(), 1e-6)
            << "trial " << trial;
    }
}

} // namespace
} // namespace gauge::sample_case
