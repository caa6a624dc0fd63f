// Frame times of multi-frame images (PS3.3 C.7.6.5 Cine, C.7.6.6 Multi-frame, C.8.5.6 R waves): ultrasound
// and X-ray.
#pragma once

#include "core/cine/frame_times.h"
#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <vector>

namespace gauge::dicomio {

/// From FrameTimeVector, FrameTime, CineRate or RecommendedDisplayFrameRate, in the order that
/// FrameIncrementPointer and trust give. Contradictions and unusable values are appended to `notices`;
/// nothing is invented.
/// @param frames  >= 1.
core::FrameTimes readFrameTimes(const Dataset& dataset, int frames, std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
