// From the widths and depths drawn on the echo views of one moment to what echo says of ostium and landing zone then.
// The mathematics is in core/echo; here are the record's drawings and evidence, and exact staleness: a value names every
// drawing, view and scale that it rests on.
#pragma once

#include "core/echo/echo_study.h"
#include "core/record/picture_readings.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Prefix of the groups of these values: "echo/" + momentKey().
inline constexpr std::string_view kEchoValues = "echo/";

/// What was drawn at a moment, and what follows from it.
struct EchoMoment {
    std::vector<DrawnReading> readings; ///< as in drawnReadings, those of views without a probe angle included
    EchoReadings study;                 ///< of the views whose probe angle is known, one EchoView a reading
    /// Measured from `study`; an error when nothing with a known angle was drawn.
    Result<EchoMeasurement> measurement = failure(ErrorCode::NotFound, "Nothing is drawn on echo at this moment.");
    /// `probe-angle-unknown`: a view was left out of the ellipse because nobody said its angle.
    std::vector<Notice> notices;
};

/// Uncertainty of a width: that of a reading between views and beats (kAssumedWidthUncertaintyMm), or of the hand that
/// drew it where that is larger; the scale of the picture, common to all, stands apart.
EchoMoment echoMoment(const CaseRecord& record, std::string_view key);

/// The values of the group kEchoValues + key. Ids, for "landing" and "ostium" alike:
///   landing/longest-diameter, shortest-diameter, mean-diameter, perimeter-derived-diameter, area-derived-diameter, perimeter
///   (mm), area (mm2), eccentricity-index (1), direction (deg, a probe angle): of the ellipse through three or more angles
///   landing/largest-of-views (mm): of two or more views
///   landing/single-view (mm): of the only view there is
/// and "depth" (mm), the greatest over the views. What cannot be measured is absent. `inputs`: the drawings that the value
/// rests on, their evidence (which holds the probe angle) and the scales under them.
/// @param provenance  author, time; images, phase and state are filled in here.
std::vector<RecordedValue> echoValues(const CaseRecord& record, std::string_view key, Provenance provenance);

} // namespace gauge::core
