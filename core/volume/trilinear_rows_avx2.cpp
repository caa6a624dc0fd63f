#include "core/volume/trilinear_rows.h"

#if defined(__AVX2__)

#include <immintrin.h>

namespace gauge::core {
namespace {

/// Four places side by side: one lane each.
struct FourPlaces {
    __m256d c[3];
};

/// What the four lanes need of a block.
struct BlockLanes {
    const int* pairs; ///< the voxels; a 32-bit read takes a voxel and its neighbour along i
    __m256d last[3];  ///< greatest voxel coordinate
    __m256d low, high[3];
    __m128i lastPair, lastIndex[3];
    __m128i row, slice;
    __m256i besides, slices; ///< the row itself and the next one, four times each; one slice further
    __m256d rowLength, sliceLength;

    BlockLanes(const VoxelBlock& block, double tolerance)
        : pairs(reinterpret_cast<const int*>(block.values)), low(_mm256_set1_pd(-tolerance)),
          lastPair(_mm_set1_epi32(block.size[0] - 2)), row(_mm_set1_epi32(block.size[0])),
          slice(_mm_set1_epi32(block.size[0] * block.size[1])), besides(_mm256_set_m128i(row, _mm_setzero_si128())),
          slices(_mm256_set_m128i(slice, slice)), rowLength(_mm256_set1_pd(block.size[0])),
          sliceLength(_mm256_set1_pd(static_cast<double>(block.size[0]) * block.size[1])) {
        for (int a = 0; a < 3; ++a) {
            const double greatest = static_cast<double>(block.size[a] - 1);
            last[a] = _mm256_set1_pd(greatest);
            high[a] = _mm256_set1_pd(greatest + tolerance);
            lastIndex[a] = _mm_set1_epi32(block.size[a] - 1);
        }
    }
};

/// The gathers take 32-bit numbers of voxels, and pairs along i.
bool fits(const VoxelBlock& block) {
    const std::int64_t count = static_cast<std::int64_t>(block.size[0]) * block.size[1] * block.size[2];
    return block.size[0] >= 2 && count <= INT32_MAX;
}

FourPlaces placesOnRow(const VoxelRow& row, int n) {
    const __m256d numbers = _mm256_cvtepi32_pd(_mm_add_epi32(_mm_set1_epi32(n), _mm_setr_epi32(0, 1, 2, 3)));
    FourPlaces p;
    for (int a = 0; a < 3; ++a)
        p.c[a] = _mm256_add_pd(_mm256_set1_pd(row.start[a]), _mm256_mul_pd(numbers, _mm256_set1_pd(row.step[a])));
    return p;
}

/// All bits set in the lanes whose place is inside.
__m256d insideLanes(const BlockLanes& block, const FourPlaces& p) {
    __m256d all = _mm256_castsi256_pd(_mm256_set1_epi64x(-1));
    for (int a = 0; a < 3; ++a) {
        all = _mm256_and_pd(all, _mm256_cmp_pd(p.c[a], block.low, _CMP_GE_OQ));
        all = _mm256_and_pd(all, _mm256_cmp_pd(p.c[a], block.high[a], _CMP_LE_OQ));
    }
    return all;
}

/// All four places have a voxel on every side: nothing to hold, no neighbour to leave out.
bool wellInside(const BlockLanes& block, const FourPlaces& p) {
    __m256d all = _mm256_castsi256_pd(_mm256_set1_epi64x(-1));
    for (int a = 0; a < 3; ++a) {
        all = _mm256_and_pd(all, _mm256_cmp_pd(p.c[a], _mm256_setzero_pd(), _CMP_GE_OQ));
        all = _mm256_and_pd(all, _mm256_cmp_pd(p.c[a], block.last[a], _CMP_LT_OQ));
    }
    return _mm256_movemask_pd(all) == 0xF;
}

/// Between a pair of neighbours along i: a + (b - a) t. The difference of two voxels is exact in either arithmetic.
__m256d mixedPair(__m128i pair, __m256d t) {
    const __m128i a = _mm_srai_epi32(_mm_slli_epi32(pair, 16), 16), b = _mm_srai_epi32(pair, 16);
    return _mm256_add_pd(_mm256_cvtepi32_pd(a), _mm256_mul_pd(_mm256_cvtepi32_pd(_mm_sub_epi32(b, a)), t));
}

__m256d mixedLanes(__m256d a, __m256d b, __m256d t) {
    return _mm256_add_pd(a, _mm256_mul_pd(_mm256_sub_pd(b, a), t));
}

/// Values held at the faces. On the last voxel of a row the twin adds nothing (step 0, t = 0) to it; here it is the
/// second of a pair, t = 1, which is exact for whole numbers. Along j and k the step is 0 as in the twin.
__m256d heldValues(const BlockLanes& block, const FourPlaces& p) {
    __m256d held[3];
    __m128i index[3];
    for (int a = 0; a < 3; ++a) {
        held[a] = _mm256_min_pd(_mm256_max_pd(p.c[a], _mm256_setzero_pd()), block.last[a]);
        index[a] = _mm256_cvttpd_epi32(held[a]);
    }
    index[0] = _mm_min_epi32(index[0], block.lastPair);
    __m256d t[3];
    for (int a = 0; a < 3; ++a)
        t[a] = _mm256_sub_pd(held[a], _mm256_cvtepi32_pd(index[a]));
    const __m128i dy = _mm_and_si128(_mm_cmpgt_epi32(block.lastIndex[1], index[1]), block.row);
    const __m128i dz = _mm_and_si128(_mm_cmpgt_epi32(block.lastIndex[2], index[2]), block.slice);
    const __m128i at = _mm_add_epi32(index[0], _mm_add_epi32(_mm_mullo_epi32(index[1], block.row),
                                                            _mm_mullo_epi32(index[2], block.slice)));
    const __m128i beyond = _mm_add_epi32(at, dz);
    const auto pair = [&](__m128i offset) { return mixedPair(_mm_i32gather_epi32(block.pairs, offset, 2), t[0]); };
    const __m256d near = mixedLanes(pair(at), pair(_mm_add_epi32(at, dy)), t[1]);
    const __m256d far = mixedLanes(pair(beyond), pair(_mm_add_epi32(beyond, dy)), t[1]);
    return mixedLanes(near, far, t[2]);
}

/// The two values along i of two neighbouring rows, mixed; then mixed along j. @param both  the pairs' numbers, four of each
/// row: both rows come in one gather.
__m256d mixedRows(const BlockLanes& block, __m256i both, const __m256d* t) {
    const __m256i pairs = _mm256_i32gather_epi32(block.pairs, both, 2);
    const __m256i first = _mm256_srai_epi32(_mm256_slli_epi32(pairs, 16), 16);
    const __m256i step = _mm256_sub_epi32(_mm256_srai_epi32(pairs, 16), first);
    const auto mixed = [&](__m128i a, __m128i d) {
        return _mm256_add_pd(_mm256_cvtepi32_pd(a), _mm256_mul_pd(_mm256_cvtepi32_pd(d), t[0]));
    };
    return mixedLanes(mixed(_mm256_castsi256_si128(first), _mm256_castsi256_si128(step)),
                      mixed(_mm256_extracti128_si256(first, 1), _mm256_extracti128_si256(step, 1)), t[1]);
}

/// The values of places that are well inside. Whole numbers of voxels are exact in doubles. Inlined always: called three times,
/// GCC would not, and the places would go through memory (a tenth of a slab's time).
[[gnu::always_inline]] inline __m256d innerValues(const BlockLanes& block, const FourPlaces& p) {
    __m256d whole[3], t[3];
    for (int a = 0; a < 3; ++a) {
        whole[a] = _mm256_floor_pd(p.c[a]);
        t[a] = _mm256_sub_pd(p.c[a], whole[a]);
    }
    const __m128i at = _mm256_cvttpd_epi32(
        _mm256_add_pd(whole[0], _mm256_add_pd(_mm256_mul_pd(whole[1], block.rowLength),
                                              _mm256_mul_pd(whole[2], block.sliceLength))));
    const __m256i near = _mm256_add_epi32(_mm256_broadcastsi128_si256(at), block.besides);
    return mixedLanes(mixedRows(block, near, t), mixedRows(block, _mm256_add_epi32(near, block.slices), t), t[2]);
}

/// Writes as many of the four as there are left.
void writeFloats(__m256d values, int left, float* out) {
    const __m128 rounded = _mm256_cvtpd_ps(values);
    if (left >= 4) {
        _mm_storeu_ps(out, rounded);
        return;
    }
    float four[4];
    _mm_storeu_ps(four, rounded);
    for (int i = 0; i < left; ++i)
        out[i] = four[i];
}

void heldRow(const VoxelBlock& block, const VoxelRow& row, int first, int end, double* out) {
    if (!fits(block)) {
        kTrilinearRows.held(block, row, first, end, out);
        return;
    }
    const BlockLanes lanes(block, 0.0);
    for (int n = first; n < end; n += 4) {
        double four[4];
        const FourPlaces p = placesOnRow(row, n);
        _mm256_storeu_pd(four, wellInside(lanes, p) ? innerValues(lanes, p) : heldValues(lanes, p));
        for (int i = 0; i < 4 && n + i < end; ++i)
            out[n - first + i] = four[i];
    }
}

void insideRow(const VoxelBlock& block, const VoxelRow& row, const OutsideRule& outside, int first, int end,
               float* out) {
    if (!fits(block)) {
        kTrilinearRows.inside(block, row, outside, first, end, out);
        return;
    }
    const BlockLanes lanes(block, outside.toleranceVoxels);
    const __m256d beyond = _mm256_set1_pd(outside.value);
    for (int n = first; n < end; n += 4) {
        const FourPlaces p = placesOnRow(row, n);
        if (wellInside(lanes, p)) {
            writeFloats(innerValues(lanes, p), end - n, out + (n - first));
            continue;
        }
        const __m256d inside = insideLanes(lanes, p);
        const __m256d values =
            _mm256_movemask_pd(inside) == 0 ? beyond : _mm256_blendv_pd(beyond, heldValues(lanes, p), inside);
        writeFloats(values, end - n, out + (n - first));
    }
}

constexpr int kMostHalf = 255; // 100 mm on either side in steps of 0.4 mm

/// From the middle plane to each, three numbers apiece: read again for every four places.
struct WaysToPlanes {
    double way[3 * (2 * kMostHalf + 1)];

