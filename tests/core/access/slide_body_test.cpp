#include "core/access/slide_body.h"

#include "core/geometry/planar_contour.h"
#include "tests/core/access/analytic_walls.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <optional>

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
                            one.lumen.towards({std::sin(tilt), 0.0, std::cos(tilt)}), 10.0, 20.0);
    return one;
}

BodyLimits limitsOf(double free, double narrowest, BodyMeasure by = BodyMeasure::PerimeterDerived) {
    BodyLimits limits;
    limits.by = by;
    limits.freeMm = free;
    limits.narrowestMm = narrowest;
    return limits;
}

SheathStop slide(const Laid& laid, const BodyLimits& limits) {
    return slideBody(laid.lumen.wall, laid.around, limits);
}

/// Half-axes along x and y that narrow by `tangent` a millimetre.
Lumen ovalCone(double alongX, double alongY, double tangent) {
    return [=](const Eigen::Vector3d& p) {
        const double a = alongX - tangent * p.z(), b = alongY - tangent * p.z();
        if (a <= 0.5 || b <= 0.5) return -1.0;
        return b * (1.0 - std::hypot(p.x() / a, p.y() / b));
    };
}

double ovalMeasure(BodyMeasure by, double a, double b) {
    if (by == BodyMeasure::Longest) return 2.0 * a;
    if (by == BodyMeasure::AreaDerived) return 2.0 * std::sqrt(a * b);
    return 4.0 * a * std::comp_ellint_2(std::sqrt(1.0 - b * b / (a * a))) / std::numbers::pi;
}

/// Where a decreasing function of t passes `value`, between 0 and 40.
template <class F> double whereFalls(const F& f, double value) {
    double lo = 0.0, hi = 40.0;
    while (hi - lo > 1e-6) {
        const double mid = 0.5 * (lo + hi);
        (f(mid) > value ? lo : hi) = mid;
    }
    return lo;
}

/// What core/access does, done again: 360 rays in steps of 0.2 mm and halves of it, the hull of their ends by Andrew's chain, dents by looking whether
/// places within the free radius lie inside that hull; every 0.05 mm along the line. No sharing of code but the wall itself.
constexpr int kTwinRays = 360;
struct TwinSection {
    double width = 0.0, dent = 0.0;
    std::vector<double> sides;
};
TwinSection twinSection(const Laid& laid, double t, const BodyLimits& limits) {
    constexpr int kRays = kTwinRays;
    constexpr double kStep = 0.2;
    const SectionFrame& f = laid.around.frame;
    std::vector<Eigen::Vector2d> wide, free;
    TwinSection section;
    for (int i = 0; i < kRays; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / kRays;
        const Eigen::Vector2d to(std::cos(angle), std::sin(angle));
        const auto isBlood = [&](double at) {
            return laid.lumen.wall.isBlood(laid.around.at(t) + at * (to.x() * f.u + to.y() * f.v));
        };
        double r = 0.0;
        while (r < limits.farthestMm() && isBlood(r))
            r += kStep;
        for (double half = 0.5 * kStep; half > 0.01 && r > 0.0 && r < limits.farthestMm(); half *= 0.5)
            r += isBlood(r) ? half : -half;
        wide.push_back(std::min(r, limits.farthestMm()) * to);
        section.sides.push_back(std::min(r, 0.5 * limits.freeMm));
        free.push_back(section.sides.back() * to);
    }
    section.width = perimeterMm(convexHull(wide)) / std::numbers::pi;
    const auto hull = convexHull(free);
    for (const Eigen::Vector2d& end : free)
        for (double dent = 0.0; dent < 0.5 * limits.freeMm && contains(hull, end + dent * end.normalized()); dent += 0.05)
            section.dent = std::max(section.dent, dent);
    return section;
}
double reachOfTwin(const Laid& laid, const BodyLimits& limits) {
    const TwinSection start = twinSection(laid, 0.0, limits);
    for (double t = 0.0; t < 40.0; t += 0.05) {
        if (!laid.lumen.wall.isBlood(laid.around.at(t))) return t;
        const TwinSection now = twinSection(laid, t, limits);
        double moved = 0.0;
        for (std::size_t i = 0; i < kTwinRays; ++i) {
            const std::size_t j = (i + kTwinRays / 2) % kTwinRays;
            moved = std::max(moved, 0.5 * std::abs((now.sides[i] - now.sides[j]) - (start.sides[i] - start.sides[j])));
        }
        if (now.width < limits.narrowestMm || now.dent > limits.playMm() || moved > limits.playMm()) return t;
    }
    return 40.0;
}

