#include "core/anatomy/way_search.h"

#include "core/anatomy/cheaper_steps.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>

namespace gauge::core {
namespace {

constexpr std::size_t kRows = 9, kSteps = 3 * kRows;
constexpr unsigned kStepsOfRow = 0b111;
constexpr std::uint64_t kBuckets = std::uint64_t{1} << 14;

/// The steps to the 26 neighbours, in the order of their offsets, in rows along x: step 3 * row + x + 1. The one in the middle
/// leads nowhere; it costs nothing and so is never cheaper.
struct WaySteps {
    struct Step {
        int x, y, z;
    };
    std::array<Step, kSteps> step{};
    std::array<std::ptrdiff_t, kSteps> offset{};
    std::array<float, kSteps + 1> length{}, half{}; // the last row is read by four

    explicit WaySteps(const BoxGrid& g) {
        std::size_t n = 0;
        for (int z = -1; z <= 1; ++z)
            for (int y = -1; y <= 1; ++y)
                for (int x = -1; x <= 1; ++x) {
                    step[n] = {x, y, z};
                    offset[n] = x + y * g.strideY() + z * g.strideZ();
                    length[n] = static_cast<float>(std::sqrt(x * x + y * y + z * z) * g.stepMm);
                    half[n] = length[n] * 0.5f;
                    ++n;
                }
    }
    bool leaves(const BoxGrid& g, const Eigen::Vector3i& n, std::size_t s) const {
        const int x = n.x() + step[s].x, y = n.y() + step[s].y, z = n.z() + step[s].z;
        return x < 0 || y < 0 || z < 0 || x >= g.size.x() || y >= g.size.y() || z >= g.size.z();
    }
};

/// A bit for each node whose neighbours cannot be read in rows of four: those on a face of the box, where some lie outside, and
/// the last one within, whose last row ends with the box.
std::vector<std::uint64_t> nodesAtRim(const BoxGrid& g) {
    std::vector<std::uint64_t> bits((g.count() + 63) / 64);
    const auto set = [&](int x, int y, int z) {
        const std::size_t i = g.index({x, y, z});
        bits[i / 64] |= std::uint64_t{1} << (i % 64);
    };
    const auto everyOf = [](int size, const auto& body) {
        for (int n = 0; n < size; ++n)
            body(n);
    };
    everyOf(g.size.z(), [&](int z) {
        everyOf(g.size.y(), [&](int y) { set(0, y, z), set(g.size.x() - 1, y, z); });
        everyOf(g.size.x(), [&](int x) { set(x, 0, z), set(x, g.size.y() - 1, z); });
    });
    everyOf(g.size.y(), [&](int y) { everyOf(g.size.x(), [&](int x) { set(x, y, 0), set(x, y, g.size.z() - 1); }); });
    if (g.size.minCoeff() > 1) set(g.size.x() - 2, g.size.y() - 2, g.size.z() - 2);
    return bits;
}

/// Nodes of the frontier in buckets of near costs, round a ring: no step costs more than the ring is wide.
class WayFront {
public:
    struct Entry {
        float cost;
        std::uint32_t node;
    };

    /// @param longest  most that a step costs. @param width  of a bucket, as far as the ring allows.
    WayFront(float longest, float width)
        : m_perCost(1.0f / std::max(width, longest / static_cast<float>(kBuckets - 4))), m_ring(kBuckets) {}

