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

} // namespace

HounsfieldConversion::Shift HounsfieldConversion::shiftOf(const PixelFormat& format, int intercept) {
    const auto top = static_cast<std::uint16_t>(1u << (format.bitsStored - 1));
    const auto mask = static_cast<std::uint16_t>((1u << format.bitsStored) - 1);
    if (format.isSigned) return {mask, top, top, intercept, 0};
    constexpr int kHalf = 32768;
    if (format.bitsStored == 16) return {mask, top, 0, intercept + kHalf, kHalf};
    return {mask, 0, 0, intercept, 0};
}

template <bool kPads> std::size_t HounsfieldConversion::shift(std::span<std::int16_t> words) const {
    const Shift by = m_by;
    const auto low = static_cast<std::int16_t>(std::clamp(kLowest - by.offset, kLowest, kHighest));
    const auto high = static_cast<std::int16_t>(std::clamp(kHighest - by.offset, kLowest, kHighest));
    const auto offset = static_cast<std::uint16_t>(by.offset);
    std::int16_t padLow = 1, padHigh = 0; // empty
    if (kPads && m_padding->low - by.bias <= kHighest && m_padding->high - by.bias >= kLowest) {
        padLow = static_cast<std::int16_t>(std::max(m_padding->low - by.bias, kLowest));
        padHigh = static_cast<std::int16_t>(std::min(m_padding->high - by.bias, kHighest));
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

void HounsfieldConversion::makeTable(const PixelFormat& format, const Rescale& rescale) {
    constexpr std::size_t kWords = 65536;
    m_table.resize(kWords);
    m_held.resize(kWords);
    for (std::size_t w = 0; w < kWords; ++w) {
        const auto word = static_cast<std::uint16_t>(w);
        const std::int32_t stored = storedValue(word, format);
        const double value = std::round(rescale.slope * stored + rescale.intercept);
        const bool padded = isPadding(stored, word, m_padding);
        m_held[w] = !padded && (value < kLowest || value > kHighest) ? 1 : 0;
        m_table[w] = padded ? kPaddingHu
                            : static_cast<std::int16_t>(
                                  std::clamp(value, static_cast<double>(kLowest), static_cast<double>(kHighest)));
    }
}

std::size_t HounsfieldConversion::byTable(std::span<std::int16_t> words) const {
    std::size_t count = 0;
    for (std::int16_t& v : words) {
        const auto word = static_cast<std::uint16_t>(v);
        count += m_held[word];
        v = m_table[word];
    }
    return count;
}

HounsfieldConversion::HounsfieldConversion(const PixelFormat& format, const Rescale& rescale,
                                           const std::optional<Padding>& padding)
    : m_padding(padding) {
    const bool whole = rescale.slope == 1.0 && rescale.intercept == std::round(rescale.intercept) &&
                       std::abs(rescale.intercept) <= kHighest;
    const bool lowBits = format.highBit == format.bitsStored - 1;
    if (!whole || !lowBits || (padding && padding->wholeWord))
        makeTable(format, rescale);
    else
        m_by = shiftOf(format, static_cast<int>(rescale.intercept));
}

std::size_t HounsfieldConversion::convert(std::span<std::int16_t> words) const {
    if (!m_table.empty()) return byTable(words);
    return m_padding ? shift<true>(words) : shift<false>(words);
}

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
    return HounsfieldConversion(format, rescale, padding).convert(words);
}

} // namespace gauge::dicomio
