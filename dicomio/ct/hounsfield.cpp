#include "dicomio/ct/hounsfield.h"

#include "dicomio/pixel/frame_reader.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace gauge::dicomio {
namespace {

constexpr int kLowest = std::numeric_limits<std::int16_t>::min();
constexpr int kHighest = std::numeric_limits<std::int16_t>::max();

bool isPadding(std::int32_t stored, std::uint16_t word, const std::optional<Padding>& padding) {
    if (!padding) return false;
    const std::int32_t value = padding->wholeWord ? word : stored;
    return value >= padding->low && value <= padding->high;
}

/// Stored values as int16 plus a whole number: 16-bit operations only, so that the compiler takes many at
/// once.
struct Shift {
    std::uint16_t mask = 0; ///< of the stored bits
    std::uint16_t flip = 0; ///< stored value = ((word & mask) ^ flip) - subtract, as int16
    std::uint16_t subtract = 0;
    int offset = 0; ///< added to get Hounsfield units
    int bias = 0;   ///< what was taken from unsigned values so that they fit into int16; part of `offset`
};

Shift shiftOf(const PixelFormat& format, int intercept) {
    const auto top = static_cast<std::uint16_t>(1u << (format.bitsStored - 1));
    const auto mask = static_cast<std::uint16_t>((1u << format.bitsStored) - 1);
    if (format.isSigned) return {mask, top, top, intercept, 0};
    constexpr int kHalf = 32768;
    if (format.bitsStored == 16) return {mask, top, 0, intercept + kHalf, kHalf};
    return {mask, 0, 0, intercept, 0};
}

template <bool kPads>
std::size_t shift(std::span<std::int16_t> words, const Shift& by, const std::optional<Padding>& padding) {
    const auto low = static_cast<std::int16_t>(std::clamp(kLowest - by.offset, kLowest, kHighest));
    const auto high = static_cast<std::int16_t>(std::clamp(kHighest - by.offset, kLowest, kHighest));
    const auto offset = static_cast<std::uint16_t>(by.offset);
    std::int16_t padLow = 1, padHigh = 0; // empty
    if (kPads && padding->low - by.bias <= kHighest && padding->high - by.bias >= kLowest) {
        padLow = static_cast<std::int16_t>(std::max(padding->low - by.bias, kLowest));
        padHigh = static_cast<std::int16_t>(std::min(padding->high - by.bias, kHighest));
    }
    std::size_t held = 0;
    constexpr std::size_t kBlock = 4096;
    for (std::size_t begin = 0; begin < words.size(); begin += kBlock) {
        std::int16_t* p = words.data() + begin;
        const std::size_t count = std::min(kBlock, words.size() - begin);
        std::int16_t outside = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const auto word = static_cast<std::uint16_t>(p[i]);
            const auto v = static_cast<std::int16_t>(((word & by.mask) ^ by.flip) - by.subtract);
            const std::int16_t within = std::min(std::max(v, low), high);
            auto hu = static_cast<std::int16_t>(static_cast<std::uint16_t>(within) + offset);
            auto beyond = static_cast<std::int16_t>(v ^ within);
            if constexpr (kPads) {
                const bool padded = (v >= padLow) & (v <= padHigh);
                hu = padded ? kPaddingHu : hu;
                beyond = padded ? std::int16_t{0} : beyond;
            }
            outside = static_cast<std::int16_t>(outside | beyond);
            p[i] = hu;
        }
        if (outside != 0) // rare: held values are those at the ends
            held += static_cast<std::size_t>(
                std::count_if(p, p + count, [](std::int16_t v) { return v == kLowest || v == kHighest; }));
    }
    return held;
}

/// Any slope and any position of the stored bits, through a table of all words.
std::size_t byTable(std::span<std::int16_t> words, const PixelFormat& format, const Rescale& rescale,
                    const std::optional<Padding>& padding) {
    constexpr std::size_t kWords = 65536;
    std::vector<std::int16_t> hu(kWords);
    std::vector<std::uint8_t> held(kWords);
    for (std::size_t w = 0; w < kWords; ++w) {
        const auto word = static_cast<std::uint16_t>(w);
        const std::int32_t stored = storedValue(word, format);
        const double value = std::round(rescale.slope * stored + rescale.intercept);
        const bool padded = isPadding(stored, word, padding);
        held[w] = !padded && (value < kLowest || value > kHighest) ? 1 : 0;
        hu[w] = padded ? kPaddingHu
                       : static_cast<std::int16_t>(
                             std::clamp(value, static_cast<double>(kLowest), static_cast<double>(kHighest)));
    }
    std::size_t count = 0;
    for (std::int16_t& v : words) {
        const auto word = static_cast<std::uint16_t>(v);
        count += held[word];
        v = hu[word];
    }
    return count;
}

} // namespace

std::optional<Padding> paddingOf(const Dataset& dataset, const PixelFormat& format) {
    const auto value = dataset.integer(tags::PixelPaddingValue),
               limit = dataset.integer(tags::PixelPaddingRangeLimit);
    if (!value || !*value) return std::nullopt;
    const auto word = [&](int v) { return static_cast<std::uint16_t>(v); };
    const auto fits = [&](int v) {
        const auto whole = format.isSigned ? static_cast<std::int32_t>(static_cast<std::int16_t>(word(v)))
                                           : std::int32_t{word(v)};
        PixelFormat low = format;
        low.highBit = format.bitsStored - 1;
        return storedValue(word(v), low) == whole;
    };
    const int last = limit && *limit ? **limit : **value;
    if (format.bitsAllocated == 16 && (!fits(**value) || !fits(last)))
        return Padding{std::min(word(**value), word(last)), std::max(word(**value), word(last)), true};
    PixelFormat low = format;
    low.highBit = format.bitsStored - 1;
    const std::int32_t a = storedValue(word(**value), low), b = storedValue(word(last), low);
    return Padding{std::min(a, b), std::max(a, b), false};
}

std::size_t toHounsfield(std::span<std::int16_t> words, const PixelFormat& format, const Rescale& rescale,
                         const std::optional<Padding>& padding) {
    const bool whole = rescale.slope == 1.0 && rescale.intercept == std::round(rescale.intercept) &&
                       std::abs(rescale.intercept) <= kHighest;
    const bool lowBits = format.highBit == format.bitsStored - 1;
    if (!whole || !lowBits || (padding && padding->wholeWord))
        return byTable(words, format, rescale, padding);
    const Shift by = shiftOf(format, static_cast<int>(rescale.intercept));
    return padding ? shift<true>(words, by, padding) : shift<false>(words, by, padding);
}

} // namespace gauge::dicomio
