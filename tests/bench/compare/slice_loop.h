// A library that reads one file at a time, in a plain loop: each slice into its place of one block on large pages, so that no
// library is charged for the system's page faults; phase after phase into the same block.
#pragma once

#include "tests/bench/compare/libraries.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>

namespace gauge::bench {

/// Reads `count` voxels of one file as Hounsfield units. Throws std::runtime_error when it cannot.
using SliceReader = std::function<void(const std::filesystem::path& file, std::int16_t* out, std::size_t count)>;

/// `name` with every task of loading, done by `read`.
Library sliceLoop(const std::string& name, const SliceReader& read);

} // namespace gauge::bench
