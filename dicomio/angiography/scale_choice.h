// Distances and spacings of one frame, proved plausible, and the scale of the patient that they allow.
#pragma once

#include "core/fluoro/fluoro_scale.h"
#include "dicomio/angiography/finding_list.h"
#include "dicomio/angiography/frame_scope.h"
#include "dicomio/angiography/xray_facts.h"

namespace gauge::dicomio {

struct ChosenScale {
    XrayScaleSource source = XrayScaleSource::None;
    std::string text; ///< which was used, or why there is none
};

/// Fills the distances, spacings, magnification and scale of `frame`; see xray_facts.h for the order of
/// trust.
/// @param longSide  columns or rows, whichever is more: no detector is as long as a wrong spacing would make
/// it.
ChosenScale chooseScale(const XrayScope& scope, int longSide, XrayFrame& frame, FindingList& findings);

} // namespace gauge::dicomio
