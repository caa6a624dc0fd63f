// The simulated radiograph of one view for the report: the appendage as if filled with contrast medium, ostium, landing zone, axis,
// circumflex artery and the chosen size over it, its angles on it. Private to app/report.
#pragma once

#include "app/report/case_report.h"
#include "core/fluoro/c_arm.h"

#include <optional>

namespace gauge::app {

/// @param room  the C-arm's angles, the patient's offset in them.
/// Nothing without images, or where the patient's position at CT is not known.
std::optional<ReportPicture> radiographPicture(const CaseReportSource& source, const core::CArmAngles& room);

} // namespace gauge::app
