#include "core/geometry/smooth_line.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kRounding = 1e-9;
using Points = std::vector<Eigen::Vector2d>;

Points circle(int count, double radius, double turn = 2.0 * kPi) {
    Points points;
    for (int i = 0; i < count; ++i)
        points.emplace_back(30.0 + radius * std::cos(turn * i / count), -20.0 + radius * std::sin(turn * i / count));
    return points;
}

SmoothLine closed(const Points& points) {
    return SmoothLine::through(points, SmoothLine::Ends::Closed).value();
}
SmoothLine open(const Points& points) {
    return SmoothLine::through(points, SmoothLine::Ends::Open).value();
}

} // namespace

TEST(SmoothLine, ReadsACircleOfAFewClicks) {
    constexpr double kRadius = 12.0;
    // The spline's error falls with the fourth power of the step: bounds as stated in the header.
    EXPECT_NEAR(closed(circle(12, kRadius)).length() / (2.0 * kPi * kRadius), 1.0, 3e-4);
    EXPECT_NEAR(closed(circle(6, kRadius)).length() / (2.0 * kPi * kRadius), 1.0, 4e-3);
    EXPECT_NEAR(closed(circle(12, kRadius)).signedArea() / (kPi * kRadius * kRadius), 1.0, 5e-4);
    const double coarse = 1.0 - closed(circle(12, kRadius)).length() / (2.0 * kPi * kRadius);
    const double fine = 1.0 - closed(circle(24, kRadius)).length() / (2.0 * kPi * kRadius);
    EXPECT_NEAR(coarse / fine, 16.0, 3.0);
}

TEST(SmoothLine, ReadsTheLengthOfAParabolaAndOfASpiralInClosedForm) {
    // y = x^2 / 2, x from 0 to 1: (sqrt 2 + asinh 1) / 2. A cubic in x, though not in the spline's own parameter.
    Points parabola;
    for (int i = 0; i <= 20; ++i)
        parabola.emplace_back(i / 20.0, i * i / 800.0);
    EXPECT_NEAR(open(parabola).length(), 0.5 * (std::sqrt(2.0) + std::asinh(1.0)), 1e-6);
    // Archimedes' spiral r = t, which is what a helix on a cone looks like from above: (t sqrt(1 + t^2) + asinh t) / 2.
    Points spiral;
    const double end = 3.0 * kPi;
    for (int i = 0; i <= 60; ++i) {
        const double t = end * i / 60.0;
        spiral.emplace_back(t * std::cos(t), t * std::sin(t));
    }
    const double exact = 0.5 * (end * std::sqrt(1.0 + end * end) + std::asinh(end));
    EXPECT_NEAR(open(spiral).length() / exact, 1.0, 1e-4);
}

TEST(SmoothLine, IsStraightThroughTwoPointsAndRunsThroughEveryPoint) {
    EXPECT_NEAR(open({{0, 0}, {3, 4}}).length(), 5.0, kRounding);
    const Points points{{0, 0}, {5, 1}, {6, 7}, {-2, 9}, {-4, 3}};
    for (const auto ends : {SmoothLine::Ends::Open, SmoothLine::Ends::Closed}) {
        const Points line = SmoothLine::through(points, ends)->sampled(4);
        for (std::size_t i = 0; i < points.size(); ++i)
            EXPECT_LT((line[4 * i] - points[i]).norm(), kRounding);
    }
}

TEST(SmoothLine, TurnsWithItsPointsAndChangesSignWithTheirOrder) {
    const Points points{{0, 0}, {5, 1}, {6, 7}, {-2, 9}};
    Points turned, back(points.rbegin(), points.rend());
    for (const auto& p : points)
        turned.emplace_back(0.6 * p.x() - 0.8 * p.y() + 100.0, 0.8 * p.x() + 0.6 * p.y() - 50.0);
    EXPECT_NEAR(closed(turned).length(), closed(points).length(), kRounding);
    EXPECT_NEAR(closed(turned).signedArea(), closed(points).signedArea(), 1e-8);
    EXPECT_NEAR(closed(back).signedArea(), -closed(points).signedArea(), kRounding);
    EXPECT_NEAR(open(back).length(), open(points).length(), kRounding);
}

TEST(SmoothLine, DropsRepeatsAndRefusesWhatIsNoLine) {
    EXPECT_NEAR(open({{0, 0}, {0, 0}, {3, 4}, {3, 4}}).length(), 5.0, kRounding);
    const auto one = SmoothLine::through(Points{{1, 1}, {1, 1}}, SmoothLine::Ends::Open);
    EXPECT_EQ(one.error().code, ErrorCode::TooFewPoints);
    EXPECT_THAT(one.error().message, HasSubstr("through 1 different point(s): 2 are needed"));
    const auto two = SmoothLine::through(Points{{1, 1}, {2, 1}, {1, 1}}, SmoothLine::Ends::Closed);
    EXPECT_THAT(two.error().message, HasSubstr("closed line through 2 different point(s): 3 are needed"));
    const Points bad{{1, 1}, {std::numeric_limits<double>::quiet_NaN(), 1}};
    EXPECT_EQ(SmoothLine::through(bad, SmoothLine::Ends::Open).error().code, ErrorCode::NonFinite);
}
