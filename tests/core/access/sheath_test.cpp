#include "core/access/sheath.h"

#include "core/geometry/polyline.h"
#include "tests/core/access/upright_septum.h"
#include "tests/core/geometry/shape_zoo.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

const PatientVector kX{Eigen::Vector3d::UnitX()}, kY{Eigen::Vector3d::UnitY()};

/// The way is tangent-continuous, keeps its radius and joins both ends.
void checkCourse(const SheathCourse& course, const PatientPoint& crossing, const AppendageTarget& target, double radiusMm) {
    ASSERT_GE(course.points.size(), 2u);
    EXPECT_LT(distanceMm(course.points.front(), crossing), kAccessRounding);
    EXPECT_LT(distanceMm(course.points.back(), target.ostiumCentre), kAccessRounding);
    EXPECT_NEAR(course.departure.norm(), 1.0, 1e-12);
    EXPECT_NEAR(course.arrival.norm(), 1.0, 1e-12);
    // A bend of pieces of at most one degree: neighbouring chords turn by no more, and the polyline is shorter by 1.3e-5 at most.
    PatientVector before = course.departure;
    for (std::size_t i = 1; i < course.points.size(); ++i) {
        const PatientVector chord = course.points[i] - course.points[i - 1];
        if (chord.norm() < 1e-9) continue;
        EXPECT_LT(angleBetweenDeg(before, chord), 1.01);
        before = chord;
    }
    EXPECT_LT(angleBetweenDeg(before, course.arrival), 1.01);
    EXPECT_NEAR(lengthMm(course.points), course.lengthMm, 2e-5 * course.lengthMm);
    EXPECT_NEAR(course.turnDeg, angleBetweenDeg(course.departure, course.arrival), 1e-6);
    if (course.turnDeg > 1e-6) {
        EXPECT_DOUBLE_EQ(course.radiusMm, radiusMm);
    }
}

} // namespace

TEST(StraightCourse, IsTheLine) {
    const AppendageTarget target{{{30, 40, 0}}, kX};
    const auto course = need(straightCourse({{0, 0, 0}}, target, kY));
    EXPECT_DOUBLE_EQ(course.lengthMm, 50.0);
    EXPECT_NEAR(course.arrivalAngleDeg, 53.130102354, 1e-8); // atan(4/3)
    EXPECT_NEAR(course.departureAngleDeg, 36.869897646, 1e-8);
    EXPECT_EQ(course.radiusMm, 0.0);
    checkCourse(course, {{0, 0, 0}}, target, 0.0);
}

// By hand: a quarter of a circle of radius 20 leaves (0, 0) along x and arrives at (20, 20) along y.
TEST(SteeredCourse, QuarterCircleFitsExactly) {
    const AppendageTarget target{{{20, 20, 0}}, kY};
    const auto course = need(steeredCourse({{0, 0, 0}}, target, kX, {20.0, 0.0}));
    EXPECT_NEAR(course.arrivalAngleDeg, 0.0, 1e-5);
    EXPECT_NEAR(course.departureAngleDeg, 0.0, 1e-5);
    EXPECT_NEAR(course.turnDeg, 90.0, 1e-5);
    EXPECT_NEAR(course.lengthMm, 10.0 * std::numbers::pi, 1e-5);
    checkCourse(course, {{0, 0, 0}}, target, 20.0);
}

// Leaving along x, the bend begins at (v, 0) - cut and must turn towards (20, 20): 21 tan(t/2) <= v with tan t = 20 / (20 - v).
// At v = 20 it needs 21 > 20, and no other v does better. With the departure free, the widest beta at which a bend fits is that
// at which the arc alone leads from one end to the other: D = 2 R sin(beta).
TEST(SteeredCourse, AWiderBendFitsOnlyWithAnotherDeparture) {
    const AppendageTarget target{{{20, 20, 0}}, kY};
    EXPECT_EQ(refused(steeredCourse({{0, 0, 0}}, target, kX, {21.0, 0.0})).code, ErrorCode::NotFound);
    const auto free = need(steeredCourse({{0, 0, 0}}, target, kX, {21.0, 60.0}));
    EXPECT_NEAR(free.arrivalAngleDeg, 45.0 - std::asin(std::sqrt(800.0) / 42.0) * 180.0 / std::numbers::pi, 1e-4);
    EXPECT_GT(free.departureAngleDeg, 0.0);
    checkCourse(free, {{0, 0, 0}}, target, 21.0);
}

TEST(SteeredCourse, NeedsNoBendOnTheAxis) {
    const AppendageTarget target{{{40, 0, 0}}, kX};
    const auto course = need(steeredCourse({{0, 0, 0}}, target, kX, {25.0, 45.0}));
    EXPECT_EQ(course.turnDeg, 0.0);
    EXPECT_DOUBLE_EQ(course.lengthMm, 40.0);
    EXPECT_EQ(course.arrivalAngleDeg, 0.0);
}

