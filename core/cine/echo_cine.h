// An ultrasound picture or cine with all that is known of its scale, times and plane.
#pragma once

#include "core/cine/echo_region.h"
#include "core/cine/frame_source.h"
#include "core/cine/frame_times.h"
#include "core/cine/probe_angle.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

struct EchoCine {
    std::shared_ptr<const FrameSource> frames; ///< never null
    FrameTimes times;
    std::vector<EchoRegion> regions; ///< as listed in the file; may be empty
    std::optional<ProbeAngle> angle; ///< only where the file tells it
    double pixelAspect = 1.0;        ///< height of a pixel to its width, for scales marked by hand
    std::string sopInstanceUid;
    std::vector<Notice> notices;
};

} // namespace gauge::core
