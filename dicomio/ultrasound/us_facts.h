// What the header of an ultrasound image says of its regions, scales, frame times and probe angle; no pixels
// are read.
#pragma once

#include "core/cine/echo_region.h"
#include "core/cine/frame_times.h"
#include "core/cine/probe_angle.h"
#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <optional>
#include <vector>

namespace gauge::dicomio {

struct UltrasoundFacts {
    std::vector<core::EchoRegion> regions; ///< a region that cannot be read is left out, with a notice
    core::FrameTimes times;
    std::optional<core::ProbeAngle>
        angle; ///< from standard attributes alone, never from text or private ones
    double pixelAspect =
        1.0; ///< height of a pixel to its width (PixelAspectRatio), for scales marked by hand
    std::vector<core::Notice> notices;
};

/// Never fails: what cannot be read or cannot be true becomes a notice, and gives no number.
/// @param columns, rows, frames  of the image, each >= 1.
UltrasoundFacts usFacts(const Dataset& dataset, int columns, int rows, int frames);

} // namespace gauge::dicomio
