// Frame times of X-ray runs: those of any cine, and the moments and R-wave frames that only X-ray objects
// tell.
#pragma once

#include "core/cine/frame_times.h"
#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <optional>
#include <string_view>
#include <vector>

namespace gauge::dicomio {

/// Enhanced objects: from FrameReferenceDateTime (else FrameAcquisitionDateTime) of all frames, as a frame
/// time vector; else, and for all other objects, from readFrameTimes(). R waves from RWavePointer (frame
/// numbers) where no times of them are told. @param frames  >= 1.
core::FrameTimes xrayTimes(const Dataset& dataset, int frames, std::vector<core::Notice>& notices);

/// Milliseconds of a DT value (PS3.5 6.2, "YYYYMMDDHHMMSS.FFFFFF&ZZXX") since the year 1; time of day at
/// least to the second. The zone is taken off where told. nullopt for anything else.
std::optional<double> dateTimeMs(std::string_view text);

} // namespace gauge::dicomio
