// CT series on disk to load, one slice a file: plain, gated, or compressed.
#pragma once

#include "core/volume/volume.h"

#include <Eigen/Core>
#include <filesystem>

namespace gauge::bench {

/// Writes slices of 0.4 mm pixels, 0.5 mm apart, filled with a pattern. Throws std::runtime_error when it cannot.
void writeCtSeries(const std::filesystem::path& folder, const Eigen::Vector3i& size);

enum class Coding { None, Rle, JpegLossless, JpegLs };

struct SeriesOptions {
    Coding coding = Coding::None;
    int firstSlice = 0, slices = 0; ///< of the volume
    int phases = 1;                 ///< each with the same slices, moved on by a few: 0 %, 10 % …
};

/// Writes slices of a volume as 12 bits in 16, intercept -1024. Its placement must be along the patient's axes. Throws
/// std::runtime_error when it cannot.
void writeCtSeries(const std::filesystem::path& folder, const core::Volume& volume, const SeriesOptions& options);

} // namespace gauge::bench
