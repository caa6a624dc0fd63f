// Which of four neighbouring nodes a way reaches more cheaply than before: the innermost comparison of way_search.cpp. SSE2,
// which every x86-64 has, and plain code elsewhere: the same single-float operations in the same order, so the same bits.
#pragma once

#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace gauge::core {

#if defined(__SSE2__)

/// Bit n is set where here + length[n] < cost[n], n = 0 … 3.
inline unsigned cheaperSteps(float here, const float* length, const float* cost) {
    const __m128 reached = _mm_add_ps(_mm_set1_ps(here), _mm_loadu_ps(length));
    return static_cast<unsigned>(_mm_movemask_ps(_mm_cmplt_ps(reached, _mm_loadu_ps(cost))));
}

/// Bit n is set where here + half[n] * (priceHere + price[n]) < cost[n], n = 0 … 3.
inline unsigned cheaperSteps(float here, const float* half, float priceHere, const float* price, const float* cost) {
    const __m128 step = _mm_mul_ps(_mm_loadu_ps(half), _mm_add_ps(_mm_set1_ps(priceHere), _mm_loadu_ps(price)));
    const __m128 reached = _mm_add_ps(_mm_set1_ps(here), step);
    return static_cast<unsigned>(_mm_movemask_ps(_mm_cmplt_ps(reached, _mm_loadu_ps(cost))));
}

#else

inline unsigned cheaperSteps(float here, const float* length, const float* cost) {
    unsigned bits = 0;
    for (unsigned n = 0; n < 4; ++n)
        bits |= static_cast<unsigned>(here + length[n] < cost[n]) << n;
    return bits;
}

inline unsigned cheaperSteps(float here, const float* half, float priceHere, const float* price, const float* cost) {
    unsigned bits = 0;
    for (unsigned n = 0; n < 4; ++n)
        bits |= static_cast<unsigned>(here + half[n] * (priceHere + price[n]) < cost[n]) << n;
    return bits;
}

#endif

} // namespace gauge::core
