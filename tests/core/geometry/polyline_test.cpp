#include "core/geometry/polyline.h"

#include "tests/core/geometry/shape_zoo.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using gauge::test::reals;

namespace {

// Rounding of sums over a hundred segments.
constexpr double kRoundingMm = 1e-9;

std::vector<PatientPoint> points(std::initializer_list<Eigen::Vector3d> list) {
    std::vector<PatientPoint> out;
    for (const auto& p : list)
        out.push_back({p});
    return out;
}

/// Up along z for 10 mm, then along x for 20 mm.
Polyline corner() {
    return *Polyline::make(points({{0, 0, 0}, {0, 0, 5}, {0, 0, 5}, {0, 0, 10}, {20, 0, 10}}));
}

/// A quarter of a circle of radius 20 mm, `n` segments.
Polyline quarterCircle(int n) {
    std::vector<PatientPoint> out;
    for (int i = 0; i <= n; ++i) {
        const double t = 0.5 * std::numbers::pi * i / n;
        out.push_back({{20 * std::cos(t), 20 * std::sin(t), -3}});
    }
    return *Polyline::make(out);
}

} // namespace

TEST(Polyline, LengthSumsItsSegments) {
    EXPECT_DOUBLE_EQ(corner().lengthMm(), 30.0);
    EXPECT_DOUBLE_EQ(lengthMm(corner().points()), 30.0);
    EXPECT_EQ(lengthMm({}), 0.0);
    EXPECT_EQ(corner().points().size(), 4u) << "the repeated point is dropped";
}

TEST(Polyline, PointAtWalksAndHoldsTheEnds) {
    EXPECT_TRUE(corner().pointAt(7.0).mm.isApprox(Eigen::Vector3d(0, 0, 7)));
    EXPECT_TRUE(corner().pointAt(12.5).mm.isApprox(Eigen::Vector3d(2.5, 0, 10)));
    EXPECT_TRUE(corner().pointAt(-4.0).mm.isApprox(Eigen::Vector3d(0, 0, 0)));
    EXPECT_TRUE(corner().pointAt(99.0).mm.isApprox(Eigen::Vector3d(20, 0, 10)));
}

TEST(Polyline, TangentIsThatOfTheSegmentOrOfTheChord) {
    EXPECT_TRUE(corner().tangentAt(3.0).mm.isApprox(Eigen::Vector3d::UnitZ()));
    EXPECT_TRUE(corner().tangentAt(10.0).mm.isApprox(Eigen::Vector3d::UnitX())) << "at a vertex: the next segment";
    EXPECT_TRUE(corner().tangentAt(99.0).mm.isApprox(Eigen::Vector3d::UnitX()));
    EXPECT_TRUE(corner().tangentAt(10.0, 4.0).mm.isApprox(Eigen::Vector3d(1, 0, 1).normalized()));
}

TEST(Polyline, NearestPlaceOfAPoint) {
    const auto place = corner().nearestTo({{5, 2, 10}});
    EXPECT_DOUBLE_EQ(place.sMm, 15.0);
    EXPECT_DOUBLE_EQ(place.distanceMm, 2.0);
    EXPECT_DOUBLE_EQ(corner().nearestTo({{0, 0, -3}}).sMm, 0.0);
}

TEST(Polyline, MaximumTurnFindsTheCorner) {
    const auto turn = corner().maximumTurn(5.0);
    EXPECT_NEAR(turn.angleDeg, 90.0, 1e-9);
    EXPECT_DOUBLE_EQ(turn.sMm, 10.0);
}

TEST(Polyline, MaximumTurnOfACircleIsTheAngleBetweenNeighbourChords) {
    // Chords over arcs of 5 mm on radius 20 mm: 5/20 rad between them.
    EXPECT_NEAR(quarterCircle(2000).maximumTurn(5.0).angleDeg, 0.25 * 180.0 / std::numbers::pi, 1e-3);
}

TEST(Polyline, MaximumTurnOfAShortLineIsZero) {
    EXPECT_EQ(corner().maximumTurn(16.0).angleDeg, 0.0);
}

TEST(Polyline, ResampledKeepsBothEndsAtEqualSteps) {
    const auto line = quarterCircle(500);
    const auto out = line.resampled(0.5);
    EXPECT_EQ(out.size(), static_cast<std::size_t>(std::lround(line.lengthMm() / 0.5)) + 1);
    EXPECT_TRUE(out.front().mm == line.points().front().mm && out.back().mm == line.points().back().mm);
    const double step = line.lengthMm() / static_cast<double>(out.size() - 1);
    for (std::size_t i = 1; i < out.size(); ++i)
        EXPECT_NEAR(distanceMm(out[i - 1], out[i]), step, 1e-4); // chords against arcs of the polygon
    EXPECT_EQ(line.resampled(1000.0).size(), 2u);
}

TEST(Polyline, NamesWhatIsWrong) {
    const auto few = Polyline::make(points({{1, 2, 3}, {1, 2, 3}}));
    ASSERT_FALSE(few);
    EXPECT_EQ(few.error().code, ErrorCode::TooFewPoints);
    EXPECT_EQ(few.error().message, "Cannot follow the line: it has 1 different points; at least 2 are needed.");
    const auto nan = Polyline::make(points({{1, 2, 3}, {1, 2, std::nan("")}}));
    ASSERT_FALSE(nan);
    EXPECT_EQ(nan.error().code, ErrorCode::NonFinite);
    EXPECT_EQ(nan.error().message, "Cannot follow the line: point 2 of 2 is not a finite number.");
}

TEST(AngleBetween, IsAccurateForTinyAndStraightBackAngles) {
    EXPECT_NEAR(angleBetweenDeg({{1, 0, 0}}, {{1, 1e-9, 0}}), 1e-9 * 180.0 / std::numbers::pi, 1e-15);
    EXPECT_DOUBLE_EQ(angleBetweenDeg({{1, 0, 0}}, {{-2, 0, 0}}), 180.0);
}

RC_GTEST_PROP(Polyline, NearestPlaceOfItsOwnPointIsOnIt, ()) {
    const auto line = quarterCircle(50);
    const double s = *reals(0.0, line.lengthMm());
    const auto place = line.nearestTo(line.pointAt(s));
    RC_ASSERT(place.distanceMm < kRoundingMm);
    RC_ASSERT(std::abs(place.sMm - s) < 1e-7);
}