/// The least t at which any of many points of a rigid disc lies in the wall; steps of 0.02 mm.
double reachOfDisc(const Laid& laid, double radius) {
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

Lumen lumpy(std::mt19937& random) {
    std::uniform_real_distribution<double> one(-1.0, 1.0);
    std::vector<Eigen::Vector4d> lumps;
    for (int i = 0; i < 8; ++i) {
        const double angle = std::numbers::pi * one(random);
        lumps.emplace_back(9.0 * std::cos(angle), 9.0 * std::sin(angle), 15.0 + 12.0 * one(random), 1.5 + one(random));
    }
    return [lumps](const Eigen::Vector3d& p) {
        double inside = bentTube(9.0, 35.0)(p);
        for (const auto& lump : lumps)
            inside = std::min(inside, (p - lump.head<3>()).norm() - lump.w());
        return inside;
    };
}

} // namespace

TEST(SlideBody, ReachesTheFlatEndOfACylinderThatItFits) {
    std::mt19937 random(1);
    for (int seed = 0; seed < kSeeds; ++seed) {
        const Laid laid = look(cylinder(9.0, 23.4), random);
        const SheathStop stop = slide(laid, limitsOf(20.0, 15.0));
        EXPECT_EQ(stop.by, SheathStop::By::Ahead);
        EXPECT_NEAR(stop.tMm, 23.4, kReachMm) << "seed " << seed;
        const SheathStop none = slide(laid, limitsOf(24.0, 19.0));
        EXPECT_TRUE(none.atOnce) << "wider than the lumen";
        EXPECT_EQ(none.by, SheathStop::By::Narrow);
        EXPECT_EQ(none.tMm, 0.0);
        EXPECT_NEAR(none.leftMm, 18.0, 0.02);
    }
}

TEST(SlideBody, InAConeReachesWhereTheConeIsAsNarrowAsItMayBe) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> tangents(0.15, 0.6), radii(4.0, 9.0);
    for (int seed = 0; seed < kSeeds; ++seed) {
        const double tangent = tangents(random), radius = radii(random);
        const SheathStop stop = slide(look(cone(11.0, tangent), random), limitsOf(24.0, 2.0 * radius));
        EXPECT_NEAR(stop.tMm, std::min((11.0 - radius) / tangent, 44.0), kReachMm) << "tangent " << tangent << " radius " << radius;
    }
}

TEST(SlideBody, InAnOvalConeIsJudgedByTheChartsOwnMeasure) {
    std::mt19937 random(4);
    for (const BodyMeasure by : {BodyMeasure::PerimeterDerived, BodyMeasure::AreaDerived, BodyMeasure::Longest})
        for (int seed = 0; seed < 2; ++seed) {
            const double a = 11.5, b = 8.3, tangent = 0.25;
            const double expected = whereFalls([&](double t) { return ovalMeasure(by, a - tangent * t, std::max(0.6, b - tangent * t)); },
                                               15.8);
            const SheathStop stop = slide(look(ovalCone(a, b, tangent), random), limitsOf(22.5, 15.8, by));
            EXPECT_NEAR(stop.tMm, expected, 0.1) << "0.02 mm of width by slope 0.25";
            EXPECT_EQ(stop.by, SheathStop::By::Narrow);
            EXPECT_NEAR(stop.leftMm, 15.8, 0.01);
        }
}

TEST(SlideBody, FindsRoomInAnOvalWhoseShorterSideIsNarrowerThanItself) {
    std::mt19937 random(5);
    // 23 by 15 mm: 19.2 mm by its perimeter, while a rigid body of 15.8 mm would not go in.
    const Laid laid = look(ovalTube(11.5, 7.5, 20.0), random);
    EXPECT_LT(reachOfDisc(laid, 7.9), 0.1);
    EXPECT_NEAR(slide(laid, limitsOf(22.5, 15.8)).tMm, 20.0, kReachMm);
}

