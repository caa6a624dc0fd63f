#include "core/access/seat_shadow.h"
#include "core/access/seated_body.h"

#include "core/geometry/planar_contour.h"
#include "tests/core/access/analytic_walls.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// 72 sides inscribed in a circle: 0.13 % less area, 0.1 % less width.
constexpr double kSidesShare = 0.003;

SeatedBody body(std::mt19937& random, double radius, double near, double far) {
    SeatedBody seated;
    const Eigen::Matrix3d turn = randomTurn(random);
    seated.origin = {40.0 * turn.col(0)};
    seated.direction = {turn.col(2)};
    seated.body = {{near, radius}, {far, radius}};
    return seated;
}

SectionFrame frameAt(const SeatedBody& seated, double t, double tiltDeg) {
    const SectionFrame f = frameOf(Plane{seated.at(t), seated.direction});
    const Eigen::AngleAxisd turn(tiltDeg * std::numbers::pi / 180.0, f.u.mm);
    return frameOf(Plane{seated.at(t), {turn * seated.direction.mm}});
}

} // namespace

TEST(SeatedBody, DistanceOutsideAndInsideACylinderIsTheClosedForm) {
    std::mt19937 random(1);
    for (int seed = 0; seed < 5; ++seed) {
        const SeatedBody seated = body(random, 10.0, -8.0, 12.0);
        const SectionFrame f = frameOf(Plane{seated.origin, seated.direction});
        const auto at = [&](double r, double t) {
            return distanceMm(seated, seated.at(t) + 0.6 * r * f.u + 0.8 * r * f.v);
        };
        EXPECT_NEAR(at(13.0, 0.0), 3.0, 1e-9) << "beside";
        EXPECT_NEAR(at(4.0, 15.0), 3.0, 1e-9) << "behind";
        EXPECT_NEAR(at(13.0, 16.0), 5.0, 1e-9) << "off the edge";
        EXPECT_NEAR(at(8.0, 0.0), -2.0, 1e-9) << "inside, under the side";
        EXPECT_NEAR(at(3.0, 11.0), -1.0, 1e-9) << "inside, under the end";
    }
}

TEST(SeatedBody, DistanceCountsTheDisc) {
    std::mt19937 random(2);
    SeatedBody seated = body(random, 10.0, 0.0, 10.0);
    seated.disc = SeatedBody::Disc{-10.0, 16.0};
    const SectionFrame f = frameOf(Plane{seated.origin, seated.direction});
    EXPECT_NEAR(distanceMm(seated, seated.at(-9.0) + 15.0 * f.u), 1.0, 1e-9);
    EXPECT_NEAR(distanceMm(seated, seated.at(-11.0) + 18.0 * f.v), 2.0, 1e-9);
}

TEST(SeatedBody, OutlinesHaveTheAreasOfTheirClosedForms) {
    std::mt19937 random(3);
    for (int seed = 0; seed < 5; ++seed) {
        const SeatedBody seated = body(random, 10.0, -8.0, 12.0);
        const auto area = [&](const SectionFrame& frame) {
            double sum = 0.0;
            for (const auto& loop : outlinesIn(seated, frame))
                sum += std::abs(signedAreaMm2(loop));
            return sum;
        };
        const double disc = 100.0 * std::numbers::pi;
        EXPECT_NEAR(area(frameAt(seated, 3.0, 0.0)) / disc, 1.0, kSidesShare) << "square across";
        EXPECT_NEAR(area(frameAt(seated, 3.0, 20.0)) / (disc / std::cos(20.0 * std::numbers::pi / 180.0)), 1.0, kSidesShare);
        EXPECT_NEAR(area(frameAt(seated, 3.0, 90.0)) / 400.0, 1.0, kSidesShare) << "along the axis: a rectangle";
        EXPECT_TRUE(outlinesIn(seated, frameAt(seated, 20.0, 0.0)).empty()) << "passes by";
    }
}

TEST(SeatedBody, IsCutIntoBodyAndDiscAlongItsAxis) {
    std::mt19937 random(4);
    SeatedBody seated = body(random, 10.0, 0.0, 10.0);
    seated.disc = SeatedBody::Disc{-10.0, 16.0};
    const auto outlines = outlinesIn(seated, frameAt(seated, 0.0, 90.0));
    ASSERT_EQ(outlines.size(), 2u);
    EXPECT_NEAR(maximumCaliper(outlines[1]).lengthMm, std::hypot(32.0, SeatedBody::Disc::kDiscMm), 0.1);
}

TEST(SeatedMesh, IsClosedTurnedOutwardsAndHoldsTheVolume) {
    std::mt19937 random(5);
    SeatedBody seated = body(random, 10.0, -8.0, 12.0);
    seated.body = {{-8.0, 10.0}, {2.0, 7.0}, {12.0, 9.0}};
    const auto frustum = [](double a, double b) { return std::numbers::pi * 10.0 / 3.0 * (a * a + a * b + b * b); };
    EXPECT_TRUE(topology(seatedMesh(seated)).closed());
    EXPECT_NEAR(enclosedVolumeMm3(seatedMesh(seated)) / (frustum(10, 7) + frustum(7, 9)), 1.0, kSidesShare);
    EXPECT_NEAR(seated.radiusMm(-3.0), 8.5, 1e-12);
    seated.disc = SeatedBody::Disc{-10.0, 16.0};
    EXPECT_EQ(topology(seatedMesh(seated)).pieces, 2u);
    for (const auto& line : seatedLines(seated))
        for (const PatientPoint& p : line)
            EXPECT_NEAR(distanceMm(seated, p), 0.0, 1e-6) << "lines lie on the surface";
}

