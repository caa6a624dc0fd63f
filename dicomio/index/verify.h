// Proves that every image of an index decodes.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "dicomio/index/series_index.h"

#include <filesystem>
#include <vector>

namespace gauge::dicomio {

/// A file that an index is made of, and its series in SeriesIndex::series.
struct IndexedFile {
    std::filesystem::path file;
    std::size_t series = 0;
};

/// Decodes every frame of every file with pixels. A CT series with an image that fails is refused; of other
/// series, each failing file is named, and the series is refused when none decodes.
/// @errors Cancelled.
core::Result<void> verifyImages(const std::vector<IndexedFile>& files, SeriesIndex& index,
                                const core::WorkContext& work);

} // namespace gauge::dicomio
