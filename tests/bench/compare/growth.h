// How time and memory grow with slices and phases.
#pragma once

#include <string>

namespace gauge::bench {

/// Prints a table in Markdown; draws it into `plot` (SVG) unless that is empty. False when something grows faster than the
/// voxels that it must touch, which the table says, and, with a message, when something could not be run or written.
bool printGrowth(int samples, const std::string& plot);

} // namespace gauge::bench
