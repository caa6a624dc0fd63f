// One series of the index from the facts of its files.
#pragma once

#include "dicomio/index/file_facts.h"
#include "dicomio/index/series_index.h"

#include <vector>

namespace gauge::dicomio {

/// @param files  at least one; all of one patient, study, series and kind; in a repeatable order.
SeriesEntry buildSeries(std::vector<FileFacts> files);

/// Adds a message; `refuse` makes the series unusable, otherwise its status becomes at least Notice. The same
/// code with the same text is added once.
void addMessage(SeriesEntry& series, core::Notice message, bool refuse);

/// The message of an error, under its code.
core::Notice noticeOf(const core::Error& error);

} // namespace gauge::dicomio
