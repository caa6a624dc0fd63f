// From a decoded content tree to the groups of a report. Part of the reader.
#pragma once

#include "core/result.h"
#include "dicomio/report/content_item.h"
#include "dicomio/report/report_reader.h"

namespace gauge::dicomio {

/// Fills title, observers, groups and texts of `out` from the tree; what has no place is counted in
/// `ignored`.
/// @errors ObjectUnsupported when the tree holds no number in a group or list of measurements;
/// AttributeInvalid.
core::Result<void> readTree(const ContentItem& root, ReadReport& out, std::size_t& ignored);

} // namespace gauge::dicomio