    std::uint64_t bucketOf(float cost) const { return static_cast<std::uint64_t>(cost * m_perCost); }
    std::vector<Entry>& at(std::uint64_t bucket) { return m_ring[bucket & (kBuckets - 1)]; }
    void push(float cost, std::size_t node) {
        at(bucketOf(cost)).push_back({cost, static_cast<std::uint32_t>(node)});
        ++m_waiting;
    }
    void taken(std::size_t count) { m_waiting -= count; }
    bool empty() const { return m_waiting == 0; }

private:
    float m_perCost;
    std::size_t m_waiting = 0;
    std::vector<std::vector<Entry>> m_ring;
};

template <bool Priced, bool Ways>
void searchOver(const BoxGrid& grid, const WaySearch& asked, WayFront& front, WayCosts& costs) {
    const WaySteps steps(grid);
    const auto rim = nodesAtRim(grid);
    float* const cost = costs.cost.data();
    std::int8_t* const cameBy = costs.cameBy.data();
    const float* const price = asked.price;
    const bool aimed = asked.target < costs.cost.size() && cost[asked.target] != kClosedNode; // to a closed node no way leads
    for (std::uint64_t bucket = 0; !front.empty(); ++bucket) {
        if (aimed && cost[asked.target] != kNotReached && front.bucketOf(cost[asked.target]) < bucket) return;
        auto& entries = front.at(bucket);
        for (std::size_t e = 0; e < entries.size(); ++e) { // grows while it is walked through
            const WayFront::Entry at = entries[e];
            if (at.cost != cost[at.node]) continue; // reached more cheaply since
            const float priceHere = Priced ? price[at.node] : 0.0f;
            const auto tryStep = [&](std::size_t s) {
                const auto next = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(at.node) + steps.offset[s]);
                const float c = Priced ? at.cost + steps.half[s] * (priceHere + price[next]) : at.cost + steps.length[s];
                if (!(c < cost[next]) || c > asked.limit) return;
                cost[next] = c;
                if (Ways) cameBy[next] = static_cast<std::int8_t>(s);
                front.push(c, next);
            };
            if ((rim[at.node / 64] >> (at.node % 64) & 1) != 0) {
                const Eigen::Vector3i n = grid.node(at.node);
                for (std::size_t s = 0; s < kSteps; ++s)
                    if (!steps.leaves(grid, n, s)) tryStep(s);
                continue;
            }
            for (std::size_t s = 0; s < kSteps; s += 3) {
                const std::ptrdiff_t row = static_cast<std::ptrdiff_t>(at.node) + steps.offset[s];
                unsigned cheaper = Priced ? cheaperSteps(at.cost, &steps.half[s], priceHere, price + row, cost + row)
                                          : cheaperSteps(at.cost, &steps.length[s], cost + row);
                for (cheaper &= kStepsOfRow; cheaper != 0; cheaper &= cheaper - 1)
                    tryStep(s + static_cast<std::size_t>(std::countr_zero(cheaper)));
            }
        }
        front.taken(entries.size());
        entries.clear();
    }
}

/// What the dearest and the cheapest step along an axis can cost at most and at least.
struct StepPrices {
    float dearest = 1.0f, cheapest = 1.0f;
};

StepPrices stepPrices(const BoxGrid& grid, const WaySearch& asked, const WayCosts& costs) {
    const auto step = static_cast<float>(grid.stepMm);
    StepPrices prices;
    if (asked.price) {
        prices = {0.0f, kNotReached};
        for (std::size_t i = 0; i < costs.cost.size(); ++i) {
            if (costs.cost[i] == kClosedNode) continue;
            prices.dearest = std::max(prices.dearest, asked.price[i]);
            prices.cheapest = std::min(prices.cheapest, asked.price[i]);
        }
    }
    return {1.74f * step * prices.dearest, step * prices.cheapest};
}

} // namespace

void searchWays(const BoxGrid& grid, const std::vector<std::size_t>& seeds, const WaySearch& asked, WayCosts& costs) {
    if (asked.keepWays) costs.cameBy.assign(costs.cost.size(), -1);
    const StepPrices prices = stepPrices(grid, asked, costs);
    WayFront front(prices.dearest, prices.cheapest);
    for (const std::size_t s : seeds)
        if (s < costs.cost.size() && costs.cost[s] == kNotReached) {
            costs.cost[s] = 0.0f;
            front.push(0.0f, s);
        }
    if (front.empty()) return;
    if (asked.price)
        asked.keepWays ? searchOver<true, true>(grid, asked, front, costs) : searchOver<true, false>(grid, asked, front, costs);
    else
        asked.keepWays ? searchOver<false, true>(grid, asked, front, costs) : searchOver<false, false>(grid, asked, front, costs);
}

std::vector<std::size_t> wayFrom(const BoxGrid& grid, const WayCosts& costs, std::size_t to) {
    std::vector<std::size_t> way;
    if (costs.cost[to] == kNotReached || costs.cost[to] == kClosedNode) return way;
    const WaySteps steps(grid);
    for (std::size_t at = to;;) {
        way.push_back(at);
        if (costs.cameBy[at] < 0) break;
        at = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(at) - steps.offset[static_cast<std::size_t>(costs.cameBy[at])]);
    }
    std::reverse(way.begin(), way.end());
    return way;
}

} // namespace gauge::core
