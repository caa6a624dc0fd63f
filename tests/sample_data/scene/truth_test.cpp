#include "sample-data/scene/truth.h"

#include <gtest/gtest.h>

#include <numbers>

namespace gauge::sample_case {
namespace {

constexpr double kPi = std::numbers::pi;
/// Vertices lie on the boundary; a chord of 0.12 mm on a curve of 5 mm radius misses it by 0.0004 mm.
constexpr double kChordMm = 2e-3;

/// A straight elliptic tube out of a small ball, in the patient turned and moved.
Scene tubeScene(double a, double b) {
    Scene scene;
    scene.atrium.semiAxes = {14.0, 14.0, 14.0};
    Tube tube;
    tube.curve = CentreCurve({0, 0, 0}, {0, 0, 1}, {1, 0, 0}, 0.0, {{50.0, 0.0, 0.0}});
    tube.semiA = a;
    tube.semiB = b;
    tube.baseCapMm = 4.0;
    tube.tipCapMm = 8.0;
    scene.lobes = {tube};
    scene.patientFromScene.translate(Eigen::Vector3d(20.3, -41.7, 110.9));
    scene.patientFromScene.rotate(Eigen::AngleAxisd(0.7, Eigen::Vector3d(1, 2, -1).normalized()));
    return scene;
}

core::Plane planeAt(const Scene& scene, const Eigen::Vector3d& point, const Eigen::Vector3d& normal) {
    return {scene.patientFrom(point), scene.patientFromDirection(normal.normalized())};
}

TEST(TrueSection, OfAnEllipticTubeIsTheEllipse) {
    const Scene scene = tubeScene(12.0, 8.0);
    const core::Plane plane = planeAt(scene, {1.0, 2.0, 30.0}, {0, 0, 1});
    const auto section = trueSection(scene, plane, plane.point);
    ASSERT_TRUE(section);
    EXPECT_NEAR(section->metrics.areaMm2, kPi * 12.0 * 8.0, kPi * 24.0 * kChordMm);
    // Complete elliptic integral, computed to double precision: half axes 12 and 8 give 63.46175835716236.
    EXPECT_NEAR(section->metrics.perimeterMm, 63.46175835716236, 2.0 * kChordMm);
    EXPECT_NEAR(section->metrics.longestDiameterMm, 24.0, kChordMm);
    EXPECT_NEAR(section->metrics.shortestDiameterMm, 16.0,
                0.01); // follows the chosen longest pair's direction
    EXPECT_NEAR(section->metrics.leastWidthMm, 16.0, kChordMm);
    EXPECT_LT((section->center.mm - scene.patientFrom({0, 0, 30.0}).mm).norm(), kChordMm);
    EXPECT_TRUE(section->contains(section->metrics.centroid));
    EXPECT_FALSE(section->contains({40.0, 0.0}));
}

TEST(TrueSection, OfATiltedPlaneIsStretchedByTheCosine) {
    const Scene scene = tubeScene(10.0, 10.0);
    const double tilt = 0.5;
    const core::Plane plane = planeAt(scene, {0, 0, 30.0}, {std::sin(tilt), 0.0, std::cos(tilt)});
    const auto section = trueSection(scene, plane, plane.point);
    ASSERT_TRUE(section);
    EXPECT_NEAR(section->metrics.longestDiameterMm, 20.0 / std::cos(tilt), kChordMm);
    EXPECT_NEAR(section->metrics.areaMm2, 100.0 * kPi / std::cos(tilt), 0.2);
}

TEST(TrueSection, RunsCounterClockwiseAboutTheNormal) {
    const Scene scene = tubeScene(12.0, 8.0);
    const core::Plane plane = planeAt(scene, {0, 0, 30.0}, {0.1, 0.2, 1});
    EXPECT_GT(trueSection(scene, plane, plane.point)->metrics.areaMm2, 0.0);
}

TEST(TrueSection, IsRefusedOutsideThePoolAndWhereItRunsAway) {
    const Scene scene = tubeScene(12.0, 8.0);
    const core::Plane across = planeAt(scene, {0, 0, 30.0}, {0, 0, 1});
    EXPECT_FALSE(trueSection(scene, across, scene.patientFrom({20.0, 0.0, 30.0})));
    const core::Plane lengthwise = planeAt(scene, {0, 0, 30.0}, {1, 0, 0});
    EXPECT_FALSE(trueSection(scene, lengthwise, lengthwise.point, 25.0));
}

TEST(TrueMetrics, OfARectangleAreThoseOfSchool) {
    const std::vector<Eigen::Vector2d> rectangle{{1, 1}, {5, 1}, {5, 4}, {1, 4}};
    const TrueMetrics m = trueMetrics(rectangle);
    EXPECT_NEAR(m.areaMm2, 12.0, 1e-12);
    EXPECT_NEAR(m.perimeterMm, 14.0, 1e-12);
    EXPECT_NEAR(m.longestDiameterMm, 5.0, 1e-12);
    // Perpendicular to the diagonal (3, 4, 5): 2 * 3 * 4 / 5.
    EXPECT_NEAR(m.shortestDiameterMm, 4.8, 1e-12);
    EXPECT_NEAR(m.leastWidthMm, 3.0, 1e-12);
    EXPECT_LT((m.centroid - Eigen::Vector2d(3.0, 2.5)).norm(), 1e-12);
}

TEST(TrueOstium, LiesInBothLandmarksAndIsTurnedTowardsTheAxis) {
    const Scene scene = tubeScene(10.0, 10.0);
    const core::PatientPoint circumflex = scene.patientFrom({-14.0, 1.0, 22.0}),
                             ridge = scene.patientFrom({12.0, -2.0, 24.0});
    const auto ostium = trueOstium(scene, circumflex, ridge);
    ASSERT_TRUE(ostium);
    EXPECT_NEAR(core::signedDistanceMm(ostium->plane, circumflex), 0.0, 1e-9);
    EXPECT_NEAR(core::signedDistanceMm(ostium->plane, ridge), 0.0, 1e-9);
    // No other plane through both is closer to perpendicular: the angle left is that of the line to the
    // section.
    const core::PatientVector tangent = scene.patientFromDirection({0, 0, 1});
    const core::PatientVector line = (ridge - circumflex).normalized();
    EXPECT_NEAR(ostium->plane.normal.dot(tangent), std::sqrt(1.0 - std::pow(line.dot(tangent), 2)), 1e-12);
}

TEST(TrueInterior, OfACappedTubeIsCylinderAndHalfEllipsoid) {
    const Scene scene = tubeScene(10.0, 7.0);
    const core::Plane plane = planeAt(scene, {0, 0, 25.0}, {0, 0, 1});
    TrueOstium ostium;
    ostium.section = *trueSection(scene, plane, plane.point);
    ostium.plane = plane;
    ostium.axisS = 25.0;
    const TrueInterior interior = trueInterior(scene, ostium);
    // Straight part from 25 to 42 mm, then half an ellipsoid of height 8 mm.
    const double expected = kPi * 70.0 * (17.0 + 8.0 * 2.0 / 3.0) / 1000.0;
    EXPECT_NEAR(interior.volumeMl, expected, 0.003 * expected); // the stated accuracy
    EXPECT_NEAR(interior.farthestFromPlaneMm, 25.0, 0.05);
    EXPECT_NEAR(trueAxisLengthMm(scene, ostium), 25.0, 1e-12);
}

TEST(DistanceToWall, IsMeasuredAlongTheWay) {
    const Scene scene = tubeScene(10.0, 7.0);
    const core::PatientPoint from = scene.patientFrom({2.0, 0.0, 30.0});
    EXPECT_NEAR(distanceToWallMm(scene, from, scene.patientFromDirection({1, 0, 0})), 8.0, 1e-6);
    EXPECT_NEAR(
        distanceToWallMm(scene, scene.patientFrom({0, 0, 30.0}), scene.patientFromDirection({0, 0, 1})), 20.0,
        1e-6);
    EXPECT_EQ(
        distanceToWallMm(scene, scene.patientFrom({30.0, 0.0, 30.0}), scene.patientFromDirection({1, 0, 0})),
        0.0);
}

} // namespace
} // namespace gauge::sample_case
