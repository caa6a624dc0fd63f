// One series of the index from the facts of its files.
#pragma once

#include "core/parallel/progress.h"
#include "dicomio/index/file_facts.h"
#include "dicomio/index/series_index.h"

#include <vector>

namespace gauge::dicomio {

/// @param files  at least one; all of one patient, study, series and kind; in a repeatable order.
/// On a stop the series is incomplete; the caller looks.
SeriesEntry buildSeries(std::vector<FileFacts> files, const core::WorkContext& work = {});

/// The series is not for measuring, and nothing is wrong with it: status SetAside.
void setAside(SeriesEntry& series, core::Notice why);

/// Adds a message; `refuse` makes the series unusable, otherwise its status becomes at least Notice. The same
/// code with the same text is added once.
void addMessage(SeriesEntry& series, core::Notice message, bool refuse);

/// The message of an error, under its code.
core::Notice noticeOf(const core::Error& error);

} // namespace gauge::dicomio