// A wall that leans over the line and is open elsewhere: its near side takes the whole compression where it comes nearer than half
// the free width less all that the width gives way.
TEST(SlideBody, IsPushedAsideByALeaningWallWhereOneSideTakesAllOfTheCompression) {
    std::mt19937 random(6);
    std::uniform_real_distribution<double> tangents(0.2, 0.6);
    for (int seed = 0; seed < kSeeds; ++seed) {
        const double tangent = tangents(random), cosine = 1.0 / std::sqrt(1.0 + tangent * tangent);
        const Laid laid = look([=](const Eigen::Vector3d& p) { return cosine * (12.0 - tangent * p.z() - p.x()); }, random);
        const SheathStop stop = slide(laid, limitsOf(20.0, 14.0));
        EXPECT_EQ(stop.by, SheathStop::By::Aside);
        EXPECT_NEAR(stop.tMm, std::min(40.0, (12.0 - (10.0 - 6.0)) / tangent), kReachMm) << "tangent " << tangent;
        EXPECT_GT((stop.contact - laid.around.at(stop.tMm)).dot(laid.lumen.towards(Eigen::Vector3d::UnitX())), 3.9);
    }
}

// In a tube of radius a bent along a circle of radius R the outer wall comes as near as w to the line where (R + w)^2 + t^2 = (R + a)^2,
// the inner side having opened beyond the free radius by then.
TEST(SlideBody, InABentTubeIsPushedAsideByTheOuterWall) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> bends(15.0, 40.0);
    for (int seed = 0; seed < 2 * kSeeds; ++seed) {
        const double bend = bends(random), tube = 9.0;
        const Laid laid = look(bentTube(tube, bend), random);
        const SheathStop stop = slide(laid, limitsOf(20.0, 14.0));
        const double outer = bend + tube, inner = bend + 4.0;
        EXPECT_NEAR(stop.tMm, std::sqrt(outer * outer - inner * inner), kReachMm) << "bend " << bend;
        EXPECT_EQ(stop.by, SheathStop::By::Aside);
        EXPECT_GT((stop.contact - laid.around.at(stop.tMm)).dot(laid.lumen.towards(Eigen::Vector3d::UnitX())), 0.0)
            << "on the outer side";
    }
}

TEST(SlideBody, IsStoppedByATrabeculaDeeperThanItGivesWay) {
    std::mt19937 random(8);
    // A ball of 2.5 mm in a wide lumen, 8 mm off the line at z = 12: it stands 4.5 mm into the free body of 20 mm.
    const Lumen lumen = [](const Eigen::Vector3d& p) {
        return std::min(cylinder(14.0, 30.0)(p), (p - Eigen::Vector3d(8.0, 0.0, 12.0)).norm() - 2.5);
    };
    for (int seed = 0; seed < kSeeds; ++seed) {
        const Laid laid = look(lumen, random);
        // A section of radius r shades the angle asin(r/8) to either side, where the hull's chord lies 10 cos(angle) from the line.
        const double radius = 2.5 - whereFalls([](double r) {
            const double section = 2.5 - r;
            return 10.0 * std::cos(std::asin(section / 8.0)) - (8.0 - section);
        }, 3.0);
        const double expected = 12.0 - std::sqrt(2.5 * 2.5 - radius * radius);
        const SheathStop stop = slide(laid, limitsOf(20.0, 14.0));
        EXPECT_NEAR(stop.tMm, expected, 0.1) << "seed " << seed;
        EXPECT_EQ(stop.by, SheathStop::By::Indented);
        EXPECT_NEAR(slide(laid, limitsOf(20.0, 10.0)).tMm, 30.0, 0.1) << "a softer one closes over it";
    }
}

TEST(SlideBody, MeetsAStrandThatCrossesTheLumen) {
    std::mt19937 random(9);
    const Lumen lumen = [](const Eigen::Vector3d& p) {
        const double bar = std::hypot(p.y() - 2.0, p.z() - 11.0) - 0.8; // 1.6 mm thick, across x
        return std::min(cylinder(9.0, 30.0)(p), bar);
    };
    for (int seed = 0; seed < kSeeds; ++seed)
        EXPECT_NEAR(slide(look(lumen, random), limitsOf(20.0, 14.0)).tMm, 11.0 - 0.8, 0.1) << "seed " << seed;
}

