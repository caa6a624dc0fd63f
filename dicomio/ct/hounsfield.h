// Stored words to Hounsfield units in int16, in place.
#pragma once

#include "dicomio/ct/slice_facts.h"
#include "dicomio/scan/pixel_format.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

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

/// Turns words of one slice into Hounsfield units, piece by piece as they are read: rounded to the nearest, held at the
/// ends of int16.
class HounsfieldConversion {
public:
    HounsfieldConversion(const PixelFormat& format, const Rescale& rescale, const std::optional<Padding>& padding);
    /// @return number of values that had to be held.
    std::size_t convert(std::span<std::int16_t> words) const;

private:
    /// Stored values as int16 plus a whole number: 16-bit operations only, so that the compiler takes many at once.
    struct Shift {
        std::uint16_t mask = 0; ///< of the stored bits
        std::uint16_t flip = 0; ///< stored value = ((word & mask) ^ flip) - subtract, as int16
        std::uint16_t subtract = 0;
        int offset = 0; ///< added to get Hounsfield units
        int bias = 0;   ///< what was taken from unsigned values so that they fit into int16; part of `offset`
    };
    static Shift shiftOf(const PixelFormat& format, int intercept);
    template <bool kPads> std::size_t shift(std::span<std::int16_t> words) const;
    void makeTable(const PixelFormat& format, const Rescale& rescale);
    std::size_t byTable(std::span<std::int16_t> words) const;

    std::optional<Padding> m_padding;
    Shift m_by;
    std::vector<std::int16_t> m_table; ///< of all words, for any slope and any position of the stored bits; or empty
    std::vector<std::uint8_t> m_held;  ///< 1 where the table's value was held
};

/// The same at once.
std::size_t toHounsfield(std::span<std::int16_t> words, const PixelFormat& format, const Rescale& rescale,
                         const std::optional<Padding>& padding);

} // namespace gauge::dicomio
