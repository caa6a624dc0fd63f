#include "core/anatomy/mask_walks.h"

#include "core/volume/components.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>
#include <queue>

namespace gauge::core {
namespace {

constexpr float kFar = std::numeric_limits<float>::max();

/// The 26 neighbours of a node with their distances in steps.
struct Neighbourhood {
    struct Step {
        int x, y, z;
        std::ptrdiff_t offset;
        float length;
    };
    std::array<Step, 26> steps{};

    explicit Neighbourhood(const BoxGrid& g) {
        std::size_t n = 0;
        for (int z = -1; z <= 1; ++z)
            for (int y = -1; y <= 1; ++y)
                for (int x = -1; x <= 1; ++x)
                    if (x != 0 || y != 0 || z != 0)
                        steps[n++] = {x, y, z, x + y * g.strideY() + z * g.strideZ(),
                                      static_cast<float>(std::sqrt(x * x + y * y + z * z) * g.stepMm)};
    }
};

bool leaves(const BoxGrid& g, const Eigen::Vector3i& n, const Neighbourhood::Step& s) {
    const int x = n.x() + s.x, y = n.y() + s.y, z = n.z() + s.z;
    return x < 0 || y < 0 || z < 0 || x >= g.size.x() || y >= g.size.y() || z >= g.size.z();
}

struct Entry {
    float cost;
    std::uint32_t node;
    bool operator>(const Entry& other) const { return cost > other.cost; }
};
using Frontier = std::priority_queue<Entry, std::vector<Entry>, std::greater<>>;

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
    BoxField<float> distance(mask.grid, kFar);
    Frontier frontier;
    for (const std::size_t s : seeds)
        if (s != kNoNode && mask[s]) {
            distance[s] = 0.0f;
            frontier.push({0.0f, static_cast<std::uint32_t>(s)});
        }
    const Neighbourhood around(mask.grid);
    while (!frontier.empty()) {
        const Entry at = frontier.top();
        frontier.pop();
        if (at.cost > distance[at.node])
            continue;
        const Eigen::Vector3i n = mask.grid.node(at.node);
        for (const auto& step : around.steps) {
            if (leaves(mask.grid, n, step))
                continue;
            const auto next = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(at.node) + step.offset);
            const float cost = at.cost + step.length;
            if (mask[next] && cost <= limitMm && cost < distance[next]) {
                distance[next] = cost;
                frontier.push({cost, static_cast<std::uint32_t>(next)});
            }
        }
    }
    return distance;
}

std::vector<std::size_t> middleWay(const BoxField<float>& depth, std::size_t from, std::size_t to) {
    constexpr float kReferenceMm = 3.0f; // only scales the cost
    const auto price = [&](std::size_t n) {
        const float d = std::max(depth[n], 0.2f);
        return (kReferenceMm / d) * (kReferenceMm / d);
    };
    BoxField<float> cost(depth.grid, kFar);
    BoxField<std::int8_t> cameBy(depth.grid, -1);
    const Neighbourhood around(depth.grid);
    Frontier frontier;
    cost[from] = 0.0f;
    frontier.push({0.0f, static_cast<std::uint32_t>(from)});
    while (!frontier.empty()) {
        const Entry at = frontier.top();
        frontier.pop();
        if (at.cost > cost[at.node])
            continue;
        if (at.node == to)
            break;
        const Eigen::Vector3i n = depth.grid.node(at.node);
        const float priceHere = price(at.node);
        for (std::size_t s = 0; s < around.steps.size(); ++s) {
            if (leaves(depth.grid, n, around.steps[s]))
                continue;
            const auto next = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(at.node) + around.steps[s].offset);
            if (depth[next] <= 0.0f)
                continue;
            const float c = at.cost + around.steps[s].length * 0.5f * (priceHere + price(next));
            if (c < cost[next]) {
                cost[next] = c;
                cameBy[next] = static_cast<std::int8_t>(s);
                frontier.push({c, static_cast<std::uint32_t>(next)});
            }
        }
    }
    std::vector<std::size_t> way;
    if (cost[to] == kFar)
        return way;
    for (std::size_t at = to;;) {
        way.push_back(at);
        if (at == from)
            break;
        at = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(at) -
                                      around.steps[static_cast<std::size_t>(cameBy[at])].offset);
    }
    std::reverse(way.begin(), way.end());
    return way;
}

} // namespace gauge::core
