// Refuses seeds that lie in blood, but in the wrong cavity.
#pragma once

#include "core/anatomy/blood_pool.h"
#include "core/result.h"

#include <vector>

namespace gauge::core {

/// The atrium seed must lie in a chamber, not in a vein, and in the chamber that the appendage opens into.
/// @param way  nodes from the tip to the atrium seed, through the middle
/// @errors SeedInVein, SeedInOtherChamber.
Result<void> checkAtriumSeed(const BloodPool& pool, const std::vector<std::size_t>& way);

/// The tip seed must not lie in a chamber.
/// @errors SeedInOtherChamber.
Result<void> checkTipSeed(const BloodPool& pool);

} // namespace gauge::core
