// Which colours the three samples of a decoded pixel are: what the attributes declare, unless the code stream
// proves otherwise. Part of frame_reader.
#pragma once

#include "core/result.h"
#include "dicomio/scan/scanner.h"

#include <cstddef>
#include <span>
#include <vector>

namespace gauge::dicomio {

enum class CodedColour { None, Rgb, Ybr }; ///< None: grey or palette

/// @param frame  a compressed frame; empty for uncompressed pixels. @param notices  gains a
/// `colour-contradicted` where the code stream overrules the attributes.
CodedColour codedColour(const ScannedFile& scanned, std::span<const std::byte> frame,
                        std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
