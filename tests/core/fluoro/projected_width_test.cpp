// Projected widths of bodies with closed forms; perspective against the camera's geometry by hand.
#include "core/fluoro/projected_width.h"

#include "tests/core/fluoro/bodies.h"
#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;
using Eigen::Vector3d;
using testing::HasSubstr;

namespace {

/// Chord error of a polygon of 720 points, relative: 1 - cos(pi / 720) = 1e-5.
constexpr double kPolygon = 1.0e-5;

CArm armAt(const CArmAngles& angles, const Vector3d& isocentre) {
    return {angles, {isocentre}, 720.0, 1080.0, {0.3, 0.3}, 1024, 1024};
}

} // namespace

TEST(ProjectedWidth, OfACircleIsItsDiameterAtEveryAngle) {
    std::mt19937 random(1);
    std::uniform_real_distribution<double> unit(-1.0, 1.0);
    int seenWidths = 0;
    for (int i = 0; i < 300; ++i) {
        const Vector3d normal = Vector3d(unit(random), unit(random), unit(random)).normalized();
        const CArmAngles angles{120.0 * unit(random), 60.0 * unit(random)};
        const auto seen = valueOf(projectedWidth(ellipseIn3d({5, 6, 7}, normal, 11.0, 11.0), angles));
        const double cosine = std::abs(normal.dot(beamDirection(angles).mm));
        EXPECT_NEAR(seen.openingDeg, std::asin(cosine) * 180.0 / M_PI, 1e-6);
        EXPECT_NEAR(seen.axisVisible, std::sqrt(1.0 - cosine * cosine), 1e-9);
        EXPECT_NEAR(seen.longestMm, 22.0, 22.0 * kPolygon);
        EXPECT_EQ(seen.widthMm.has_value(), seen.openingDeg <= kLargestOpeningDeg);
        if (!seen.widthMm) continue;
        ++seenWidths;
        EXPECT_NEAR(*seen.widthMm, 22.0, 22.0 * kPolygon) << "case " << i;
    }
    EXPECT_GT(seenWidths, 200);
}

TEST(ProjectedWidth, OfAnEllipseIsItsExtentAcrossTheSightLine) {
    // Within the plane the picture shows the direction w = n x d / |n x d|; an ellipse extends
    // 2 sqrt(a^2 (w.u)^2 + b^2 (w.v)^2) along w.
    std::mt19937 random(2);
    std::uniform_real_distribution<double> unit(-1.0, 1.0);
    for (int i = 0; i < 300; ++i) {
        const Vector3d normal = Vector3d(unit(random), unit(random), unit(random)).normalized();
        const double a = 12.0 + 2.0 * unit(random), b = 8.0 + unit(random);
        const CArmAngles angles{90.0 * unit(random), 45.0 * unit(random)};
        const auto axes = axesOf(normal);
        const auto seen = valueOf(projectedWidth(ellipseIn3d({1, 2, 3}, normal, a, b), angles));
        if (!seen.widthMm) continue;
        const Vector3d w = normal.cross(beamDirection(angles).mm).normalized();
        const double expected = 2.0 * std::hypot(a * w.dot(axes[0]), b * w.dot(axes[1]));
        EXPECT_NEAR(*seen.widthMm, expected, 2.0 * a * kPolygon) << "case " << i;
    }
}

TEST(ProjectedWidth, EdgeOnAlongAnAxisOfTheEllipseShowsTheOther) {
    // Plane x-z (normal along y), long axis 15 along x, short 10 along z; seen from LAO 90 the short one,
    // seen from the head the long one.
    const auto contour = ellipseFrom({0, 0, 0}, {15, 0, 0}, {0, 0, 10});
    EXPECT_NEAR(*valueOf(projectedWidth(contour, CArmAngles{90, 0})).widthMm, 20.0, 20 * kPolygon);
    EXPECT_NEAR(*valueOf(projectedWidth(contour, CArmAngles{0, 90})).widthMm, 30.0, 30 * kPolygon);
    const auto front = valueOf(projectedWidth(contour, CArmAngles{0, 0}));
    EXPECT_FALSE(front.widthMm); // en face: no axis to measure across
    EXPECT_NEAR(front.longestMm, 30.0, 30 * kPolygon);
    EXPECT_NEAR(front.openingDeg, 90.0, 1e-6);
    EXPECT_NEAR(front.axisVisible, 0.0, 1e-7);
}

TEST(ProjectedWidth, ThroughTheCameraAtTheIsocentreIsThatOfParallelRaysToSecondOrder) {
    // Edge-on circle of radius R at the isocentre: extreme rays touch it at R / sqrt(1 - (R/L)^2) by
    // tangency.
    const auto contour = ellipseFrom({0, 0, 0}, {11, 0, 0}, {0, 11, 0});
    const auto seen = valueOf(projectedWidth(contour, armAt({0, 0}, Vector3d::Zero())));
    const double tangent = 22.0 / std::sqrt(1.0 - (11.0 / 720.0) * (11.0 / 720.0));
    EXPECT_NEAR(*seen.widthMm, tangent, 22 * kPolygon);
}

