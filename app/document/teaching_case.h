// The teaching case written by `ostium-gauge sample FOLDER`: its marks lie beside the images, so that a new
// user sees the whole measurement at once.
#pragma once

#include "core/record/case_record.h"
#include "core/result.h"

#include <filesystem>
#include <map>
#include <optional>

namespace gauge::app {

struct TeachingMarks {
    std::map<core::MarkKind, core::PatientPoint> points;
};

/// Looks for answers.json of ours in `folder` and the folder above it, and takes the marks of the phase
/// nearest to `percent` of the R-R interval. Nothing when there is no such file, or another program's file of
/// that name.
/// @errors RecordUnreadable when the file is ours but its marks cannot be read (message names the file).
core::Result<std::optional<TeachingMarks>> findTeachingMarks(const std::filesystem::path& folder,
                                                             double percent);

} // namespace gauge::app