    explicit WaysToPlanes(const SlabPlanes& planes) {
        double* next = way;
        for (int k = -planes.half; k <= planes.half; ++k)
            for (int a = 0; a < 3; ++a)
                *next++ = static_cast<double>(k) * planes.step[a];
    }
};

void slabRow(const VoxelBlock& block, const VoxelRow& row, const SlabPlanes& planes, const OutsideRule& outside,
             int first, int end, float* out) {
    if (!fits(block) || planes.half > kMostHalf) {
        kTrilinearRows.slab(block, row, planes, outside, first, end, out);
        return;
    }
    const BlockLanes lanes(block, outside.toleranceVoxels);
    const __m256d beyond = _mm256_set1_pd(outside.value), one = _mm256_set1_pd(1.0);
    const WaysToPlanes ways(planes);
    for (int n = first; n < end; n += 4) {
        const FourPlaces middle = placesOnRow(row, n);
        const auto onPlane = [&](int k) {
            const double* const way = ways.way + 3 * (k + planes.half);
            FourPlaces p;
            for (int a = 0; a < 3; ++a)
                p.c[a] = _mm256_add_pd(middle.c[a], _mm256_broadcast_sd(way + a));
            return p;
        };
        __m256d sum = _mm256_setzero_pd(), count = sum, greatest = beyond;
        // What both outer planes hold well inside, the planes between them do too.
        const bool inner = wellInside(lanes, onPlane(-planes.half)) && wellInside(lanes, onPlane(planes.half));
        for (int k = -planes.half; inner && k <= planes.half; ++k) {
            const __m256d values = innerValues(lanes, onPlane(k));
            if (planes.maximum)
                greatest = _mm256_max_pd(greatest, values);
            else
                sum = _mm256_add_pd(sum, values);
        }
        if (inner)
            count = _mm256_set1_pd(2 * planes.half + 1);
        for (int k = -planes.half; !inner && k <= planes.half; ++k) {
            const FourPlaces p = onPlane(k);
            const __m256d inside = insideLanes(lanes, p);
            if (_mm256_movemask_pd(inside) == 0)
                continue;
            const __m256d values = heldValues(lanes, p);
            sum = _mm256_add_pd(sum, _mm256_and_pd(values, inside));
            count = _mm256_add_pd(count, _mm256_and_pd(one, inside));
            greatest = _mm256_max_pd(greatest, _mm256_blendv_pd(beyond, values, inside));
        }
        const __m256d some = _mm256_cmp_pd(count, _mm256_setzero_pd(), _CMP_GT_OQ);
        const __m256d result = planes.maximum ? greatest : _mm256_div_pd(sum, _mm256_max_pd(count, one));
        writeFloats(_mm256_blendv_pd(beyond, result, some), end - n, out + (n - first));
    }
}

const TrilinearRows kTable = {heldRow, insideRow, slabRow};

} // namespace

const TrilinearRows* trilinearRowsAvx2() {
    return &kTable;
}

} // namespace gauge::core

#else

namespace gauge::core {

const TrilinearRows* trilinearRowsAvx2() {
    return nullptr;
}

} // namespace gauge::core

#endif
