// Where a frame stands in the heart's beat, so that cines of different beats can be shown in step.
#pragma once

#include "core/cine/frame_times.h"

#include <optional>

namespace gauge::core {

/// Beats from the first R wave to the frame: 1.4 is 40 % of the second R-R interval. Before the first and after the last R wave
/// the mean R-R interval goes on, so the first frames may be negative.
/// nullopt without frame times, with fewer than two R waves, or out of range.
std::optional<double> beatPosition(const FrameTimes& times, int frame);

/// The frame whose beat position comes nearest to `position`; where the cine does not reach that far, to the same place in one of
/// its own beats. nullopt where no beat position is known.
std::optional<int> frameAtBeatPosition(const FrameTimes& times, double position);

/// Share of the R-R interval, 0 up to 1, of a beat position.
double shareOfBeat(double position);

} // namespace gauge::core
