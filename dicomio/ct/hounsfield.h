// Stored words to Hounsfield units in int16, in place.
#pragma once

#include "dicomio/ct/slice_facts.h"
#include "dicomio/scan/pixel_format.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>

namespace gauge::dicomio {

/// What padding (outside the scanned field) becomes: as air, the lowest value of the usual Hounsfield range.
inline constexpr std::int16_t kPaddingHu = -1024;

/// Stored values that mean "no image here" (PS3.3 C.7.5.1.1.2), as words.
struct Padding {
    std::int32_t low = 0;   ///< inclusive
    std::int32_t high = 0;  ///< inclusive
    bool wholeWord = false; ///< the value does not fit into BitsStored: whole words are compared
};

/// From PixelPaddingValue and PixelPaddingRangeLimit, whose words are signed as PixelRepresentation says.
std::optional<Padding> paddingOf(const Dataset& dataset, const PixelFormat& format);

/// Turns words into Hounsfield units: rounded to the nearest, held at the ends of int16.
/// @return number of values that had to be held.
std::size_t toHounsfield(std::span<std::int16_t> words, const PixelFormat& format, const Rescale& rescale,
                         const std::optional<Padding>& padding);

} // namespace gauge::dicomio
