// Walks through a mask: what is connected, how far, and along which way.
#pragma once

#include "core/volume/box_field.h"

#include <cstddef>
#include <vector>

namespace gauge::core {

/// Nodes of the mask connected by faces to any of `seeds` (those in the mask).
BoxMask connectedTo(const BoxMask& mask, const std::vector<std::size_t>& seeds);

/// Node of the mask nearest to a point, within `reachMm`; npos when there is none.
inline constexpr std::size_t kNoNode = static_cast<std::size_t>(-1);
std::size_t nearestNode(const BoxMask& mask, const PatientPoint& p, double reachMm);

/// Shortest way within the mask from any of `seeds` to each node, mm, over 26 neighbours (at most 9 % long);
/// greatest float where there is none or it exceeds `limitMm`.
BoxField<float> walkingDistanceMm(const BoxMask& mask, const std::vector<std::size_t>& seeds, float limitMm);

/// Way from `from` to `to` that prefers the middle: cheapest sum of step length times (reference / depth)^2.
/// @param depth  distance to the wall, mm; 0 outside the mask
/// Empty when there is none.
std::vector<std::size_t> middleWay(const BoxField<float>& depth, std::size_t from, std::size_t to);

} // namespace gauge::core
