#include "core/geometry/plane_moves.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

constexpr double kRounding = 1e-12;
const Plane kPlane{{Eigen::Vector3d(1, 2, 3)}, {Eigen::Vector3d(0, 0, 1)}};

} // namespace

TEST(PlaneMoves, ShiftsAlongTheNormal) {
    EXPECT_EQ(shifted(kPlane, 2.5).point.mm, Eigen::Vector3d(1, 2, 5.5));
    EXPECT_EQ(shifted(shifted(kPlane, 2.5), -2.5).point.mm, kPlane.point.mm);
}

TEST(PlaneMoves, TiltsByTheRightHandRuleAboutThePlanesPoint) {
    const Plane tilt = tilted(kPlane, {Eigen::Vector3d(3, 0, 0)}, 90.0); // z goes to -y
    EXPECT_LT((tilt.normal.mm - Eigen::Vector3d(0, -1, 0)).norm(), kRounding);
    EXPECT_EQ(tilt.point.mm, kPlane.point.mm);
    const Plane back = tilted(tilted(kPlane, {Eigen::Vector3d(1, 2, 0)}, 37.0), {Eigen::Vector3d(1, 2, 0)}, -37.0);
    EXPECT_LT((back.normal.mm - kPlane.normal.mm).norm(), kRounding);
}

TEST(PlaneMoves, TurnBetweenIsThatOfThePartsSquareToTheAxis) {
    const PatientVector z{Eigen::Vector3d(0, 0, 2)};
    EXPECT_NEAR(turnBetweenDeg(z, {Eigen::Vector3d(1, 0, 5)}, {Eigen::Vector3d(0, 3, -1)}), 90.0, 1e-9);
    EXPECT_NEAR(turnBetweenDeg(z, {Eigen::Vector3d(0, 3, 0)}, {Eigen::Vector3d(1, 0, 0)}), -90.0, 1e-9);
    EXPECT_EQ(turnBetweenDeg(z, z, {Eigen::Vector3d(1, 0, 0)}), 0.0);
}

TEST(PlaneMoves, TheLineInASectionLiesOnBothPlanes) {
    const Plane section{{Eigen::Vector3d(0, 7, 0)}, {Eigen::Vector3d(0.2, 1, 0.1).normalized()}};
    const auto line = lineInSection(section, kPlane).value();
    for (const double along : {0.0, 10.0}) {
        const PatientPoint p = line.point + along * line.direction;
        EXPECT_NEAR(signedDistanceMm(section, p), 0.0, 1e-9);
        EXPECT_NEAR(signedDistanceMm(kPlane, p), 0.0, 1e-9);
    }
    EXPECT_NEAR((line.point - kPlane.point).dot(line.direction), 0.0, 1e-9) << "the place next to the plane's point";
    EXPECT_FALSE(lineInSection(kPlane, kPlane));
}
