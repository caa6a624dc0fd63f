// The frames of an Enhanced US Volume: place and orientation of each in the volume's frame of reference,
// grouped by time. Part of us_volume.
#pragma once

#include "core/result.h"
#include "dicomio/ct/slice_facts.h"
#include "dicomio/scan/scanner.h"

#include <optional>
#include <vector>

namespace gauge::dicomio {

/// Frames of one time point.
struct VolumeFrames {
    std::optional<double> offsetMs; ///< from the first time point
    std::vector<SliceFacts> slices; ///< positions and directions of the volume's frame of reference
};

/// In the order of time: by TemporalPositionTimeOffset, else by TemporalPositionIndex, else all frames are
/// one time point. Frames of another data type than tissue intensity (flow, elasticity) are set aside with a
/// notice
/// (`volume-data-set-aside`).
/// @errors AttributeMissing and AttributeInvalid naming the attribute and the frame; GeometryContradictory
/// when only some frames tell their time, or the per-frame groups are not as many as the frames;
/// ObjectUnsupported without tissue frames.
core::Result<std::vector<VolumeFrames>> volumeFrames(const ScannedFile& scanned,
                                                     std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
