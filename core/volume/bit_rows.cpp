#include "core/volume/bit_rows.h"

#include "core/parallel/parallel_for.h"

#include <cstring>

#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace gauge::core {
namespace {

template <class T> Word wordAbove(const T* values, int count, T level) {
    Word word = 0;
    for (int i = 0; i < count; ++i)
        word |= static_cast<Word>(values[i] > level) << i;
    return word;
}

Word wordSet(const std::uint8_t* values, int count) {
    Word word = 0;
    for (int i = 0; i < count; ++i)
        word |= static_cast<Word>(values[i] != 0) << i;
    return word;
}

#if defined(__SSE2__)
/// 64 values at once; SSE2 is part of every x86-64.
Word fullWordAbove(const std::int16_t* values, std::int16_t level) {
    const __m128i threshold = _mm_set1_epi16(level);
    Word word = 0;
    for (int part = 0; part < 4; ++part) {
        const auto* at = reinterpret_cast<const __m128i*>(values + 16 * part);
        const __m128i low = _mm_cmpgt_epi16(_mm_loadu_si128(at), threshold);
        const __m128i high = _mm_cmpgt_epi16(_mm_loadu_si128(at + 1), threshold);
        const auto bits = static_cast<unsigned>(_mm_movemask_epi8(_mm_packs_epi16(low, high)));
        word |= static_cast<Word>(bits) << (16 * part);
    }
    return word;
}

Word fullWordAbove(const float* values, float level) {
    constexpr int kAhead = 1024; // floats: a page, which the processor does not look beyond by itself; asking past the end is harmless
    const __m128 threshold = _mm_set1_ps(level);
    Word word = 0;
    for (int line = 0; line < 64; line += 16)
        _mm_prefetch(reinterpret_cast<const char*>(reinterpret_cast<std::uintptr_t>(values) + sizeof(float) * (kAhead + line)), _MM_HINT_T0);
    for (int part = 0; part < 4; ++part) {
        const auto above = [&](int four) {
            return _mm_castps_si128(_mm_cmpgt_ps(_mm_loadu_ps(values + 16 * part + 4 * four), threshold));
        };
        const __m128i low = _mm_packs_epi32(above(0), above(1)), high = _mm_packs_epi32(above(2), above(3));
        word |= static_cast<Word>(static_cast<unsigned>(_mm_movemask_epi8(_mm_packs_epi16(low, high)))) << (16 * part);
    }
    return word;
}

Word fullWordSet(const std::uint8_t* values) {
    Word word = 0;
    for (int part = 0; part < 4; ++part) {
        const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(values + 16 * part));
        const auto zeros = static_cast<unsigned>(_mm_movemask_epi8(_mm_cmpeq_epi8(bytes, _mm_setzero_si128())));
        word |= static_cast<Word>(zeros ^ 0xFFFFu) << (16 * part);
    }
    return word;
}
#else
Word fullWordAbove(const std::int16_t* values, std::int16_t level) {
    return wordAbove(values, 64, level);
}

Word fullWordAbove(const float* values, float level) {
    return wordAbove(values, 64, level);
}

Word fullWordSet(const std::uint8_t* values) {
    return wordSet(values, 64);
}
#endif

/// Calls body(j, k, number of the row's first voxel); threads share the slices.
template <class Body> void forEachRowOf(const Eigen::Vector3i& size, const Body& body) {
    parallelFor(static_cast<std::size_t>(size.z()), 2, [&](std::size_t begin, std::size_t end) {
        for (auto k = static_cast<int>(begin); k < static_cast<int>(end); ++k)
            for (int j = 0; j < size.y(); ++j)
                body(j, k, static_cast<std::ptrdiff_t>(size.x()) * (j + static_cast<std::ptrdiff_t>(size.y()) * k));
    });
}

} // namespace

void bitsAbove(const std::int16_t* values, int count, std::int16_t level, Word* bits) {
    for (; count >= 64; count -= 64, values += 64)
        *bits++ = fullWordAbove(values, level);
    if (count > 0)
        *bits = wordAbove(values, count, level);
}

void bitsAbove(const float* values, int count, float level, Word* bits) {
    for (; count >= 64; count -= 64, values += 64)
        *bits++ = fullWordAbove(values, level);
    if (count > 0)
        *bits = wordAbove(values, count, level);
}

void bitsSet(const std::uint8_t* values, int count, Word* bits) {
    for (; count >= 64; count -= 64, values += 64)
        *bits++ = fullWordSet(values);
    if (count > 0)
        *bits = wordSet(values, count);
}

void setBits(Word* row, int begin, int end) {
    for (int word = begin / 64; 64 * word < end; ++word) {
        const int from = begin > 64 * word ? begin - 64 * word : 0, to = end - 64 * word;
        const Word below = to >= 64 ? ~Word{0} : (Word{1} << to) - 1;
        row[word] |= below & (~Word{0} << from);
    }
}

BitRows bitsAbove(const ValueBlock& block, std::int16_t level) {
    BitRows bits(block.size);
    forEachRowOf(block.size, [&](int j, int k, std::ptrdiff_t first) {
        bitsAbove(block.values + first, block.size.x(), level, bits.row(j, k));
    });
    return bits;
}

BitRows bitsSet(const std::uint8_t* values, const Eigen::Vector3i& size) {
    BitRows bits(size);
    forEachRowOf(size, [&](int j, int k, std::ptrdiff_t first) { bitsSet(values + first, size.x(), bits.row(j, k)); });
    return bits;
}

void writeBytes(const BitRows& bits, std::uint8_t* values) {
    forEachRowOf(bits.size(), [&](int j, int k, std::ptrdiff_t first) {
        const Word* row = bits.row(j, k);
        std::memset(values + first, 0, static_cast<std::size_t>(bits.size().x()));
        for (std::size_t word = 0; word < bits.words(); ++word)
            for (Word left = row[word]; left != 0;) {
                const int from = std::countr_zero(left), length = std::countr_one(left >> from);
                std::memset(values + first + 64 * word + from, 1, static_cast<std::size_t>(length));
                left &= from + length < 64 ? ~Word{0} << (from + length) : 0;
            }
    });
}

} // namespace gauge::core
