// Our side of the comparison: each operation as the program does it.
#pragma once

#include "core/volume/phase_set.h"
#include "tests/bench/compare/comparison.h"
#include "tests/bench/compare/stage.h"

#include <functional>

namespace gauge::bench {

std::function<Check()> ourLoad(const SeriesOnDisk& series);      ///< the first phase; check: mean HU
/// All, keeping what the budget allows: by default what one case may hold. Mean HU of the last.
std::function<Check()> ourPhases(const SeriesOnDisk& series, std::size_t budgetBytes = core::PhaseSetOptions{}.budgetBytes);
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

} // namespace gauge::bench
