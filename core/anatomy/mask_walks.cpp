#include "core/anatomy/mask_walks.h"

#include "core/anatomy/way_search.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/components.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace gauge::core {
namespace {

/// Calls body(n) for every node; threads share them.
template <class Body> void forEachNode(std::size_t count, const Body& body) {
    constexpr std::size_t kNodesAtOnce = std::size_t{1} << 16;
    parallelFor(count, kNodesAtOnce, [&](std::size_t begin, std::size_t end) {
        for (std::size_t n = begin; n < end; ++n)
            body(n);
    });
}

} // namespace

BoxMask connectedTo(const BoxMask& mask, const std::vector<std::size_t>& seeds) {
    const BoxGrid& g = mask.grid;
    std::vector<Eigen::Vector3i> nodes;
    for (const std::size_t s : seeds)
        if (s != kNoNode)
            nodes.push_back(g.node(s));
    const BitRows grown = grownIn(mask.values.data(), g.size, nodes);
    BoxMask filled(g);
    writeBytes(grown, filled.values.data());
    return filled;
}

std::size_t nearestNode(const BoxMask& mask, const PatientPoint& p, double reachMm) {
    const BoxGrid& g = mask.grid;
    const Eigen::Vector3d c = g.coordFrom(p);
    const double reach = reachMm / g.stepMm;
    const Eigen::Array3i low = (c.array() - reach).ceil().max(0.0).cast<int>();
    const Eigen::Array3i high = (c.array() + reach).floor().min((g.size.array() - 1).cast<double>()).cast<int>();
    std::size_t best = kNoNode;
    double least = reach * reach + 1e-9;
    for (int z = low.z(); z <= high.z(); ++z)
        for (int y = low.y(); y <= high.y(); ++y)
            for (int x = low.x(); x <= high.x(); ++x) {
                const Eigen::Vector3i n(x, y, z);
                const double d = (n.cast<double>() - c).squaredNorm();
                if (d <= least && mask[g.index(n)]) {
                    least = d;
                    best = g.index(n);
                }
            }
    return best;
}

BoxField<float> walkingDistanceMm(const BoxMask& mask, const std::vector<std::size_t>& seeds, float limitMm) {
    WayCosts ways;
    ways.cost.resize(mask.values.size());
    float* const cost = ways.cost.data();
    const std::uint8_t* const inside = mask.values.data();
    forEachNode(mask.values.size(), [=](std::size_t n) { cost[n] = inside[n] ? kNotReached : kClosedNode; });
    searchWays(mask.grid, seeds, {.limit = limitMm}, ways);
    forEachNode(mask.values.size(), [=](std::size_t n) { cost[n] = cost[n] == kClosedNode ? kNotReached : cost[n]; });
    BoxField<float> distance;
    distance.grid = mask.grid;
    distance.values = std::move(ways.cost);
    return distance;
}

std::vector<std::size_t> middleWay(const BoxField<float>& depth, std::size_t from, std::size_t to) {
    constexpr float kReferenceMm = 3.0f; // only scales the cost
    WayCosts ways;
    ways.cost.resize(depth.values.size());
    LargeVector<float> price(depth.values.size());
    forEachNode(price.size(), [&](std::size_t n) {
        const float d = std::max(depth[n], 0.2f);
        price[n] = (kReferenceMm / d) * (kReferenceMm / d);
        ways.cost[n] = depth[n] > 0.0f ? kNotReached : kClosedNode;
    });
    ways.cost[from] = kNotReached;
    searchWays(depth.grid, {from}, {.price = price.data(), .target = to, .keepWays = true}, ways);
    return wayFrom(depth.grid, ways, to);
}

} // namespace gauge::core