TEST(ProjectedWidth, ThroughTheCameraScalesWithDepth) {
    // 60 mm nearer to the source than the isocentre: 720 / 660 larger for a scale that holds at the
    // isocentre.
    const auto contour = ellipseFrom({0, 60, 0}, {11, 0, 0}, {0, 0, 9}); // y: away from the detector at LAO 0
    const auto seen = valueOf(projectedWidth(contour, armAt({0, 0}, Vector3d::Zero())));
    EXPECT_NEAR(seen.longestMm, 22.0 * 720.0 / 660.0, 22 * 2 * kPolygon);
}

TEST(ProjectedWidth, OfASpheresOutlineIsTheTangentConesWidth) {
    // A sphere of radius R at distance L: rays touch it in a circle of radius R sqrt(1 - (R/L)^2) at L -
    // R^2/L, and its shadow at the isocentre's depth has the width 2 R / sqrt(1 - (R/L)^2).
    const double radius = 40.0, distance = 720.0, q = radius / distance;
    for (const CArmAngles angles : {CArmAngles{0, 0}, CArmAngles{-30, 20}, CArmAngles{50, -25}}) {
        const Vector3d d = beamDirection(angles).mm;
        const auto outline =
            ellipseIn3d(-radius * q * d, d, radius * std::sqrt(1 - q * q), radius * std::sqrt(1 - q * q));
        const auto seen = valueOf(projectedWidth(outline, armAt(angles, Vector3d::Zero())));
        EXPECT_NEAR(seen.longestMm, 2.0 * radius / std::sqrt(1 - q * q), 2 * radius * kPolygon);
    }
}

TEST(ProjectedWidth, RefusesWhatIsNoContour) {
    const std::vector<PatientPoint> two = {{{0, 0, 0}}, {{1, 0, 0}}};
    EXPECT_EQ(errorOf(projectedWidth(two, CArmAngles{})).code, ErrorCode::TooFewPoints);
    const std::vector<PatientPoint> line = {{{0, 0, 0}}, {{1, 0, 0}}, {{2, 0, 0}}};
    EXPECT_THAT(errorOf(projectedWidth(line, CArmAngles{})).message, HasSubstr("encloses no area"));
    auto broken = ellipseIn3d({0, 0, 0}, {0, 0, 1}, 5, 4);
    broken[3].mm.x() = std::nan("");
    EXPECT_EQ(errorOf(projectedWidth(broken, CArmAngles{})).code, ErrorCode::NonFinite);
    const auto good = ellipseIn3d({0, 0, 0}, {0, 0, 1}, 5, 4);
    EXPECT_EQ(errorOf(projectedWidth(good, CArmAngles{200, 0})).code, ErrorCode::InvalidArgument);
    EXPECT_THAT(errorOf(projectedWidth(good, armAt({0, 0}, {0, -800, 0}))).message, HasSubstr("behind it"));
}

TEST(VisibleFraction, IsTheSineBetweenDirectionAndSight) {
    EXPECT_NEAR(visibleFraction({Vector3d(0, 0, 2)}, {0, 0}), 1.0, 1e-12);
    EXPECT_NEAR(visibleFraction({Vector3d(0, 0, 1)}, {0, 60}), 0.5, 1e-12);
    EXPECT_NEAR(visibleFraction({Vector3d(0, -1, 0)}, {30, 0}), 0.5, 1e-12);
}

TEST(PredictedWidth, StatesTheSpreadOverTheAngles) {
    // Against a simulation of 20,000 positions of the arm.
    constexpr double kSpreadTolerance = 0.05;
    const auto contour = ellipseIn3d({0, 0, 0}, Vector3d(0.5, 0.6, 0.4).normalized(), 13.0, 9.0, 64);
    for (const CArmAngles angles : {CArmAngles{-25, 20}, CArmAngles{-20, -25}, CArmAngles{-60, 10}}) {
        const auto predicted = predictedWidth(contour, angles);
        if (!predicted) continue;
        std::mt19937 random(4);
        std::normal_distribution<double> turn(0.0, 5.0);
        double squares = 0.0;
        constexpr int kDraws = 20000;
        for (int i = 0; i < kDraws; ++i) {
            const auto seen = valueOf(projectedWidth(
                contour, CArmAngles{angles.primaryDeg + turn(random), angles.secondaryDeg + turn(random)}));
            squares += std::pow(seen.widthMm.value_or(predicted->value) - predicted->value, 2) / kDraws;
        }
        EXPECT_NEAR(predicted->components.plane / std::sqrt(squares), 1.0, kSpreadTolerance) << words(angles);
        EXPECT_EQ(predicted->components.edge, 0.5);
    }
}

TEST(PredictedWidth, RefusesEnFaceViewsAndWrongOptions) {
    const auto contour = ellipseIn3d({0, 0, 0}, {0, -1, 0}, 13.0, 9.0);
    EXPECT_THAT(errorOf(predictedWidth(contour, {0, 0})).message, HasSubstr("closer to edge-on"));
    EXPECT_THAT(errorOf(predictedWidth(contour, {90, 0}, {-1.0, 5.0})).message,
                HasSubstr("neither may be negative"));
    EXPECT_EQ(errorOf(predictedWidth(contour, {90, 0}, {0.5, 40.0})).code, ErrorCode::InvalidArgument);
}
