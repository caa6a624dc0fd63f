// Colour lookup tables of PALETTE COLOR images (PS3.3 C.7.6.3.1.5 and C.7.9), plain or segmented.
#pragma once

#include "core/result.h"
#include "dicomio/scan/dataset.h"
#include "dicomio/scan/pixel_format.h"

#include <array>
#include <cstdint>
#include <vector>

namespace gauge::dicomio {

struct Palette {
    int firstMapped = 0; ///< stored value that the first entry belongs to; values below it take that entry
    std::vector<std::array<std::uint8_t, 3>> entries; ///< red, green, blue; at least one

    /// Values beyond either end take the end's entry.
    const std::array<std::uint8_t, 3>& at(std::int32_t value) const;
};

/// @param notices  gains deviations that change no colour.
/// @errors AttributeMissing for a descriptor or table that is absent or empty; AttributeInvalid for a
/// descriptor that is none, tables of different sizes, a table shorter than its descriptor says, or broken
/// segments.
core::Result<Palette> readPalette(const Dataset& dataset, const PixelFormat& format,
                                  std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
