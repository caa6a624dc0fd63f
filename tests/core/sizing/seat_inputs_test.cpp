// What the seat of a size is asked with, and the small measures and words of its answer.
#include "core/geometry/planar_contour.h"
#include "core/geometry/polyline.h"
#include "core/sizing/seat.h"
#include "core/sizing/seat_inputs.h"
#include "core/sizing/seat_numbers.h"
#include "core/sizing/seat_words.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>
#include <span>
#include <vector>

using namespace gauge::core;

TEST(AreaWithinCircle, EqualsTheLensOfTwoCirclesAndManyPoints) {
    std::mt19937 random(15);
    std::uniform_real_distribution<double> one(-1.0, 1.0);
    for (int seed = 0; seed < 20; ++seed) {
        std::vector<Eigen::Vector2d> star;
        for (int i = 0; i < 40; ++i) {
            const double angle = 2.0 * std::numbers::pi * i / 40, r = 7.0 + 3.0 * one(random);
            star.push_back(Eigen::Vector2d(2.0, -1.0) + r * Eigen::Vector2d(std::cos(angle), std::sin(angle)));
        }
        const double radius = 6.0 + 3.0 * one(random);
        int inside = 0;
        constexpr int kSide = 300; // cells of 0.1 mm: about 0.3 mm2 on these borders
        for (int x = 0; x < kSide; ++x)
            for (int y = 0; y < kSide; ++y) {
                const Eigen::Vector2d p(-15.0 + 0.1 * (x + 0.5), -15.0 + 0.1 * (y + 0.5));
                inside += p.norm() < radius && contains(star, p);
            }
        EXPECT_NEAR(areaWithinCircle(star, radius), 0.01 * inside, 0.7) << "seed " << seed;
    }
    std::vector<Eigen::Vector2d> square{{-2, -2}, {2, -2}, {2, 2}, {-2, 2}};
    EXPECT_NEAR(areaWithinCircle(square, 1.0), std::numbers::pi, 1e-12) << "circle inside";
    EXPECT_NEAR(areaWithinCircle(square, 3.0), 16.0, 1e-12) << "polygon inside";
    std::reverse(square.begin(), square.end());
    EXPECT_NEAR(areaWithinCircle(square, 3.0), -16.0, 1e-12) << "clockwise";
}

TEST(SideWords, NameTheMainParts) {
    EXPECT_EQ(sideWords({{0, 0, 2}}), "superior");
    EXPECT_EQ(sideWords({{0.1, 1, -1}}), "posterior-inferior");
    EXPECT_EQ(sideWords({{-1, -0.9, 1.1}}), "right-superior");
    EXPECT_EQ(sideWords({{1, -0.1, 0.1}}), "left");
    EXPECT_EQ(sideWords({{0, 0, 0}}), "near");
}

TEST(SheathArrival, IsStraightWhereThatServesElseSteered) {
    // The ostium 60 mm before the septum, the axis 40 degrees off the straight line to it.
    const double a = 40.0 * std::numbers::pi / 180.0;
    const AppendageTarget target{{Eigen::Vector3d(60, 0, 0)}, {Eigen::Vector3d(std::cos(a), std::sin(a), 0)}};
    const PatientVector leaving{Eigen::Vector3d::UnitX()};
    CrossingLimits limits;
    limits.mostAngleDeg = 45.0;
    const auto straight = sheathArrival({Eigen::Vector3d::Zero()}, target, leaving, limits);
    ASSERT_TRUE(straight);
    EXPECT_EQ(straight->basis, SheathBasis::Crossing);
    EXPECT_NEAR(straight->direction.mm.x(), 1.0, 1e-12);
    limits.mostAngleDeg = 30.0;
    const auto steered = sheathArrival({Eigen::Vector3d::Zero()}, target, leaving, limits);
    EXPECT_EQ(steered->basis, SheathBasis::SteeredCrossing);
    EXPECT_LT(angleBetweenDeg(steered->direction, target.axis), 40.0);
    limits.steerableAtHand = false;
    EXPECT_EQ(sheathArrival({Eigen::Vector3d::Zero()}, target, leaving, limits)->basis, SheathBasis::Crossing);
    EXPECT_EQ(sheathArrival(target.ostiumCentre, target, leaving, limits).error().code, ErrorCode::Degenerate);
}

TEST(AnnulusNeighbour, IsARingInWhateverOrderItWasMarked) {
    std::mt19937 random(16);
    std::vector<PatientPoint> marks;
    for (int i = 0; i < 8; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / 8;
        marks.push_back({Eigen::Vector3d(15.0 * std::cos(angle), 15.0 * std::sin(angle), 3.0)});
    }
    std::shuffle(marks.begin(), marks.end(), random);
    const auto ring = annulusNeighbour(marks);
    ASSERT_TRUE(ring && ring->closed);
    for (std::size_t i = 0; i < 8; ++i)
        EXPECT_NEAR(distanceMm(ring->points[i], ring->points[(i + 1) % 8]), 30.0 * std::sin(std::numbers::pi / 8), 1e-9);
    EXPECT_FALSE(annulusNeighbour({}));
    EXPECT_FALSE(annulusNeighbour(std::span(marks).first(2))->closed);
}
