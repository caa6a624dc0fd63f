// The search over unsorted buckets against a plain twin with a sorted queue.
#include "core/anatomy/way_search.h"

#include <cmath>
#include <gtest/gtest.h>
#include <queue>
#include <random>

using namespace gauge::core;

namespace {

struct Entry {
    float cost;
    std::size_t node;
    bool operator>(const Entry& other) const { return cost > other.cost; }
};

bool inside(const BoxGrid& g, const Eigen::Vector3i& n) {
    return (n.array() >= 0).all() && (n.array() < g.size.array()).all();
}

/// Dijkstra with a sorted queue.
LargeVector<float> twin(const BoxGrid& grid, const std::vector<std::size_t>& seeds, const float* price, float limit,
                        LargeVector<float> cost) {
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
    for (const std::size_t s : seeds)
        if (cost[s] == kNotReached) {
            cost[s] = 0.0f;
            queue.push({0.0f, s});
        }
    while (!queue.empty()) {
        const Entry at = queue.top();
        queue.pop();
        if (at.cost > cost[at.node]) continue;
        const Eigen::Vector3i n = grid.node(at.node);
        for (int z = -1; z <= 1; ++z)
            for (int y = -1; y <= 1; ++y)
                for (int x = -1; x <= 1; ++x) {
                    const Eigen::Vector3i m = n + Eigen::Vector3i(x, y, z);
                    if (!inside(grid, m)) continue;
                    const std::size_t next = grid.index(m);
                    const auto length = static_cast<float>(std::sqrt(x * x + y * y + z * z) * grid.stepMm);
                    const float c = at.cost + (price ? length * 0.5f * (price[at.node] + price[next]) : length);
                    if (cost[next] == kClosedNode || c >= cost[next] || c > limit) continue;
                    cost[next] = c;
                    queue.push({c, next});
                }
    }
    return cost;
}

struct RandomBox {
    BoxGrid grid;
    LargeVector<float> open, price;
    std::vector<std::size_t> seeds;

    explicit RandomBox(std::uint32_t seed) {
        std::mt19937 random(seed);
        const auto upTo = [&](unsigned most) { return static_cast<int>(random() % most); };
        grid.size = {1 + upTo(24), 1 + upTo(24), 1 + upTo(24)};
        grid.stepMm = 0.1 + 0.01 * upTo(100);
        const unsigned closedOfTen = random() % 8;
        for (std::size_t i = 0; i < grid.count(); ++i) {
            open.push_back(random() % 10 < closedOfTen ? kClosedNode : kNotReached);
            price.push_back(std::pow(10.0f, -2.0f + 0.01f * static_cast<float>(upTo(430)))); // 0.01 to 200
        }
        for (int n = 0; n < 3; ++n)
            seeds.push_back(random() % grid.count());
    }
};

} // namespace

TEST(SearchWays, HasTheCostsOfASortedQueueBitByBit) {
    for (std::uint32_t seed = 1; seed <= 150; ++seed) {
        const RandomBox box(seed);
        for (const bool priced : {false, true}) {
            const float* price = priced ? box.price.data() : nullptr;
            for (const float limit : {kNotReached, 3.0f}) {
                WayCosts found{box.open, {}};
                searchWays(box.grid, box.seeds, {.price = price, .limit = limit}, found);
                EXPECT_EQ(found.cost, twin(box.grid, box.seeds, price, limit, box.open)) << "seed " << seed << ", priced " << priced;
            }
        }
    }
}

TEST(SearchWays, TellsAWayThatCostsWhatItSays) {
    for (std::uint32_t seed = 1; seed <= 150; ++seed) {
        const RandomBox box(seed);
        const std::size_t to = box.seeds[2];
        WayCosts whole{box.open, {}}, aimed{box.open, {}};
        searchWays(box.grid, {box.seeds[0]}, {.price = box.price.data()}, whole);
        searchWays(box.grid, {box.seeds[0]}, {.price = box.price.data(), .target = to, .keepWays = true}, aimed);
        EXPECT_EQ(aimed.cost[to], whole.cost[to]) << "seed " << seed;
        const auto way = wayFrom(box.grid, aimed, to);
        EXPECT_EQ(way.empty(), whole.cost[to] == kClosedNode || whole.cost[to] == kNotReached) << "seed " << seed;
        if (way.empty()) continue;
        EXPECT_EQ(way.front(), box.seeds[0]);
        EXPECT_EQ(way.back(), to);
        float cost = 0.0f;
        for (std::size_t i = 0; i + 1 < way.size(); ++i) {
            const Eigen::Vector3i step = box.grid.node(way[i + 1]) - box.grid.node(way[i]);
            ASSERT_LE(step.cwiseAbs().maxCoeff(), 1);
            const auto length = static_cast<float>(std::sqrt(step.squaredNorm()) * box.grid.stepMm);
            cost += length * 0.5f * (box.price[way[i]] + box.price[way[i + 1]]);
        }
        EXPECT_EQ(cost, whole.cost[to]) << "seed " << seed;
    }
}

TEST(SearchWays, PassesOverClosedSeeds) {
    BoxGrid grid;
    grid.size = {3, 1, 1};
    WayCosts costs{{kClosedNode, kNotReached, kNotReached}, {}};
    searchWays(grid, {0}, {}, costs);
    EXPECT_EQ(costs.cost[1], kNotReached);
    searchWays(grid, {1}, {}, costs);
    EXPECT_EQ(costs.cost, (LargeVector<float>{kClosedNode, 0.0f, 1.0f}));
}
