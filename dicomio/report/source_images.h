// Where the images of a case belong: study, series and SOP class of everything in a folder's index that a report may refer
// to. The index keeps no SOP classes, so one file of each series (of each picture) is looked into again.
#pragma once

#include "core/result.h"
#include "dicomio/index/series_index.h"
#include "dicomio/report/report_content.h"

#include <string>
#include <vector>

namespace gauge::dicomio {

struct ReportImages {
    ReportStudy study;               ///< of the series asked for, or of the first one
    std::vector<SourceImage> images; ///< all of the patient's images in the index
    std::vector<core::Notice> notices; ///< `image-not-referred`: a file that could not be read again
};

/// @param seriesUid  series whose study the report becomes part of; empty: the first series.
/// @errors NotFound when the index has no series at all.
core::Result<ReportImages> reportImages(const SeriesIndex& index, const std::string& seriesUid);

} // namespace gauge::dicomio
