// Cheapest ways over the 26 neighbours of a box's nodes, from seeds outwards: what walkingDistanceMm() and middleWay()
// (mask_walks.h) are made of.
//
// How it is fast: a node's cost is the least of cost(neighbour) + price of the step, in single floats. Rounding keeps order, so
// exactly one field of costs fulfils that, whatever the order in which nodes are visited: the frontier need not be sorted,
// buckets of near costs do. Where no way may lead is written into the field itself (kClosedNode lies below every cost), so that
// most neighbours are done with after one comparison, three at a time (cheaper_steps.h). tests/core/anatomy holds it to a plain
// twin with a sorted queue, bit by bit.
#pragma once

#include "core/volume/box_field.h"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

namespace gauge::core {

inline constexpr float kClosedNode = -1.0f;                                    ///< in costs: closed to ways
inline constexpr float kNotReached = std::numeric_limits<float>::max();   ///< in costs: open, no way found

struct WayCosts {
    LargeVector<float> cost;          ///< kClosedNode, kNotReached, or what the cheapest way from a seed costs
    LargeVector<std::int8_t> cameBy;  ///< number of the last step of that way, see wayFrom(); empty unless asked for
};

struct WaySearch {
    /// For each node what a millimetre costs there, > 0 where ways may lead; a step costs its length times the mean of its
    /// ends. Null: 1 everywhere.
    const float* price = nullptr;
    float limit = kNotReached;        ///< ways that cost more are left out
    std::size_t target = static_cast<std::size_t>(-1); ///< costs beyond that of this node need not be found
    bool keepWays = false;            ///< fill cameBy
};

/// @param costs  `cost` of grid.count() values, each kClosedNode or kNotReached; filled.
/// @param seeds  nodes with cost 0; those that are closed are passed over.
void searchWays(const BoxGrid& grid, const std::vector<std::size_t>& seeds, const WaySearch& search, WayCosts& costs);

/// The way to `to`, from its seed on. Empty when `to` was not reached. Precondition: keepWays.
std::vector<std::size_t> wayFrom(const BoxGrid& grid, const WayCosts& costs, std::size_t to);

} // namespace gauge::core
