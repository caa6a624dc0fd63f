// SequenceOfUltrasoundRegions (PS3.3 C.8.5.5) to core::EchoRegion, each scale believed only where it can be
// true.
#pragma once

#include "core/cine/echo_region.h"
#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <vector>

namespace gauge::dicomio {

// What can be true of a transoesophageal picture. Assumptions, wide on purpose: 300 mm over 15000 pixels …
// over 150.
inline constexpr double kSmallestPixelMm = 0.02;
inline constexpr double kLargestPixelMm = 2.0;
/// Height of a pixel to its width, or the reverse: beyond the first it is announced, beyond the second not
/// believed.
inline constexpr double kUnusualAspect = 1.25;
inline constexpr double kImpossibleAspect = 4.0;
/// A corner this far outside the picture is a corner counted from 1 or one past the end; it is moved in.
inline constexpr int kCornerSlack = 1;
/// Spectral axes: a pixel of more than this is no scale that a person could have set.
inline constexpr double kLargestCmPerSAPixel = 50.0;
inline constexpr double kLargestSecondsAPixel = 0.5;

/// Regions in the file's order; one that cannot be placed is left out. Appends notices `region-unreadable`,
/// `region-scale-refused`, `region-contradictory`, `region-aspect`, `regions-overlap`,
/// `region-angle-corrected`.
/// @param columns, rows  of the picture.
std::vector<core::EchoRegion> readRegions(const Dataset& dataset, int columns, int rows,
                                          std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
