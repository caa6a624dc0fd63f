#include "core/geometry/plane_fit.h"

#include "tests/core/geometry/shape_zoo.h"

#include <Eigen/Geometry>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using gauge::test::reals;
using testing::HasSubstr;

namespace {

constexpr double kRoundingMm = 1e-9; // a decomposition of points within 100 mm

std::vector<PatientPoint> points(std::initializer_list<Eigen::Vector3d> list) {
    std::vector<PatientPoint> out;
    for (const auto& p : list)
        out.push_back({p});
    return out;
}

std::string refusal(const std::vector<PatientPoint>& from, ErrorCode code, PlaneFitOptions options = {}) {
    const auto fit = fitPlane(from, "the mitral annulus", options);
    EXPECT_FALSE(fit);
    if (fit) return {};
    EXPECT_EQ(fit.error().code, code) << fit.error().message;
    return fit.error().message;
}

} // namespace

TEST(FitPlane, ThreePointsGiveTheirOwnPlane) {
    const auto fit = fitPlane(points({{10, 0, 0}, {0, 10, 0}, {0, 0, 10}}));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(std::abs(fit->plane.normal.mm.dot(Eigen::Vector3d(1, 1, 1).normalized())), 1.0, 1e-12);
    EXPECT_NEAR(fit->rmsMm, 0.0, kRoundingMm);
    EXPECT_NEAR(signedDistanceMm(fit->plane, {{10, 0, 0}}), 0.0, kRoundingMm);
}

// By hand: the four corners of a square at heights +1, -1, +1, -1. By symmetry the best plane is z = 0 and every point
// lies 1 mm from it; each corner is 10 sqrt(2) away along a diagonal, so each principal spread is 10.
TEST(FitPlane, ResidualsOfAWarpedSquareAreTheHeights) {
    const auto fit = fitPlane(points({{10, 10, 1}, {-10, 10, -1}, {-10, -10, 1}, {10, -10, -1}}));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(std::abs(fit->plane.normal.mm.z()), 1.0, 1e-12);
    EXPECT_NEAR(fit->rmsMm, 1.0, kRoundingMm);
    EXPECT_NEAR(fit->largestMm, 1.0, kRoundingMm);
    EXPECT_NEAR(fit->longSpreadMm, 10.0, kRoundingMm);
    EXPECT_NEAR(fit->shortSpreadMm, 10.0, kRoundingMm);
}

TEST(FitPlane, NamesTheFarthestPoint) {
    const auto fit = fitPlane(points({{20, 0, 0}, {0, 20, 0}, {-20, 0, 0}, {0, -20, 0}, {1, 1, 4}}));
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->farthest, 4u);
    EXPECT_GT(fit->largestMm, fit->rmsMm);
}

TEST(FitPlane, RefusesWhatIsNoPlane) {
    EXPECT_THAT(refusal(points({{0, 0, 0}, {1, 0, 0}}), ErrorCode::TooFewPoints),
                HasSubstr("through the mitral annulus: points marked: 2; at least 3"));
    EXPECT_THAT(refusal(points({{0, 0, 0}, {1, 0, 0}, {NAN, 0, 0}}), ErrorCode::NonFinite), HasSubstr("point 3 of 3"));
    EXPECT_THAT(refusal(points({{5, 5, 5}, {5, 5, 5}, {5, 5, 5}}), ErrorCode::Degenerate), HasSubstr("in one place"));
    EXPECT_THAT(refusal(points({{0, 0, 0}, {1, 2, 3}, {2, 4, 6}, {10, 20, 30}}), ErrorCode::Degenerate), HasSubstr("on one line"));
    EXPECT_THAT(refusal(points({{0, 0, 0}, {20, 2, 0}, {-20, 2, 0}}), ErrorCode::Degenerate, {3.0}), HasSubstr("tilt about that line"));
    EXPECT_THAT(refusal(points({{9, 0, 0}, {-9, 0, 0}, {0, 9, 0}, {0, -9, 0}, {0, 0, 9}, {0, 0, -9}}), ErrorCode::Degenerate),
                HasSubstr("do not lie near a plane"));
}

RC_GTEST_PROP(FitPlane, MovesWithThePointsAndForgetsTheirOrder, ()) {
    std::vector<PatientPoint> marked;
    for (int i = 0; i < 7; ++i)
        marked.push_back({{20 * std::cos(0.9 * i) + *reals(-2, 2), 14 * std::sin(0.9 * i) + *reals(-2, 2), *reals(-2, 2)}});
    const auto axis = Eigen::Vector3d(*reals(-1, 1), *reals(-1, 1), *reals(-1, 1));
    RC_PRE(axis.norm() > 0.01);
    Eigen::Isometry3d motion = Eigen::Isometry3d::Identity();
    motion.rotate(Eigen::AngleAxisd(*reals(-3, 3), axis.normalized()));
    motion.pretranslate(Eigen::Vector3d(*reals(-90, 90), *reals(-90, 90), *reals(-90, 90)));
    std::vector<PatientPoint> moved;
    for (auto p = marked.rbegin(); p != marked.rend(); ++p)
        moved.push_back({motion * p->mm});
    const auto fit = fitPlane(marked), other = fitPlane(moved);
    RC_ASSERT(fit && other);
    RC_ASSERT((motion * fit->plane.point.mm - other->plane.point.mm).norm() < kRoundingMm);
    RC_ASSERT(std::abs(std::abs((motion.linear() * fit->plane.normal.mm).dot(other->plane.normal.mm)) - 1.0) < 1e-9);
    RC_ASSERT(std::abs(fit->rmsMm - other->rmsMm) < kRoundingMm);
    RC_ASSERT(std::abs(fit->largestMm - other->largestMm) < kRoundingMm);
}

/// Total least squares is least: no plane tilted or shifted a little has smaller squares.
RC_GTEST_PROP(FitPlane, NoNeighbourHasSmallerSquares, ()) {
    std::vector<PatientPoint> marked;
    for (int i = 0; i < 8; ++i)
        marked.push_back({{20 * std::cos(0.8 * i), 14 * std::sin(0.8 * i), *reals(-3, 3)}});
    const auto fit = fitPlane(marked);
    RC_ASSERT(fit.has_value());
    const auto squares = [&](const Plane& plane) {
        double sum = 0.0;
        for (const auto& p : marked)
            sum += std::pow(signedDistanceMm(plane, p), 2);
        return sum;
    };
    const double best = squares(fit->plane);
    for (int k = 0; k < 5; ++k) {
        const Eigen::Vector3d n = (fit->plane.normal.mm + 0.02 * Eigen::Vector3d(*reals(-1, 1), *reals(-1, 1), *reals(-1, 1))).normalized();
        RC_ASSERT(squares({{fit->plane.point.mm + *reals(-1, 1) * n}, {n}}) >= best - 1e-9);
    }
}
