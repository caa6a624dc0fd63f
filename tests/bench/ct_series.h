// A plain CT series on disk to load: explicit little endian, one slice a file.
#pragma once

#include <Eigen/Core>
#include <filesystem>

namespace gauge::bench {

/// Writes slices of 0.4 mm pixels, 0.5 mm apart, filled with a pattern. Throws std::runtime_error when it cannot.
void writeCtSeries(const std::filesystem::path& folder, const Eigen::Vector3i& size);

} // namespace gauge::bench
