#include "sample-data/random.h"
#include "sample-data/scene/solids.h"

#include <gtest/gtest.h>

namespace gauge::sample_case {
namespace {

TEST(SmoothTable, PassesThroughItsKnotsAndNeverOvershoots) {
    const SmoothTable table({{0.0, 10.0}, {5.0, 10.0}, {12.0, 6.0}, {20.0, 5.5}});
    EXPECT_DOUBLE_EQ(table(-3.0), 10.0);
    EXPECT_DOUBLE_EQ(table(12.0), 6.0);
    EXPECT_DOUBLE_EQ(table(30.0), 5.5);
    for (double x = 0.0; x < 20.0; x += 0.1) {
        EXPECT_LE(table(x + 0.1), table(x) + 1e-12) << x;
        EXPECT_GE(table(x), 5.5 - 1e-12) << x;
    }
}

TEST(Ellipsoid, VanishesOnItsSurfaceAndIsADistanceNearIt) {
    Ellipsoid e;
    e.centre = {3.0, -4.0, 5.0};
    e.semiAxes = {24.0, 18.0, 30.0};
    Random random(2);
    for (int trial = 0; trial < 100; ++trial) {
        const Eigen::Vector3d n(random.normal(), random.normal(), random.normal());
        const Eigen::Vector3d on = e.surfacePoint(n);
        EXPECT_NEAR(e.distance(on), 0.0, 1e-9);
        // First order: 0.2 mm off a surface of 10 mm curvature radius errs by about 0.2^2 / 10.
        EXPECT_NEAR(e.distance(on + 0.2 * n.normalized()), 0.2, 0.01);
        EXPECT_NEAR(e.distance(on - 0.2 * n.normalized()), -0.2, 0.01);
    }
}

Tube straightTube(double a, double b, double exponent) {
    Tube tube;
    tube.curve = CentreCurve({0, 0, 0}, {0, 0, 1}, {1, 0, 0}, 0.0, {{40.0, 0.0, 0.0}});
    tube.semiA = a;
    tube.semiB = b;
    tube.exponent = exponent;
    tube.baseCapMm = 4.0;
    tube.tipCapMm = 6.0;
    return tube;
}

TEST(Tube, HasTheAskedHalfWidthsAndLength) {
    for (const double exponent : {2.0, 2.4}) {
        const Tube tube = straightTube(9.0, 6.0, exponent);
        EXPECT_NEAR(tube.distance({9.0, 0.0, 20.0}), 0.0, 1e-9);
        EXPECT_NEAR(tube.distance({0.0, -6.0, 20.0}), 0.0, 1e-9);
        EXPECT_NEAR(tube.distance({0.0, 0.0, 40.0}), 0.0, 1e-9);
        EXPECT_NEAR(tube.distance({0.0, 0.0, 0.0}), 0.0, 1e-9);
        EXPECT_LT(tube.distance({4.0, 3.0, 20.0}), 0.0);
        EXPECT_GT(tube.distance({9.0, 6.0, 20.0}), 0.0);
    }
}

TEST(Tube, SquarerExponentsHoldMore) {
    const Eigen::Vector3d diagonal(9.0 * 0.73, 6.0 * 0.73, 20.0);
    EXPECT_GT(straightTube(9.0, 6.0, 2.0).distance(diagonal), 0.0);
    EXPECT_LT(straightTube(9.0, 6.0, 2.4).distance(diagonal), 0.0);
}

TEST(Tube, TwistTurnsTheSectionAlongTheTube) {
    Tube tube = straightTube(9.0, 6.0, 2.0);
    tube.twistPerMm = 0.02;
    const double angle = 0.02 * 25.0;
    EXPECT_NEAR(tube.distance({9.0 * std::cos(angle), 9.0 * std::sin(angle), 25.0}), 0.0, 1e-9);
}

TEST(FilletUnion, IsThePlainUnionAwayFromTheCornerAndAQuarterCircleInIt) {
    EXPECT_DOUBLE_EQ(filletUnion(3.0, 1.0, 2.0), 1.0);
    EXPECT_DOUBLE_EQ(filletUnion(-5.0, 2.5, 2.0), -5.0);
    // Two half spaces at right angles, a and b their distances: the fillet's circle has its centre at (2, 2).
    EXPECT_NEAR(filletUnion(2.0 - 2.0 * std::sqrt(0.5), 2.0 - 2.0 * std::sqrt(0.5), 2.0), 0.0, 1e-12);
    EXPECT_NEAR(filletUnion(0.0, 2.0 - 1e-9, 2.0), 0.0, 1e-8);
}

} // namespace
} // namespace gauge::sample_case
