#include "core/geometry/point_sums.h"

#if defined(__AVX2__)

#include <immintrin.h>

namespace gauge::core {
namespace {

void meanOfPoints(const double* points, std::size_t count, double* middle) {
    __m256d s[4]; // x and y of two points each
    for (__m256d& sum : s)
        sum = _mm256_setzero_pd();
    const auto addEight = [&](const double* eight) {
        for (int pair = 0; pair < 4; ++pair)
            s[pair] = _mm256_add_pd(s[pair], _mm256_loadu_pd(eight + 4 * pair));
    };
    std::size_t n = 0;
    for (; n + 8 <= count; n += 8)
        addEight(points + 2 * n);
    if (n < count) {
        double last[16] = {};
        for (std::size_t i = 0; i < 2 * (count - n); ++i)
            last[i] = points[2 * n + i];
        addEight(last);
    }
    const __m256d all = _mm256_add_pd(_mm256_add_pd(s[0], s[1]), _mm256_add_pd(s[2], s[3]));
    const __m128d sum = _mm_add_pd(_mm256_castpd256_pd128(all), _mm256_extractf128_pd(all, 1));
    _mm_storeu_pd(middle, _mm_div_pd(sum, _mm_set1_pd(static_cast<double>(count))));
}

/// The sums of both; their lanes hold the partial sums 0, 2, 1, 3.
void writeAdded(__m256d a, __m256d b, double* out) {
    const __m256d pairs = _mm256_hadd_pd(a, b); // 0 + 2 of a, of b, 1 + 3 of a, of b
    _mm_storeu_pd(out, _mm_add_pd(_mm256_castpd256_pd128(pairs), _mm256_extractf128_pd(pairs, 1)));
}

void sumsOfPoints(const double* points, std::size_t count, const double* middle, PointSums& sums) {
    const __m256d middleX = _mm256_set1_pd(middle[0]), middleY = _mm256_set1_pd(middle[1]);
    __m256d s[12];
    for (__m256d& sum : s)
        sum = _mm256_setzero_pd();
    const auto addFour = [&](const double* four) {
        const __m256d first = _mm256_loadu_pd(four), second = _mm256_loadu_pd(four + 4); // lanes become points 0, 2, 1, 3
        const __m256d x = _mm256_sub_pd(_mm256_unpacklo_pd(first, second), middleX);
        const __m256d y = _mm256_sub_pd(_mm256_unpackhi_pd(first, second), middleY);
        const __m256d xx = _mm256_mul_pd(x, x), xy = _mm256_mul_pd(x, y), yy = _mm256_mul_pd(y, y);
        s[0] = _mm256_add_pd(s[0], xx);
        s[1] = _mm256_add_pd(s[1], xy);
        s[2] = _mm256_add_pd(s[2], yy);
        s[3] = _mm256_add_pd(s[3], _mm256_mul_pd(xx, x));
        s[4] = _mm256_add_pd(s[4], _mm256_mul_pd(xx, y));
        s[5] = _mm256_add_pd(s[5], _mm256_mul_pd(x, yy));
        s[6] = _mm256_add_pd(s[6], _mm256_mul_pd(yy, y));
        s[7] = _mm256_add_pd(s[7], _mm256_mul_pd(xx, xx));
        s[8] = _mm256_add_pd(s[8], _mm256_mul_pd(xx, xy));
        s[9] = _mm256_add_pd(s[9], _mm256_mul_pd(xx, yy));
        s[10] = _mm256_add_pd(s[10], _mm256_mul_pd(xy, yy));
        s[11] = _mm256_add_pd(s[11], _mm256_mul_pd(yy, yy));
    };
    std::size_t n = 0;
    for (; n + 4 <= count; n += 4)
        addFour(points + 2 * n);
    if (n < count) {
        double last[8];
        for (std::size_t i = 0; i < 8; ++i) // what lies in the middle adds nothing
            last[i] = i < 2 * (count - n) ? points[2 * n + i] : middle[i % 2];
        addFour(last);
    }
    double out[12];
    for (std::size_t t = 0; t < 12; t += 2)
        writeAdded(s[t], s[t + 1], out + t);
    sums = {out[0], out[1], out[2], out[3], out[4], out[5], out[6], out[7], out[8], out[9], out[10], out[11]};
}

const PointSumLoops kPointSumLoopsInAvx2 = {meanOfPoints, sumsOfPoints};

} // namespace

const PointSumLoops* pointSumLoopsAvx2() {
    return &kPointSumLoopsInAvx2;
}

} // namespace gauge::core

#else

namespace gauge::core {

const PointSumLoops* pointSumLoopsAvx2() {
    return nullptr;
}

} // namespace gauge::core

#endif
