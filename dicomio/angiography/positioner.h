// The positioner's angles of every frame (PS3.3 C.8.7.5; Enhanced XA: C.8.19.6.10 and C.8.19.6.13).
#pragma once

#include "core/fluoro/c_arm.h"
#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <optional>
#include <span>
#include <vector>

namespace gauge::dicomio {

struct PositionerAngles {
    std::optional<core::CArmAngles> patient;   ///< about the patient
    std::optional<core::CArmAngles> isocentre; ///< about the table
};

/// No arm turns faster, degrees a second; increments that say so are read wrongly. Common practice, no source
/// (arms of three-dimensional runs turn at up to about 100).
inline constexpr double kFastestTurnDegPerSecond = 120.0;

/// Angles of each frame. A moving arm: the first frame has PositionerPrimaryAngle and -SecondaryAngle, each
/// further frame adds its increment to the one before (one value for all steps, or one a frame whose first is
/// no step). Increments that grow evenly from 0 may as well be offsets from the first frame: then, and where
/// increments are absent, contradictory or impossible, only the first frame's angles are known.
/// @param startMs  times of the frames, or empty.
std::vector<PositionerAngles> positionerAngles(const Dataset& dataset, int frames,
                                               std::span<const double> startMs,
                                               std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
