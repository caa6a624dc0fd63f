// From the marks of the septum and the chosen crossing to recorded values.
#pragma once

#include "core/access/crossing_uncertainty.h"
#include "core/anatomy/appendage.h"
#include "core/record/case_record.h"

#include <memory>
#include <string_view>
#include <vector>

namespace gauge::core {

/// The group of these values.
inline constexpr std::string_view kSeptumValues = "septum";

/// What is marked and set; empty marks and the defaults while there is nothing.
SeptumMarks septumMarks(const CaseRecord& record);
SeptumPlan septumPlan(const CaseRecord& record);

/// A place on the left atrium's side of the septum, while no appendage is measured: the mark of the atrium, else one to the
/// patient's left of the fossa.
PatientPoint leftAtriumSide(const CaseRecord& record);

/// The geometry of the case's crossings. @param measurement  null while there is none. @errors those of crossingScene().
Result<CrossingScene> crossingScene(const CaseRecord& record, const AppendageMeasurement* measurement);

/// Values of the chosen crossing. Ids: "crossing/over-annulus" and "crossing/over-coaptation" (mm; the datum is in the id and in
/// the method), "crossing/ostium-distance" (mm), "crossing/arrival-angle" (deg, straight sheath), "crossing/steered-arrival-angle" (deg). They rest on
/// the images, the septum's marks ("septum-marks") and the plan ("septum"), the latter three also on the ostium and the marks
/// that decide ostium and axis. Nothing without a crossing, or where it lies outside the fossa or the marks cannot be used.
/// Precondition: `measurement` was made from the inputs as they are in `record`.
std::vector<RecordedValue> septumValues(const CaseRecord& record, const AppendageMeasurement* measurement,
                                        std::shared_ptr<const Provenance> provenance);

} // namespace gauge::core
