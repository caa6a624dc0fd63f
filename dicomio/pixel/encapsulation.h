// Which fragments of encapsulated pixels make up which frame (PS3.5 A.4).
#pragma once

#include "core/result.h"
#include "dicomio/scan/byte_stream.h"
#include "dicomio/scan/scanner.h"

#include <cstddef>
#include <vector>

namespace gauge::dicomio {

/// Fragments [begin, end) of one frame.
struct FragmentRange {
    std::size_t begin = 0;
    std::size_t end = 0;
};

/// One range for each frame, in order. One frame: all fragments. As many fragments as frames: one each. Else
/// by the extended or basic offset table, and without one by the fragments that start a code stream.
/// @errors FileDamaged when none of these gives every frame its fragments.
core::Result<std::vector<FragmentRange>> fragmentsOfFrames(const ScannedFile& scanned,
                                                           const RegularFile& file);

} // namespace gauge::dicomio
