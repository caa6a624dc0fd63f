// What the verb `index` says: its JSON document and its listing for people.
#pragma once

#include "dicomio/index/series_index.h"

#include <string>

namespace gauge::app {

/// "ok", "notice", "refused", "set-aside".
std::string statusName(dicomio::SeriesStatus status);

/// The document "ostium-gauge/index/1". Numbers that are not known are null; text is valid UTF-8.
std::string indexJson(const dicomio::SeriesIndex& index);

/// One paragraph for each series with its messages, then the skipped files by reason.
std::string indexListing(const dicomio::SeriesIndex& index);

/// Why nothing of the index can be used, in one paragraph; empty when something can.
std::string whyUnusable(const dicomio::SeriesIndex& index, const std::string& folder);

} // namespace gauge::app
