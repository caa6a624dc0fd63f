// Of which heart beats a phase was made, and whether they can be one moment of the heart at all. In atrial
// fibrillation the beats differ in length: slices taken from several of them show the appendage at different
// fillings, and steps appear between slices.
#pragma once

#include "core/result.h"
#include "dicomio/ct/slice_facts.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// Beats within one phase may differ by this share of their mean length before it is told. Assumption:
/// several times the breathing variation of a regular rhythm during one breath hold.
inline constexpr double kBeatSpread = 0.10;
/// Range of accepted beats, as a share of its middle, from which mixed beats are possible. Assumption.
inline constexpr double kAcceptedSpread = 0.20;
/// Delays after the R wave may differ by this much before it is told, ms. Assumption: about the rotation time
/// that a reconstruction reaches with two tubes.
inline constexpr double kDelaySpreadMs = 66.0;

/// Mean nominal R-R interval; nothing unless every slice tells it.
std::optional<double> beatLength(std::span<const SliceFacts> slices);

/// Notices "mixed-beats" (R-R intervals, or delays at one percentage, differ), "mixed-beats-possible" (beats
/// of very different length were accepted) and "several-acquisitions" (slices from several passes of the
/// scanner). Of slices that tell nothing of the heart: none.
/// @param label  of the phase, for the text.
std::vector<core::Notice> beatNotices(std::span<const SliceFacts> slices, const std::string& label);

} // namespace gauge::dicomio
