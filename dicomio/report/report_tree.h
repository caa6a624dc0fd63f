// The content tree of a measurement report: rows of TID 1500 from plain values. Part of the writer.
#pragma once

#include "core/result.h"
#include "dicomio/report/content_item.h"

namespace gauge::dicomio {

/// @errors InvalidArgument, as in structured_report.h.
core::Result<ContentItem> reportTree(const ReportContent& content);

/// True when a region lies in the patient, which only Comprehensive 3D SR can say.
bool hasPatientRegions(const ReportContent& content);

} // namespace gauge::dicomio
