// A part of the patient as a volume of its own: water where the mask is, air elsewhere. Its simulated radiograph is the
// length of each ray within the mask, mm: shown alone, or added to that of the CT as if the part were filled with contrast
// medium.
#pragma once

#include "core/result.h"
#include "core/volume/box_field.h"
#include "core/volume/volume.h"

#include <memory>

namespace gauge::core {

/// The smallest block that holds the mask, 0 HU inside and -1000 outside, its steps smoothed so that its silhouette is no
/// staircase.
/// @param edgeSigmaMm  of the smoothing, which keeps every line integral through it; 0: none.
/// @errors NothingUsable for an empty mask; InvalidArgument for a sigma below 0.
Result<std::shared_ptr<const Volume>> chamberVolume(const BoxMask& mask, double edgeSigmaMm = 0.4);

} // namespace gauge::core
