// Every regular file in a folder and below it.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "dicomio/index/series_index.h"

#include <filesystem>
#include <vector>

namespace gauge::dicomio {

struct WalkedFolder {
    std::vector<std::filesystem::path> files; ///< sorted
    std::vector<SkippedFile> skipped;         ///< what is neither a file nor a folder, or cannot be looked at
};

/// Follows links; a folder that is reached twice (a loop of links) is looked through once.
/// @param folder  or a single file.
/// @errors FileUnreadable, Cancelled.
core::Result<WalkedFolder> walkFolder(const std::filesystem::path& folder, const core::WorkContext& work);

} // namespace gauge::dicomio
