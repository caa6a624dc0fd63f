#include "core/anatomy/mask_walks.h"

#include <gtest/gtest.h>
#include <limits>

using namespace gauge::core;

namespace {

BoxMask emptyBox(int side) {
    BoxGrid grid;
    grid.stepMm = 0.5;
    grid.size = {side, side, side};
    return BoxMask(grid);
}

} // namespace

TEST(ConnectedTo, FollowsFacesNotCorners) {
    BoxMask mask = emptyBox(4);
    const auto a = mask.grid.index({0, 0, 0}), b = mask.grid.index({1, 0, 0}), corner = mask.grid.index({2, 1, 0});
    mask[a] = mask[b] = mask[corner] = 1;
    const BoxMask filled = connectedTo(mask, {a});
    EXPECT_EQ(filled[b], 1);
    EXPECT_EQ(filled[corner], 0);
}

TEST(WalkingDistance, GoesAroundAWall) {
    BoxMask mask = emptyBox(9);
    for (auto& v : mask.values)
        v = 1;
    // A wall at x = 4 with one door at y = z = 0.
    for (int z = 0; z < 9; ++z)
        for (int y = 0; y < 9; ++y)
            mask[mask.grid.index({4, y, z})] = y == 0 && z == 0;
    const auto from = mask.grid.index({2, 8, 0});
    const auto distance = walkingDistanceMm(mask, {from}, 1e6f);
    // Diagonal to the door's row and back: 2 steps diagonal + 6 straight down, 1 through, and so on; at least twice 8
    // steps along y.
    const double around = distance[mask.grid.index({6, 8, 0})];
    EXPECT_GT(around, 2.0 * 8.0 * 0.5);
    EXPECT_LT(around, 1.09 * (2.0 * std::hypot(8.0, 2.0) * 0.5));
    EXPECT_EQ(walkingDistanceMm(mask, {from}, 3.0f)[mask.grid.index({6, 8, 0})], std::numeric_limits<float>::max());
}

TEST(MiddleWay, KeepsToTheDeepPart) {
    BoxMask mask = emptyBox(21);
    BoxField<float> depth(mask.grid);
    // A straight duct along x whose depth is greatest at y = z = 10.
    for (std::size_t i = 0; i < mask.values.size(); ++i) {
        const Eigen::Vector3i n = mask.grid.node(i);
        const int off = std::max(std::abs(n.y() - 10), std::abs(n.z() - 10));
        depth[i] = off < 6 ? 0.5f * static_cast<float>(6 - off) : 0.0f;
    }
    const auto way = middleWay(depth, mask.grid.index({0, 6, 10}), mask.grid.index({20, 6, 10}));
    ASSERT_FALSE(way.empty());
    EXPECT_EQ(mask.grid.node(way[way.size() / 2]).y(), 10);
    EXPECT_EQ(way.front(), mask.grid.index({0, 6, 10}));
    EXPECT_TRUE(middleWay(depth, mask.grid.index({0, 10, 10}), mask.grid.index({0, 0, 0})).empty());
}

TEST(NearestNode, StaysWithinItsReach) {
    BoxMask mask = emptyBox(9);
    mask[mask.grid.index({4, 4, 4})] = 1;
    const PatientPoint near{{2.0, 2.0, 3.0}};
    EXPECT_EQ(nearestNode(mask, near, 1.1), mask.grid.index({4, 4, 4}));
    EXPECT_EQ(nearestNode(mask, near, 0.9), kNoNode);
}
