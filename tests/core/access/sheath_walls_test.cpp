#include "core/access/sheath_walls.h"

#include "tests/core/access/analytic_walls.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// A trilinear field on 0.5 mm bends a wall of 8 mm radius by 0.004 mm, more where it creases; 0.01 mm of the search along the line.
constexpr double kReachMm = 0.05;
constexpr int kSeeds = 6;

struct Laid {
    LaidLumen lumen;
    SheathWalls around;
};

/// The line through the landing zone's middle, tilted by `tiltDeg` towards the local x.
Laid look(const Lumen& lumen, std::mt19937& random, double tiltDeg = 0.0) {
    Laid one{laidAnywhere(lumen, random), {}};
    const double tilt = tiltDeg * std::numbers::pi / 180.0;
    one.around = lookAround(one.lumen.wall, one.lumen.at(0, 0, 0),
                            one.lumen.towards({std::sin(tilt), 0.0, std::cos(tilt)}), 10.0, 16.0);
    return one;
}

SheathStop slide(const Laid& laid, double radius) {
    return slideDisc(laid.lumen.wall, laid.around, radius);
}

/// The least t at which any of many points of the disc lies in the wall; steps of 0.02 mm.
double reachByPoints(const Laid& laid, double radius) {
    const SectionFrame& f = laid.around.frame;
    for (double t = 0.0; t < 60.0; t += 0.02)
        for (double r = radius; r >= 0.0; r -= 0.5)
            for (int i = 0; i < 240; ++i) {
                const double angle = 2.0 * std::numbers::pi * i / 240;
                const PatientPoint p = laid.around.at(t) + r * std::cos(angle) * f.u + r * std::sin(angle) * f.v;
                if (!laid.lumen.wall.isBlood(p)) return t;
            }
    return 60.0;
}

} // namespace

TEST(SlideDisc, ReachesTheFlatEndOfACylinderThatItFits) {
    std::mt19937 random(1);
    for (int seed = 0; seed < kSeeds; ++seed) {
        const Laid laid = look(cylinder(9.0, 23.4), random);
        const SheathStop stop = slide(laid, 7.5);
        EXPECT_EQ(stop.by, SheathStop::By::Wall);
        EXPECT_TRUE(stop.ahead);
        EXPECT_NEAR(stop.tMm, 23.4, kReachMm) << "seed " << seed;
        EXPECT_EQ(slide(laid, 9.5).by, SheathStop::By::NoRoom) << "wider than the lumen";
        EXPECT_EQ(slide(laid, 9.5).tMm, 0.0);
    }
}

// A disc of radius r that slides along a line tilted by a in a cylinder of radius R: where the farthest point of its rim lies in the
// plane of the tilt, t sin a + r cos a = R; else t^2 + r^2 = R^2 (farthest where cos(angle) = t cos a/(r sin a) < 1).
TEST(SlideDisc, TiltedInACylinderStopsWhereItsRimMeetsTheWall) {
    std::mt19937 random(2);
    std::uniform_real_distribution<double> tilts(4.0, 35.0), radii(5.0, 7.5);
    for (int seed = 0; seed < 2 * kSeeds; ++seed) {
        const double tilt = tilts(random), radius = radii(random), lumen = 9.0;
        const double a = tilt * std::numbers::pi / 180.0;
        const double aside = std::sqrt(lumen * lumen - radius * radius);
        const bool between = aside * std::cos(a) < radius * std::sin(a);
        const double expected = between ? aside : (lumen - radius * std::cos(a)) / std::sin(a);
        const Laid laid = look(cylinder(lumen, 200.0), random, tilt);
        if (expected > 38.0) continue; // beyond the box
        const SheathStop stop = slide(laid, radius);
        EXPECT_NEAR(stop.tMm, expected, kReachMm) << "tilt " << tilt << " radius " << radius;
        EXPECT_FALSE(stop.ahead);
        // It touches on the side to which it is tilted.
        const PatientVector to = stop.contact - laid.around.at(stop.tMm);
        EXPECT_GT(to.dot(laid.lumen.towards(Eigen::Vector3d::UnitX())), 0.0);
        EXPECT_NEAR(to.norm(), radius, 0.1);
    }
}

TEST(SlideDisc, InAConeReachesWhereTheConeIsAsWideAsItself) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> tangents(0.15, 0.6), radii(4.0, 9.0);
    for (int seed = 0; seed < kSeeds; ++seed) {
        const double tangent = tangents(random), radius = radii(random);
        EXPECT_NEAR(slide(look(cone(11.0, tangent), random), radius).tMm, std::min((11.0 - radius) / tangent, 44.0), kReachMm)
            << "tangent " << tangent << " radius " << radius;
    }
}

TEST(SlideDisc, InAnOvalTubeIsJudgedByItsShorterHalfAxis) {
    std::mt19937 random(4);
    for (int seed = 0; seed < kSeeds; ++seed) {
        const Laid laid = look(ovalTube(12.0, 8.0, 20.0), random);
        EXPECT_NEAR(slide(laid, 7.4).tMm, 20.0, kReachMm);
        EXPECT_GT(slide(laid, 7.9).tMm, 19.7) << "the grid rounds the corner between side and end";
        EXPECT_EQ(slide(laid, 8.1).by, SheathStop::By::NoRoom);
        EXPECT_NEAR(*laid.around.areaRadiusMm(3.0), std::sqrt(96.0), 0.02) << "the circle of the same area";
    }
}

