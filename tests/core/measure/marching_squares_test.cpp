#include "core/measure/marching_squares.h"

#include "core/geometry/planar_contour.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;

TEST(IsoContours, TraceACircleOfAConeExactlyUpToItsChords) {
    constexpr int kSide = 41;
    std::vector<float> values;
    for (int y = 0; y < kSide; ++y)
        for (int x = 0; x < kSide; ++x)
            values.push_back(static_cast<float>(12.3 - std::hypot(x - 20.2, y - 19.6)));
    const auto loops = isoContours(values, kSide, kSide, 0.0f);
    ASSERT_EQ(loops.size(), 1u);
    // Linear interpolation of a cone errs by at most h^2 / (8 R) = 0.01 pixel along an edge.
    EXPECT_NEAR(std::abs(signedAreaMm2(loops[0])), std::numbers::pi * 12.3 * 12.3, 1.0);
    for (const auto& p : loops[0])
        EXPECT_NEAR((p - Eigen::Vector2d(20.2, 19.6)).norm(), 12.3, 0.02);
}

TEST(IsoContours, CloseAtTheBorderAndKeepCornersApart) {
    // Two pixels that touch at a corner, one of them in the corner of the picture.
    const std::vector<float> values{1, 0, 0, 0, 1, 0, 0, 0, 0};
    const auto loops = isoContours(values, 3, 3, 0.5f);
    ASSERT_EQ(loops.size(), 2u);
    EXPECT_EQ(loops[0].size(), 4u);
    EXPECT_EQ(loops[1].size(), 4u);
}

TEST(IsoContours, AHoleIsALoopOfItsOwn) {
    std::vector<float> values(49, 1.0f);
    values[24] = 0.0f;
    EXPECT_EQ(isoContours(values, 7, 7, 0.5f).size(), 2u);
    EXPECT_TRUE(isoContours(std::vector<float>(49, 0.0f), 7, 7, 0.5f).empty());
}
