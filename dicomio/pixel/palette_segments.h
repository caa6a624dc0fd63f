// Segmented lookup tables (PS3.3 C.7.9.2), unrolled. Part of palette.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace gauge::dicomio {

/// @param bytes    the segmented data, little endian. @param narrow  codes, lengths and entries have 8 bits
/// instead of 16. @param entries  how many there must be in the end; no more are ever made.
/// @return the entries, or what is wrong as the rest of a sentence about the attribute.
tl::expected<std::vector<std::uint16_t>, std::string> expandSegments(const std::string& bytes, bool narrow,
                                                                     std::size_t entries);

} // namespace gauge::dicomio
