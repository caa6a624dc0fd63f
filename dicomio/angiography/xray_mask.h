// The mask module of X-ray runs (PS3.3 C.7.6.10): which frames to subtract for looking at vessels alone.
#pragma once

#include "core/fluoro/mask_subtraction.h"
#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <vector>

namespace gauge::dicomio {

struct XrayMasks {
    std::vector<core::MaskSubtraction> masks; ///< usable ones, in the file's order
    bool shownSubtracted = false;             ///< the file recommends to look at the subtracted frames
    core::IntensityRelation relation = core::IntensityRelation::Displayed;
};

/// Never fails: a mask that cannot be used is left out with a notice; a sub-pixel shift is ignored with one.
/// @param frames  of the image, >= 1.
XrayMasks xrayMasks(const Dataset& dataset, int frames, std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
