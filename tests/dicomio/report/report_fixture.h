// An invented case with something of every kind that a report can hold.
#pragma once

#include "core/record/case_json.h"
#include "dicomio/report/report_from_record.h"

namespace gauge::test {

inline constexpr const char* kStudy = "2.25.1001";
inline constexpr const char* kCtSeries = "2.25.1002";
inline constexpr const char* kFrameOfReference = "2.25.1003";
inline constexpr const char* kEchoCine = "2.25.2001";
inline constexpr const char* kEchoSeries = "2.25.2000";

/// CT values of ostium and landing zone, one drawing on an echo frame and one on a section, marks, a
/// corrected contour, moments, readings, a release, stasis, scores, sizing, a signed decision; one value is
/// stale.
core::CaseRecord fullRecord();
/// Twenty CT slices and one echo cine.
dicomio::ReportSources sourcesOf(const core::CaseRecord& record);
/// Points on an oblique ellipse in the patient.
std::vector<core::PatientPoint> obliqueContour(int points);

} // namespace gauge::test
