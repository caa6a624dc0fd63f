// The reach of a body and distances to it, against SciPy: the same voxels looked up by its own interpolation along rays, hulls by
// Qhull, and the nearest of many points of the body by its own search tree.
#include "core/access/seated_body.h"
#include "core/access/slide_body.h"

#include "tests/core/access/analytic_walls.h"
#include "tests/outside/python_reference.h"

#include <gtest/gtest.h>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// Steps of 0.05 mm along the line; 180 rays against 96: on a wall that leans, a few hundredths more.
constexpr double kReachByRaysMm = 0.15;
// Points 0.1 mm apart on a surface at 3 mm or more.
constexpr double kDistanceByPointsMm = 0.01;

nlohmann::json jsonOf(const BoxGrid& grid) {
    nlohmann::json axes = nlohmann::json::array();
    for (int i = 0; i < 3; ++i)
        axes.push_back({grid.axes(i, 0), grid.axes(i, 1), grid.axes(i, 2)});
    return {{"origin", {grid.origin.mm.x(), grid.origin.mm.y(), grid.origin.mm.z()}},
            {"axes", axes},
            {"step", grid.stepMm},
            {"shape", {grid.size.x(), grid.size.y(), grid.size.z()}}};
}

} // namespace

TEST(SeatOutside, ReachIsThatOfRaysAndHullsInSciPy) {
    std::mt19937 random(21);
    for (int seed = 0; seed < 3; ++seed) {
        Eigen::Isometry3d pose = Eigen::Isometry3d::Identity();
        pose.linear() = randomTurn(random);
        const Lumen lumen = [](const Eigen::Vector3d& p) {
            return std::min(bentTube(7.0, 22.0)(p), (p - Eigen::Vector3d(-6.5, 4.0, 12.0)).norm() - 3.0);
        };
        const LaidLumen one = laid(lumen, pose, randomTurn(random), 3.0, 22.0, 9.0);
        const PatientVector way = one.towards(Eigen::Vector3d(0.08, 0.0, 1.0).normalized());
        const SheathWalls around = lookAround(one.wall, one.at(0, 0, 0), way, 0.0, 12.0);
        std::vector<Eigen::Vector3d> line{one.at(0, 0, 0).mm, way.mm};
        const std::vector<std::pair<double, double>> bodies{{13.5, 6.0}, {13.5, 9.0}, {15.0, 12.0}};
        const auto other = askPython("seat_reach", {{"grid", jsonOf(one.wall.blood.grid)},
                                                    {"values", one.wall.blood.values},
                                                    {"line", toJson(line)},
                                                    {"bodies", bodies}});
        std::size_t i = 0;
        for (const auto& [free, narrowest] : bodies) {
            BodyLimits limits;
            limits.freeMm = free;
            limits.narrowestMm = narrowest;
            EXPECT_NEAR(slideBody(one.wall, around, limits).tMm, other["reach"][i++].get<double>(), kReachByRaysMm)
                << "seed " << seed << " free " << free << " narrowest " << narrowest;
        }
    }
}

TEST(SeatOutside, DistancesAreThoseOfSciPysNearestPoints) {
    std::mt19937 random(22);
    std::normal_distribution<double> normal(0.0, 15.0);
    SeatedBody seated;
    const Eigen::Matrix3d turn = randomTurn(random);
    seated.origin = {Eigen::Vector3d(10.0, -20.0, 30.0)};
    seated.direction = {turn.col(2)};
    seated.body = {{-6.0, 9.0}, {2.0, 7.5}, {9.0, 8.5}};
    seated.disc = SeatedBody::Disc{-9.0, 14.0};
    std::vector<Eigen::Vector3d> places;
    std::vector<double> distances;
    while (places.size() < 60) {
        const PatientPoint p{seated.origin.mm + Eigen::Vector3d(normal(random), normal(random), normal(random))};
        const double d = distanceMm(seated, p);
        if (d < 3.0) continue;
        places.push_back(p.mm);
        distances.push_back(d);
    }
    std::vector<Eigen::Vector3d> frame{seated.origin.mm, turn.col(0), turn.col(1), turn.col(2)};
    const auto other = askPython("seat_distances", {{"frame", toJson(frame)},
                                                    {"body", {{-6.0, 9.0}, {2.0, 7.5}, {9.0, 8.5}}},
                                                    {"disc", {{-10.5, 14.0}, {-9.0, 14.0}}},
                                                    {"places", toJson(places)}});
    for (std::size_t i = 0; i < places.size(); ++i)
        EXPECT_NEAR(distances[i], other[i].get<double>(), kDistanceByPointsMm);
}