TEST(SteeredCourse, SaysWhenNoBendExists) {
    const AppendageTarget behind{{{-40, 0, 1}}, kX}; // the sheath would have to turn round
    const Error error = refused(steeredCourse({{0, 0, 0}}, behind, kX, {25.0, 45.0}));
    EXPECT_EQ(error.code, ErrorCode::NotFound);
    EXPECT_THAT(error.message, HasSubstr("No bend of radius 25 mm"));
    EXPECT_THAT(error.message, HasSubstr("45 degrees are allowed"));
    EXPECT_FALSE(steeredArrivalDeg({{0, 0, 0}}, behind, kX, {25.0, 45.0}));
}

TEST(SteeredCourse, RefusesWhatItCannotUse) {
    const AppendageTarget target{{{40, 0, 0}}, kX};
    EXPECT_THAT(refused(steeredCourse({{0, 0, 0}}, target, kX, {0.0, 45.0})).message, HasSubstr("radius is 0 mm"));
    EXPECT_THAT(refused(steeredCourse({{0, 0, 0}}, target, kX, {25.0, 95.0})).message, HasSubstr("within 95°"));
    EXPECT_THAT(refused(steeredCourse({{0, 0, 0}}, target, kX, {NAN, 45.0})).message, HasSubstr("not a finite number"));
    EXPECT_EQ(refused(straightCourse({{40, 0.5, 0}}, target, kX)).code, ErrorCode::Degenerate);
}

/// A brute-force twin: every pair of angles on a fine grid, judged by laying the bend instead of by the closed form.
RC_GTEST_PROP(SteeredCourse, NoOtherBendArrivesNearer, ()) {
    const double distance = *reals(20, 70), radius = *reals(10, 45), range = *reals(5, 80);
    const double axisDeg = *reals(0, 85), leavingDeg = *reals(-80, 80);
    const double r = std::numbers::pi / 180.0;
    const AppendageTarget target{{{distance, 0, 0}}, {{std::cos(axisDeg * r), std::sin(axisDeg * r), 0}}};
    const PatientVector leaving{{std::cos(leavingDeg * r), std::sin(leavingDeg * r), 0}};
    double best = 1e9;
    constexpr double kStep = 0.5;
    for (double beta = -89.0; beta <= 89.0; beta += kStep)
        for (double alpha = -89.0; alpha <= 89.0; alpha += kStep) {
            // leaves at -alpha, arrives at beta from the line: both on opposite sides, or no bend at all
            if (alpha * beta <= 0.0 && !(alpha == 0.0 && beta == 0.0)) continue;
            const double turn = std::abs(alpha + beta) * r;
            if (turn > 165.0 * r) continue;
            if (std::abs(-alpha - leavingDeg) > range) continue;
            if (turn > 0.0) {
                const double first = distance * std::sin(std::abs(beta) * r) / std::sin(turn);
                const double second = distance * std::sin(std::abs(alpha) * r) / std::sin(turn);
                if (radius * std::tan(0.5 * turn) > std::min(first, second)) continue;
            }
            best = std::min(best, std::abs(axisDeg - beta));
        }
    const auto ours = steeredArrivalDeg({{0, 0, 0}}, target, leaving, {radius, range});
    if (best < 80.0) {
        RC_ASSERT(ours.has_value());
        RC_ASSERT(*ours <= best + 0.25); // the step of the search
    }
    if (ours) {
        const auto course = steeredCourse({{0, 0, 0}}, target, leaving, {radius, range});
        RC_ASSERT(course.has_value());
        RC_ASSERT(std::abs(course->arrivalAngleDeg - *ours) < 1e-5);
        RC_ASSERT(course->departureAngleDeg < range + 1e-4); // kSlackRad of sheath.cpp
    }
}

RC_GTEST_PROP(SteeredCourse, IsWellFormedAndMovesWithTheHeart, ()) {
    const PatientPoint crossing{{*reals(-5, 5), *reals(-5, 5), *reals(-5, 5)}};
    const AppendageTarget target{{{*reals(30, 60), *reals(-20, 20), *reals(-20, 20)}},
                                 {Eigen::Vector3d(1, *reals(-1, 1), *reals(-1, 1)).normalized()}};
    const Steering steering{*reals(12, 40), *reals(20, 80)};
    const auto course = steeredCourse(crossing, target, kX, steering);
    RC_PRE(course.has_value());
    checkCourse(*course, crossing, target, steering.radiusMm);
    Eigen::Isometry3d motion = Eigen::Isometry3d::Identity();
    motion.rotate(Eigen::AngleAxisd(*reals(-3, 3), Eigen::Vector3d(0.48, 0.6, 0.64)));
    motion.pretranslate(Eigen::Vector3d(50, -20, 30));
    const auto other = steeredCourse({motion * crossing.mm}, {{motion * target.ostiumCentre.mm}, {motion.linear() * target.axis.mm}},
                                     {motion.linear() * kX.mm}, steering);
    RC_ASSERT(other.has_value());
    RC_ASSERT(std::abs(course->lengthMm - other->lengthMm) < 1e-3);
    RC_ASSERT((motion.linear() * course->arrival.mm - other->arrival.mm).norm() < 1e-4);
}
