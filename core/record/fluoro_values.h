// From the widths and depths drawn on the X-ray frames of one moment to the record's values. What the CT predicts at the
// same C-arm angles is in core/fluoro/width_comparison.h.
#pragma once

#include "core/record/picture_readings.h"

#include <string_view>
#include <vector>

namespace gauge::core {

/// Prefix of the groups of these values: "fluoroscopy/" + momentKey().
inline constexpr std::string_view kFluoroValues = "fluoroscopy/";

/// The values of the group kFluoroValues + key: "landing/single-view" and "ostium/single-view" (mm) for one drawing of that
/// role, "…/largest-of-views" for several (several projections, of which the widest comes nearest to the longest diameter),
/// and "depth" (mm), the greatest, since foreshortening can only take away. `inputs`: all drawings of the role, their
/// evidence and scales: another drawing might have been the largest.
/// @param provenance  author, time; images, phase and state are filled in here.
std::vector<RecordedValue> fluoroValues(const CaseRecord& record, std::string_view key, Provenance provenance);

} // namespace gauge::core
