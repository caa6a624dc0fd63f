// From the case record to the content of its report. What the record does not hold (where an image belongs,
// the study, the contours that the program found) comes with it.
#pragma once

#include "core/record/case_record.h"
#include "core/result.h"
#include "dicomio/report/report_content.h"

#include <string>
#include <vector>

namespace gauge::dicomio {

/// A contour of the present measurement. Ids as in CorrectedContour: "ostium", "landing-1"…; closed, first
/// point not repeated.
struct FoundContour {
    std::string id;
    std::vector<core::PatientPoint> points;
};

struct ReportSources {
    ReportStudy study;
    ReportPatient imagePatient; ///< as the images say; stands in where the record names nobody
    ReportDevice device;
    std::string organization; ///< of the observers
    std::string time;         ///< of the report, ISO 8601 with offset
    /// Images at hand. A value whose image is not among them keeps its number, and the UIDs are told in
    /// words.
    std::vector<SourceImage> images;
    std::vector<FoundContour> contours;
    std::vector<std::string> warnings; ///< sentences that the report must carry
    std::vector<std::string> cautions;
};

/// Everything in the record that is current: values (stale ones are left out and counted in a warning),
/// marks, drawings and contours, readings, pressures, release and stasis, sizing, scores, decision. The
/// document's title follows the latest stage with evidence, readings or looks at the implant (CID 12344).
/// Persons are the authors of the values and whoever signed. `images` of the result are those referred to.
/// @errors InvalidArgument when study UID or time is missing, or when record and images name different
/// patient IDs.
core::Result<ReportContent> reportFromRecord(const core::CaseRecord& record, const ReportSources& sources);

} // namespace gauge::dicomio
