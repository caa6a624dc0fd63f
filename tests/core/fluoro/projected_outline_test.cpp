#include "core/fluoro/projected_outline.h"

#include "core/fluoro/projected_width.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;

namespace {

constexpr double kExactPx = 1e-9; // the same parallel rays in other words

std::vector<PatientPoint> circle(double radiusMm) {
    std::vector<PatientPoint> points;
    for (int i = 0; i < 64; ++i) {
        const double t = 2.0 * std::numbers::pi * i / 64;
        points.push_back({Eigen::Vector3d(40.0 + radiusMm * std::cos(t), -20.0, 7.0 + radiusMm * std::sin(t))});
    }
    return points;
}

PlanarScale scale() {
    return {{0.25, 0.25}, 0.01, ScaleOrigin::HandCalibration, {}};
}

} // namespace

TEST(ProjectedOutline, FromTheFrontACircleFacingTheDetectorStaysOne) {
    const auto outline = projectedOutline(circle(10.0), {0.0, 0.0}, scale(), {100.0, 80.0});
    ASSERT_TRUE(outline);
    for (const auto& p : *outline)
        EXPECT_NEAR((p - Eigen::Vector2d(100.0, 80.0)).norm(), 40.0, kExactPx);
    EXPECT_NEAR(outline->at(0).x(), 140.0, kExactPx) << "the patient's left is on the right (c_arm.h)";
    EXPECT_NEAR(outline->at(16).y(), 40.0, kExactPx) << "the head is up";
}

TEST(ProjectedOutline, IsAsWideAsTheProjectedWidthSays) {
    const CArmAngles angles{-30.0, 20.0};
    const auto outline = projectedOutline(circle(10.0), angles, scale(), {0.0, 0.0});
    const auto width = projectedWidth(circle(10.0), angles);
    ASSERT_TRUE(outline && width);
    double longest = 0.0;
    for (const auto& a : *outline)
        for (const auto& b : *outline)
            longest = std::max(longest, (a - b).norm());
    EXPECT_NEAR(0.25 * longest, width->longestMm, 1e-9);
}

TEST(ProjectedOutline, SaysWhatIsWrong) {
    EXPECT_EQ(projectedOutline(std::vector<PatientPoint>(2), {}, scale(), {0, 0}).error().message,
              "Cannot project the contour: it has fewer than 3 points.");
    EXPECT_EQ(projectedOutline(circle(10.0), {}, scale(), {NAN, 0}).error().message,
              "Cannot project the contour: a coordinate is not a number.");
    EXPECT_FALSE(projectedOutline(circle(10.0), {}, {}, {0, 0}));
}