TEST(SeatedBody, InTheFormOfAnOvalIsMeasuredDrawnAndClosedAsOne) {
    std::mt19937 random(6);
    SeatedBody seated = body(random, 10.0, 0.0, 20.0);
    const double a = 12.0, b = 8.0;
    std::vector<double> radii;
    for (int i = 0; i < kSeatSides; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / kSeatSides;
        radii.push_back(a * b / std::hypot(b * std::cos(angle), a * std::sin(angle)));
    }
    seated.body.clear();
    for (double t = 0.0; t <= 20.0; t += 0.5)
        seated.body.push_back({t, 10.0, radii});
    const SectionFrame f = frameOf(Plane{seated.origin, seated.direction});
    const auto at = [&](double x, double y, double t) { return seated.at(t) + x * f.u + y * f.v; };
    EXPECT_NEAR(distanceMm(seated, at(15.0, 0.0, 10.2)), 3.0, 1e-6);
    EXPECT_NEAR(distanceMm(seated, at(0.0, 15.0, 10.2)), 7.0, 1e-6);
    EXPECT_NEAR(distanceMm(seated, at(0.0, 0.0, 24.0)), 4.0, 1e-9) << "behind";
    EXPECT_NEAR(distanceMm(seated, at(0.0, 12.0, 23.0)), 5.0, 1e-6) << "off the edge";
    EXPECT_NEAR(distanceMm(seated, at(0.0, 6.0, 10.0)), -2.0, 0.02) << "inside, under the side";
    EXPECT_NEAR(distanceMm(seated, at(3.0, 2.0, 19.0)), -1.0, 1e-9) << "inside, under the end";
    // Beside the slope of the oval, where the distance along the radius would say too much.
    double nearest = 1e9;
    const Eigen::Vector2d place(12.0, 9.0);
    for (int i = 0; i < 20000; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / 20000;
        nearest = std::min(nearest, (place - Eigen::Vector2d(a * std::cos(angle), b * std::sin(angle))).norm());
    }
    EXPECT_NEAR(distanceMm(seated, at(12.0, 9.0, 7.3)), nearest, 0.03);
    double area = 0.0;
    for (const auto& loop : outlinesIn(seated, frameAt(seated, 7.0, 0.0)))
        area += std::abs(signedAreaMm2(loop));
    EXPECT_NEAR(area / (a * b * std::numbers::pi), 1.0, kSidesShare);
    EXPECT_TRUE(topology(seatedMesh(seated)).closed());
    EXPECT_NEAR(enclosedVolumeMm3(seatedMesh(seated)) / (20.0 * a * b * std::numbers::pi), 1.0, kSidesShare);
    for (const auto& line : seatedLines(seated))
        for (const PatientPoint& p : line)
            EXPECT_NEAR(distanceMm(seated, p), 0.0, 1e-6) << "lines lie on the surface";
}

TEST(ShadowsOf, AreCircleAndRectangleOfTheClosedForms) {
    SeatedBody seated;
    seated.origin = {Eigen::Vector3d(5, 6, 7)};
    seated.direction = {Eigen::Vector3d::UnitX()}; // to the patient's left
    seated.body = {{-4.0, 9.0}, {12.0, 9.0}};
    PlanarScale scale;
    scale.mmPerPixel = Eigen::Vector2d(0.5, 0.5);
    // From the front the body lies across: 16 by 18 mm, its origin at the pixel, its far end to the right.
    const auto front = shadowsOf(seated, seated.origin, {0.0, 0.0}, scale, {100.0, 200.0});
    ASSERT_TRUE(front);
    Eigen::Array2d low(1e9, 1e9), high = -low;
    for (const auto& p : front->front()) {
        low = low.min(p.array());
        high = high.max(p.array());
    }
    EXPECT_NEAR(low.x(), 100.0 - 8.0, 1e-3);
    EXPECT_NEAR(high.x(), 100.0 + 24.0, 1e-3);
    EXPECT_NEAR(high.y() - low.y(), 36.0, 0.1);
    // From the left it is a circle.
    const auto left = shadowsOf(seated, seated.origin, {90.0, 0.0}, scale, {100.0, 200.0});
    EXPECT_NEAR(signedAreaMm2(left->front()) / (324.0 * std::numbers::pi), 1.0, kSidesShare);
    // A patient rolled by 20 degrees is seen at LAO 20 as one who is not at LAO 0.
    const auto rolled = shadowsOf(seated, seated.origin, {20.0, 0.0}, scale, {100.0, 200.0}, PatientTurn{20.0, 0.0});
    ASSERT_EQ(rolled->front().size(), front->front().size());
    for (std::size_t i = 0; i < front->front().size(); ++i)
        EXPECT_LT((rolled->front()[i] - front->front()[i]).norm(), 1e-6);
    EXPECT_EQ(shadowsOf(seated, seated.origin, {0.0, 0.0}, scale, {0.0, 0.0}, PatientTurn{120.0, 0.0}).error().code, ErrorCode::InvalidArgument);
    seated.disc = SeatedBody::Disc{-10.0, 16.0};
    EXPECT_EQ(shadowsOf(seated, seated.origin, {0.0, 0.0}, scale, {0.0, 0.0})->size(), 2u);
    EXPECT_EQ(shadowsOf(seated, {Eigen::Vector3d(std::nan(""), 0, 0)}, {0.0, 0.0}, scale, {0.0, 0.0}).error().message,
              "Cannot project the size: a coordinate is not a number.");
}
