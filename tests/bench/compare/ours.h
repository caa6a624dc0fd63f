// Our side of the comparison: each operation as the program does it.
#pragma once

#include "tests/bench/compare/comparison.h"
#include "tests/bench/compare/stage.h"

#include <functional>

namespace gauge::bench {

std::function<Check()> ourLoad(const SeriesOnDisk& series);      ///< the first phase; check: mean HU
std::function<Check()> ourPhases(const SeriesOnDisk& series);    ///< all, within the budget of one case; mean HU of the last
std::function<Check()> ourOblique(Stage& stage);                 ///< mean HU
std::function<Check()> ourSlab(Stage& stage);                    ///< mean HU
std::function<Check()> ourGrow(Stage& stage);                    ///< voxels
std::function<Check()> ourComponents(Stage& stage);              ///< number of parts
std::function<Check()> ourSurface(Stage& stage);                 ///< mm2
std::function<Check()> ourDistanceInside(Stage& stage);          ///< sum, m
std::function<Check()> ourDistanceSigned(Stage& stage);          ///< sum over the outside, m
std::function<Check()> ourArrival(Stage& stage);                 ///< mm to the tube's end
std::function<Check()> ourMinimalPath(Stage& stage);             ///< cost of the way

std::function<Check()> ourLineSums(Stage& stage, int pixels, int everySlice = 1); ///< mean water-equivalent mm

/// Voxels that all phases of one case may hold: keeps a gated series of ten phases below 0.7 GB.
inline constexpr std::size_t kPhaseBudget = std::size_t{500} << 20;

} // namespace gauge::bench
