#include "core/volume/bit_rows.h"

#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace gauge::core {
namespace {

Word wordAbove(const std::int16_t* values, int count, std::int16_t level) {
    Word word = 0;
    for (int i = 0; i < count; ++i)
        word |= static_cast<Word>(values[i] > level) << i;
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
#else
Word fullWordAbove(const std::int16_t* values, std::int16_t level) {
    return wordAbove(values, 64, level);
}
#endif

} // namespace

void bitsAbove(const std::int16_t* values, int count, std::int16_t level, Word* bits) {
    for (; count >= 64; count -= 64, values += 64)
        *bits++ = fullWordAbove(values, level);
    if (count > 0)
        *bits = wordAbove(values, count, level);
}

} // namespace gauge::core
