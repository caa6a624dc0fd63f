#include "core/cine/planar_scale.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <random>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

// A few roundings of numbers up to 1e3.
constexpr double kRounding = 1e-9;

PlanarScale scale(double x, double y, double relative = 0.01) {
    return {{x, y}, relative, ScaleOrigin::RegionCalibration, ""};
}

double lengthOf(Eigen::Vector2d a, Eigen::Vector2d b, const PlanarScale& s) {
    return planarDistance(a, b, s).value().value;
}

} // namespace

TEST(PlanarDistance, HandValues) {
    EXPECT_DOUBLE_EQ(lengthOf({0, 0}, {3, 4}, scale(1, 1)), 5.0);
    EXPECT_DOUBLE_EQ(lengthOf({10, 10}, {13, 14}, scale(0.5, 0.25)), std::hypot(1.5, 1.0)) << "unequal axes";
    EXPECT_DOUBLE_EQ(lengthOf({7, 7}, {7, 7}, scale(0.5, 0.25)), 0.0);
}

TEST(PlanarDistance, CarriesScaleAndEndsSeparately) {
    const Estimate e = planarDistance({0, 0}, {100, 0}, scale(0.2, 0.4, 0.03), 2.0).value();
    EXPECT_NEAR(e.value, 20.0, kRounding);
    EXPECT_NEAR(e.components.scale, 0.6, kRounding);                           // 3 % of 20 mm
    EXPECT_NEAR(e.components.observer, std::sqrt(2.0) * 2.0 * 0.2, kRounding); // both ends, along the line
    EXPECT_EQ(e.components.edge, 0.0);
    const Estimate down = planarDistance({0, 0}, {0, 100}, scale(0.2, 0.4, 0.03), 2.0).value();
    EXPECT_NEAR(down.components.observer, std::sqrt(2.0) * 2.0 * 0.4, kRounding);
    EXPECT_GT(planarDistance({5, 5}, {5, 5}, scale(0.2, 0.4)).value().components.observer, 0.0)
        << "a length of 0 is not sure";
}

TEST(PlanarDistance, ObserverPartIsTheSpreadOfRepeatedMarks) {
    std::mt19937 random(20251);
    std::normal_distribution<double> jitter(0.0, 1.5);
    const PlanarScale s = scale(0.3, 0.2);
    const Eigen::Vector2d from(100, 200), to(180, 260);
    constexpr int kCount = 20000;
    double sum = 0.0, squares = 0.0;
    for (int i = 0; i < kCount; ++i) {
        const auto moved = [&](const Eigen::Vector2d& p) {
            return Eigen::Vector2d(p.x() + jitter(random), p.y() + jitter(random));
        };
        const double length = lengthOf(moved(from), moved(to), s);
        sum += length;
        squares += length * length;
    }
    const double sd = std::sqrt(squares / kCount - sum / kCount * sum / kCount);
    // The SD of kCount draws is itself sure within 0.5 %; four of that.
    EXPECT_NEAR(planarDistance(from, to, s, 1.5).value().components.observer, sd, 0.02 * sd);
}

TEST(PlanarDistance, SaysWhichScaleItUsed) {
    PlanarScale s = scale(0.2, 0.2);
    EXPECT_EQ(planarDistance({0, 0}, {1, 0}, s)->method, "caliper; calibration of the ultrasound region");
    s.origin = ScaleOrigin::HandCalibration;
    s.detail = "50.0 mm over 200.0 pixels";
    EXPECT_EQ(planarDistance({0, 0}, {1, 0}, s)->method,
              "caliper; scale marked by hand (50.0 mm over 200.0 pixels)");
}

TEST(PlanarDistance, RefusesUnusableScalesAndEnds) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const PlanarScale& bad :
         {scale(0, 1), scale(1, -1), scale(nan, 1), scale(1, 1, -0.1), scale(1, 1, nan)}) {
        const auto refused = planarDistance({0, 0}, {1, 1}, bad);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::SpacingInvalid);
        EXPECT_THAT(refused.error().message, HasSubstr("pixel lengths must be above zero"));
    }
    const auto refused = planarDistance({0, nan}, {1, 1}, scale(1, 1));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NonFinite);
    EXPECT_THAT(refused.error().message, HasSubstr("Set both ends again"));
    EXPECT_FALSE(planarDistance({0, 0}, {1, 1}, scale(1, 1), -1.0));
}

TEST(ScaleOrigin, EachHasWordsOfItsOwn) {
    std::vector<std::string_view> seen;
    for (int i = 0; i <= static_cast<int>(ScaleOrigin::PixelSpacing); ++i) {
        seen.push_back(words(static_cast<ScaleOrigin>(i)));
        EXPECT_EQ(std::count(seen.begin(), seen.end(), seen.back()), 1) << seen.back();
    }
}