TEST(SlideBody, AgreesWithItsTwinInLumpyLumens) {
    std::mt19937 random(10);
    for (int seed = 0; seed < 2; ++seed) {
        const Laid laid = look(lumpy(random), random, 5.0);
        for (const double narrowest : {12.0, 15.0})
            // Steps of 0.05 mm along the line and in dents; a lump of 1 mm that peeps between two of 96 rays shows 0.04 mm later in
            // depth, which its flat top makes a few tenths along the line.
            EXPECT_NEAR(slide(laid, limitsOf(18.0, narrowest)).tMm, reachOfTwin(laid, limitsOf(18.0, narrowest)), 0.3)
                << "seed " << seed << " narrowest " << narrowest;
    }
}

TEST(SlideBody, IsNowhereStoppedWhereARigidBodyWouldPass) {
    std::mt19937 random(11);
    for (int seed = 0; seed < 3; ++seed) {
        const Laid laid = look(lumpy(random), random, 6.0);
        for (const double narrowest : {9.0, 12.0, 15.0})
            EXPECT_GT(slide(laid, limitsOf(20.0, narrowest)).tMm, reachOfDisc(laid, 0.5 * narrowest) - 0.1)
                << "seed " << seed << " narrowest " << narrowest;
    }
}

TEST(SlideBody, SaysOpenWhereNothingStopsItInTheBox) {
    std::mt19937 random(12);
    const SheathStop stop = slide(look(cylinder(9.0, 500.0), random), limitsOf(20.0, 12.0));
    EXPECT_EQ(stop.by, SheathStop::By::Open);
    EXPECT_GT(stop.tMm, 40.0);
}

TEST(BodyOutline, TakesTheFormOfTheWallUpToItsFreeWidth) {
    std::mt19937 random(13);
    const Laid laid = look(ovalTube(11.5, 8.3, 30.0), random);
    const WallRing ring = ringAt(laid.lumen.wall, laid.around, 5.0);
    const auto perimeterOf = [](const BodyOutline& outline) {
        std::vector<Eigen::Vector2d> points;
        for (std::size_t i = 0; i < outline.radiiMm.size(); ++i) {
            const double angle = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(outline.radiiMm.size());
            points.emplace_back(outline.radiiMm[i] * std::cos(angle), outline.radiiMm[i] * std::sin(angle));
        }
        return perimeterMm(points) / std::numbers::pi;
    };
    const double oval = ovalMeasure(BodyMeasure::PerimeterDerived, 11.5, 8.3);
    const BodyOutline pressed = bodyOutline(laid.around, ring, limitsOf(22.5, 15.8), 72);
    EXPECT_NEAR(pressed.widthMm, oval, 0.03) << "the whole oval";
    EXPECT_NEAR(perimeterOf(pressed), oval, 0.05);
    EXPECT_NEAR(*std::max_element(pressed.radiiMm.begin(), pressed.radiiMm.end()), 11.5, 0.05);
    EXPECT_NEAR(*std::min_element(pressed.radiiMm.begin(), pressed.radiiMm.end()), 8.3, 0.05);
    const BodyOutline held = bodyOutline(laid.around, ring, limitsOf(18.0, 13.0), 72);
    EXPECT_NEAR(held.widthMm, 18.0, 0.02) << "no wider than free";
    EXPECT_NEAR(perimeterOf(held), 18.0, 0.05);
    EXPECT_LT(*std::max_element(held.radiiMm.begin(), held.radiiMm.end()), 10.0) << "held by its own circumference";
    const BodyOutline wide = bodyOutline(laid.around, ring, limitsOf(30.0, 22.0), 72);
    EXPECT_EQ(wide.widthMm, 22.0) << "presses the wall out";
    EXPECT_NEAR(wide.radiiMm.front() - pressed.radiiMm.front(), 0.5 * (22.0 - oval), 0.02) << "alike all round";
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
