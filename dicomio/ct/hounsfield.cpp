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

/// Whole-number shift of stored values of type T (int16_t or uint16_t): 16-bit arithmetic only, so that the
/// compiler can take many values at once.
template <class T>
std::size_t shift(std::span<std::int16_t> words, int unusedBits, int offset,
                  const std::optional<Padding>& padding) {
    constexpr int kMin = std::numeric_limits<T>::min(), kMax = std::numeric_limits<T>::max();
    const T low = static_cast<T>(std::clamp(kLowest - offset, kMin, kMax));
    const T high = static_cast<T>(std::clamp(kHighest - offset, kMin, kMax));
    // An empty interval where there is no padding, or where it lies beyond what T can hold.
    const bool pads = padding && padding->low <= kMax && padding->high >= kMin;
    const T padLow = pads ? static_cast<T>(std::max(padding->low, kMin)) : T{1};
    const T padHigh = pads ? static_cast<T>(std::min(padding->high, kMax)) : T{0};
    std::size_t held = 0;
    constexpr std::size_t kBlock = 4096;
    for (std::size_t begin = 0; begin < words.size(); begin += kBlock) {
        std::int16_t* p = words.data() + begin;
        const std::size_t count = std::min(kBlock, words.size() - begin);
        T outside = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const T v =
                static_cast<T>(static_cast<T>(static_cast<std::uint16_t>(p[i]) << unusedBits) >> unusedBits);
            const T within = std::min(std::max(v, low), high);
            const bool padded = v >= padLow && v <= padHigh;
            outside = static_cast<T>(outside | (padded ? T{0} : static_cast<T>(v ^ within)));
            p[i] = padded ? kPaddingHu : static_cast<std::int16_t>(within + offset);
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
    const int unused = 16 - format.bitsStored;
    const int offset = static_cast<int>(rescale.intercept);
    return format.isSigned ? shift<std::int16_t>(words, unused, offset, padding)
                           : shift<std::uint16_t>(words, unused, offset, padding);
}

} // namespace gauge::dicomio
