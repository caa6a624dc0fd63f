// What a report needs besides the record, taken from the folder of images: where each image belongs, the
// study that the report becomes part of, the patient as the images say. Neighbour: report_from_record.h.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/record/case_record.h"
#include "core/result.h"
#include "dicomio/index/series_index.h"
#include "dicomio/report/report_from_record.h"

#include <string>
#include <vector>

namespace gauge::dicomio {

/// UIDs of all images that values, drawings, scales, landmarks and findings of the record rest on.
std::vector<std::string> imagesOf(const core::CaseRecord& record);

/// Fills `images`, `study` and `imagePatient` of `into` from the files of `index`; everything else stays as
/// it is. Images of the record that the folder does not hold are left out (the report then tells their UIDs
/// in words). The study is that of the CT that was measured, else of the first image that the record rests
/// on.
/// @errors NotFound when the folder holds none of the record's images; those of scanFile() for the file whose
/// study is used.
core::Result<void> gatherSources(const SeriesIndex& index, const core::CaseRecord& record,
                                 ReportSources& into);

/// The contours of the present measurement, as reportFromRecord() wants them.
std::vector<FoundContour> contoursOf(const core::AppendageMeasurement& measurement);

} // namespace gauge::dicomio
