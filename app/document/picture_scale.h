// The scale that holds on a picture: what the person gave it, else what its file tells; in words, with its origin.
#pragma once

#include "app/document/evidence_images.h"
#include "core/cine/region_caliper.h"
#include "core/record/entries.h"

#include <QString>
#include <optional>

namespace gauge::app {

/// The scale of a PictureScale on these frames: two marks at a known distance, or a catheter of known outer diameter, clicked at
/// both edges or read off its shadow between the two marks.
/// @errors those of core::markedScale, core::outerDiameter, core::catheterProfile and core::objectScale; those of reading a frame.
core::Result<core::HandScale> handScale(const core::PictureScale& scale, const CineData& cine);

/// The one scale that an X-ray frame's own file tells.
std::optional<core::PlanarScale> scaleOfFile(const CineData& cine, int frame);

/// "0.50 mm a pixel ± 1.2 % (calibration of the ultrasound region)", or why there is none and what to do.
QString scaleWords(const CineData& cine, int frame, const std::optional<core::Result<core::HandScale>>& byHand);

/// True when lengths can be measured somewhere on the frame.
bool hasScale(const CineData& cine, int frame, const std::optional<core::Result<core::HandScale>>& byHand);

} // namespace gauge::app
