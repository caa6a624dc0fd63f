#include "core/geometry/point_sums.h"

#if defined(__AVX2__)

#include <immintrin.h>

namespace gauge::core {
namespace {

/// x and y of four points, in the order 0, 2, 1, 3.
struct FourPoints {
    __m256d x, y;
};

FourPoints apart(__m256d first, __m256d second) {
    return {_mm256_unpacklo_pd(first, second), _mm256_unpackhi_pd(first, second)};
}

FourPoints fourPointsAt(const double* points) {
    return apart(_mm256_loadu_pd(points), _mm256_loadu_pd(points + 4));
}

/// The last `left` < 4 points, and `filler` in their stead behind them.
FourPoints lastPoints(const double* points, std::size_t left, const double* filler) {
    double four[8];
    for (std::size_t n = 0; n < 4; ++n)
        for (std::size_t d = 0; d < 2; ++d)
            four[2 * n + d] = n < left ? points[2 * n + d] : filler[d];
    return fourPointsAt(four);
}

/// Lanes hold the partial sums 0, 2, 1, 3.
double added(__m256d lanes) {
    double at[4];
    _mm256_storeu_pd(at, lanes);
    return (at[0] + at[1]) + (at[2] + at[3]);
}

void meanOfPoints(const double* points, std::size_t count, double* middle) {
    __m256d x = _mm256_setzero_pd(), y = x;
    const auto add = [&](const FourPoints& p) {
        x = _mm256_add_pd(x, p.x);
        y = _mm256_add_pd(y, p.y);
    };
    std::size_t n = 0;
    for (; n + 4 <= count; n += 4)
        add(fourPointsAt(points + 2 * n));
    constexpr double kNothing[2] = {0.0, 0.0};
    if (n < count) add(lastPoints(points + 2 * n, count - n, kNothing));
    middle[0] = added(x) / static_cast<double>(count);
    middle[1] = added(y) / static_cast<double>(count);
}

void sumsOfPoints(const double* points, std::size_t count, const double* middle, PointSums& sums) {
    const __m256d middleX = _mm256_set1_pd(middle[0]), middleY = _mm256_set1_pd(middle[1]);
    __m256d s[14];
    for (__m256d& sum : s)
        sum = _mm256_setzero_pd();
    const auto add = [&](const FourPoints& p) {
        const __m256d x = _mm256_sub_pd(p.x, middleX), y = _mm256_sub_pd(p.y, middleY);
        const __m256d xx = _mm256_mul_pd(x, x), xy = _mm256_mul_pd(x, y), yy = _mm256_mul_pd(y, y);
        s[0] = _mm256_add_pd(s[0], x);
        s[1] = _mm256_add_pd(s[1], y);
        s[2] = _mm256_add_pd(s[2], xx);
        s[3] = _mm256_add_pd(s[3], xy);
        s[4] = _mm256_add_pd(s[4], yy);
        s[5] = _mm256_add_pd(s[5], _mm256_mul_pd(xx, x));
        s[6] = _mm256_add_pd(s[6], _mm256_mul_pd(xx, y));
        s[7] = _mm256_add_pd(s[7], _mm256_mul_pd(x, yy));
        s[8] = _mm256_add_pd(s[8], _mm256_mul_pd(yy, y));
        s[9] = _mm256_add_pd(s[9], _mm256_mul_pd(xx, xx));
        s[10] = _mm256_add_pd(s[10], _mm256_mul_pd(xx, xy));
        s[11] = _mm256_add_pd(s[11], _mm256_mul_pd(xx, yy));
        s[12] = _mm256_add_pd(s[12], _mm256_mul_pd(xy, yy));
        s[13] = _mm256_add_pd(s[13], _mm256_mul_pd(yy, yy));
    };
    std::size_t n = 0;
    for (; n + 4 <= count; n += 4)
        add(fourPointsAt(points + 2 * n));
    if (n < count) add(lastPoints(points + 2 * n, count - n, middle)); // what lies in the middle adds nothing
    sums = {added(s[0]), added(s[1]), added(s[2]), added(s[3]),  added(s[4]),  added(s[5]),  added(s[6]),
            added(s[7]), added(s[8]), added(s[9]), added(s[10]), added(s[11]), added(s[12]), added(s[13])};
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
