#include "core/volume/distance_columns.h"

#if defined(__AVX2__)

#include <immintrin.h>

namespace gauge::core {
namespace {

/// Sixteen lanes in two registers.
struct Lanes {
    __m256 low, high;
};

Lanes loadRow(const float* columns, int row) {
    const float* at = columns + row * kDistanceLanes;
    return {_mm256_loadu_ps(at), _mm256_loadu_ps(at + 8)};
}

Lanes lower(const Lanes& a, const Lanes& b) {
    return {_mm256_min_ps(a.low, b.low), _mm256_min_ps(a.high, b.high)};
}

Lanes plus(const Lanes& a, __m256 square) {
    return {_mm256_add_ps(a.low, square), _mm256_add_ps(a.high, square)};
}

bool anyAbove(const Lanes& a, __m256 square) {
    return _mm256_movemask_ps(_mm256_or_ps(_mm256_cmp_ps(a.low, square, _CMP_GT_OQ),
                                           _mm256_cmp_ps(a.high, square, _CMP_GT_OQ))) != 0;
}

/// First both neighbours at distance d together, as far as both exist, then the side that is left.
void lowest(const float* in, int n, const float* squares, float* out) {
    for (int y = 0; y < n; ++y) {
        Lanes best = loadRow(in, y);
        const int before = y, after = n - 1 - y;
        const int both = before < after ? before : after, all = before < after ? after : before;
        int d = 1;
        bool open = true;
        for (; d <= both; ++d) {
            const __m256 square = _mm256_set1_ps(squares[d]);
            open = anyAbove(best, square);
            if (!open)
                break;
            best = lower(best, plus(lower(loadRow(in, y - d), loadRow(in, y + d)), square));
        }
        for (const int side = before < after ? 1 : -1; open && d <= all; ++d) {
            const __m256 square = _mm256_set1_ps(squares[d]);
            open = anyAbove(best, square);
            if (open)
                best = lower(best, plus(loadRow(in, y + side * d), square));
        }
        _mm256_storeu_ps(out + y * kDistanceLanes, best.low);
        _mm256_storeu_ps(out + y * kDistanceLanes + 8, best.high);
    }
}

void roots(const float* in, int count, double scale, float* out) {
    const __m256d factor = _mm256_set1_pd(scale);
    const __m128 unreached = _mm_set1_ps(kUnreachedSquare), greatest = _mm_set1_ps(__FLT_MAX__);
    for (int i = 0; i < count; i += 4) {
        const __m128 squares = _mm_loadu_ps(in + i);
        const __m128 lengths = _mm256_cvtpd_ps(_mm256_mul_pd(_mm256_sqrt_pd(_mm256_cvtps_pd(squares)), factor));
        _mm_storeu_ps(out + i, _mm_blendv_ps(lengths, greatest, _mm_cmpge_ps(squares, unreached)));
    }
}

const DistanceColumns kTable = {lowest, roots};

} // namespace

const DistanceColumns* distanceColumnsAvx2() {
    return &kTable;
}

} // namespace gauge::core

#else

namespace gauge::core {

const DistanceColumns* distanceColumnsAvx2() {
    return nullptr;
}

} // namespace gauge::core

#endif