// In a tube of radius a bent along a circle of radius R the body, straight on from where the bend begins, meets the outer wall in the
// plane of the bend: (R + r)^2 + t^2 = (R + a)^2.
TEST(SlideDisc, InABentTubeIsStoppedByTheOuterWall) {
    std::mt19937 random(5);
    std::uniform_real_distribution<double> bends(12.0, 40.0), radii(3.0, 8.0);
    for (int seed = 0; seed < 2 * kSeeds; ++seed) {
        const double bend = bends(random), radius = radii(random), tube = 9.0;
        const Laid laid = look(bentTube(tube, bend), random);
        const SheathStop stop = slide(laid, radius);
        const double outer = bend + tube, inner = bend + radius;
        EXPECT_NEAR(stop.tMm, std::sqrt(outer * outer - inner * inner), kReachMm) << "bend " << bend << " radius " << radius;
        EXPECT_GT((stop.contact - laid.around.at(stop.tMm)).dot(laid.lumen.towards(Eigen::Vector3d::UnitX())), 0.0)
            << "on the outer side";
    }
}

TEST(SlideDisc, InABallReachesTheCircleOfItsOwnRadius) {
    std::mt19937 random(6);
    std::uniform_real_distribution<double> radii(3.0, 8.0);
    for (int seed = 0; seed < kSeeds; ++seed) {
        const double radius = radii(random);
        EXPECT_NEAR(slide(look(pocket(9.0, 12.0, 12.0), random), radius).tMm,
                    12.0 + std::sqrt(144.0 - radius * radius), kReachMm)
            << "radius " << radius;
    }
}

TEST(SlideDisc, MeetsATrabeculaThatCrossesTheLumen) {
    std::mt19937 random(7);
    const Lumen lumen = [](const Eigen::Vector3d& p) {
        const double bar = std::hypot(p.y() - 2.0, p.z() - 11.0) - 0.8; // 1.6 mm thick, across x
        return std::min(cylinder(9.0, 30.0)(p), bar);
    };
    for (int seed = 0; seed < kSeeds; ++seed)
        EXPECT_NEAR(slide(look(lumen, random), 7.0).tMm, 11.0 - 0.8, 0.1) << "seed " << seed;
}

TEST(SlideDisc, AgreesWithManyPointsOfTheBodyInLumpyLumens) {
    std::mt19937 random(8);
    std::uniform_real_distribution<double> one(-1.0, 1.0);
    for (int seed = 0; seed < 4; ++seed) {
        std::vector<Eigen::Vector4d> lumps;
        for (int i = 0; i < 8; ++i) {
            const double angle = std::numbers::pi * one(random);
            lumps.emplace_back(9.0 * std::cos(angle), 9.0 * std::sin(angle), 15.0 + 12.0 * one(random), 1.5 + one(random));
        }
        const Lumen lumen = [lumps](const Eigen::Vector3d& p) {
            double inside = bentTube(9.0, 35.0)(p);
            for (const auto& lump : lumps)
                inside = std::min(inside, (p - lump.head<3>()).norm() - lump.w());
            return inside;
        };
        const Laid laid = look(lumen, random, 5.0);
        // Steps of 0.02 mm, rays and points between which a wall may bulge by 0.02 mm, which a slanted wall enlarges.
        EXPECT_NEAR(slide(laid, 6.0).tMm, reachByPoints(laid, 6.0), 0.15) << "seed " << seed;
    }
}

TEST(SlideDisc, SaysOpenWhereNothingStopsItInTheBox) {
    std::mt19937 random(9);
    const SheathStop stop = slide(look(cylinder(9.0, 500.0), random), 6.0);
    EXPECT_EQ(stop.by, SheathStop::By::Open);
    EXPECT_GT(stop.tMm, 40.0);
}

TEST(RayToWall, FindsABallsWallFromAnyPlaceInAnyDirection) {
    std::mt19937 random(10);
    std::uniform_real_distribution<double> one(-1.0, 1.0);
    const LaidLumen laid = laidAnywhere([](const Eigen::Vector3d& p) { return 15.0 - p.norm(); }, random);
    for (int i = 0; i < 200; ++i) {
        const Eigen::Vector3d from = 8.0 * Eigen::Vector3d(one(random), one(random), one(random));
        const Eigen::Vector3d way = Eigen::Vector3d(one(random), one(random), one(random)).normalized();
        const double along = from.dot(way);
        const WallRay ray = rayToWall(laid.wall, laid.at(from.x(), from.y(), from.z()), laid.towards(way), 40.0);
        EXPECT_FALSE(ray.open);
        EXPECT_NEAR(ray.mm, -along + std::sqrt(along * along + 225.0 - from.squaredNorm()), 0.02);
        EXPECT_TRUE(rayToWall(laid.wall, laid.at(0, 0, 0), laid.towards(way), 14.9).open) << "out of reach";
    }
    EXPECT_EQ(rayToWall(laid.wall, laid.at(0, 0, 15.5), laid.towards({0, 0, 1}), 5.0).mm, 0.0) << "begins in the wall";
}
