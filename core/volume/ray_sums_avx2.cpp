// The twin of ray_sums.cpp for processors with AVX2: eight neighbouring rays at once. The same operations in the same order,
// so that every sum is the same to the last bit. Compiled with flags of its own: nothing but plain arrays and instructions
// here.
#include "core/volume/ray_sums.h"

#if defined(__AVX2__)
#include <immintrin.h>

namespace gauge::core {
namespace {

struct EightBetween {
    __m256i index;
    __m256 share;
};

inline EightBetween betweenVoxels(__m256 at, __m256 last, __m256i lastIndex) {
    const __m256 held = _mm256_min_ps(_mm256_max_ps(at, _mm256_setzero_ps()), last);
    const __m256i index = _mm256_min_epi32(_mm256_cvttps_epi32(held), lastIndex);
    return {index, _mm256_sub_ps(held, _mm256_cvtepi32_ps(index))};
}

/// Thousandths of water's attenuation, of sixteen voxels: not below air. Reads as unsigned.
inline __m256i attenuationOfPairs(__m256i hu) {
    return _mm256_add_epi16(_mm256_max_epi16(hu, _mm256_set1_epi16(-1000)), _mm256_set1_epi16(1000));
}

inline __m256 mix(__m256 from, __m256 to, __m256 share) {
    return _mm256_add_ps(from, _mm256_mul_ps(_mm256_sub_ps(to, from), share));
}

/// Two voxels that follow each other in memory, from one load of four bytes a lane; mixed by `share`.
inline __m256 mixedPair(const std::int16_t* voxels, __m256i at, __m256 share) {
    const __m256i pair = attenuationOfPairs(_mm256_i32gather_epi32(reinterpret_cast<const int*>(voxels), at, 2));
    return mix(_mm256_cvtepi32_ps(_mm256_and_si256(pair, _mm256_set1_epi32(0xFFFF))),
               _mm256_cvtepi32_ps(_mm256_srli_epi32(pair, 16)), share);
}

/// One voxel a lane, from four bytes of which the upper or lower two are it.
inline __m256 single(const std::int16_t* voxels, __m256i at, __m128i shift) {
    const __m256i pair = attenuationOfPairs(_mm256_i32gather_epi32(reinterpret_cast<const int*>(voxels), at, 2));
    return _mm256_cvtepi32_ps(_mm256_and_si256(_mm256_srl_epi32(pair, shift), _mm256_set1_epi32(0xFFFF)));
}

/// @tparam pairs  neighbours along p follow each other in memory. Otherwise those along the slice axis do, and a load takes
/// the voxel with its neighbour of the slice before (in the first slice: after), so that nothing outside the block is read.
template <bool pairs> inline void sumSlice(RayBundle& rays, std::int32_t slice, float half) {
    const float at = static_cast<float>(slice);
    const __m256 along = _mm256_set1_ps(at - rays.middle);
    const __m256 low = _mm256_set1_ps(at - half), high = _mm256_set1_ps(at + half);
    const __m256 lastP = _mm256_set1_ps(static_cast<float>(rays.sizeP - 1));
    const __m256 lastQ = _mm256_set1_ps(static_cast<float>(rays.sizeQ - 1));
    const __m256i lastIndexP = _mm256_set1_epi32(rays.sizeP - 2), lastIndexQ = _mm256_set1_epi32(rays.sizeQ - 2);
    const __m256i strideP = _mm256_set1_epi32(static_cast<int>(rays.strideP));
    const __m256i strideQ = _mm256_set1_epi32(static_cast<int>(rays.strideQ));
    const std::int32_t held = slice < rays.slices ? slice : rays.slices - 1;
    const bool before = !pairs && held > 0;
    const std::int16_t* voxels = rays.voxels + (held - (before ? 1 : 0)) * rays.strideSlice;
    const __m128i shift = _mm_cvtsi32_si128(before ? 16 : 0);
    for (std::int32_t r = 0; r < rays.count; r += RayBundle::kLanes) {
        const __m256 share = _mm256_max_ps(_mm256_sub_ps(_mm256_min_ps(_mm256_load_ps(rays.end + r), high),
                                                         _mm256_max_ps(_mm256_load_ps(rays.begin + r), low)),
                                           _mm256_setzero_ps());
        if (_mm256_testz_si256(_mm256_castps_si256(share), _mm256_castps_si256(share))) continue; // adds nothing
        const auto p =
            betweenVoxels(_mm256_add_ps(_mm256_load_ps(rays.p + r), _mm256_mul_ps(along, _mm256_load_ps(rays.alongP + r))),
                          lastP, lastIndexP);
        const auto q =
            betweenVoxels(_mm256_add_ps(_mm256_load_ps(rays.q + r), _mm256_mul_ps(along, _mm256_load_ps(rays.alongQ + r))),
                          lastQ, lastIndexQ);
        const __m256i nearQ = _mm256_mullo_epi32(q.index, strideQ);
        __m256 near, far;
        if constexpr (pairs) {
            const __m256i here = _mm256_add_epi32(p.index, nearQ);
            near = mixedPair(voxels, here, p.share);
            far = mixedPair(voxels, _mm256_add_epi32(here, strideQ), p.share);
        } else {
            const __m256i here = _mm256_add_epi32(_mm256_mullo_epi32(p.index, strideP), nearQ);
            const __m256i next = _mm256_add_epi32(here, strideP);
            near = mix(single(voxels, here, shift), single(voxels, next, shift), p.share);
            far = mix(single(voxels, _mm256_add_epi32(here, strideQ), shift),
                      single(voxels, _mm256_add_epi32(next, strideQ), shift), p.share);
        }
        const __m256 added = _mm256_mul_ps(share, mix(near, far, q.share));
        _mm256_store_ps(rays.sum + r, _mm256_add_ps(_mm256_load_ps(rays.sum + r), added));
    }
}

template <bool pairs> inline void sumSlices(RayBundle& rays) {
    const float half = 0.5f * static_cast<float>(rays.every);
    for (std::int32_t slice = rays.first; slice <= rays.last; slice += rays.every)
        sumSlice<pairs>(rays, slice, half);
}

void sumEightAtOnce(RayBundle& rays) {
    for (std::int32_t r = 0; r < rays.count; r += RayBundle::kLanes)
        _mm256_store_ps(rays.sum + r, _mm256_setzero_ps());
    if (rays.strideP == 1)
        sumSlices<true>(rays);
    else
        sumSlices<false>(rays);
}

constexpr RaySums kRaySumsAvx2{sumEightAtOnce};

} // namespace

const RaySums* raySumsAvx2() {
    return &kRaySumsAvx2;
}

} // namespace gauge::core
#else
namespace gauge::core {

const RaySums* raySumsAvx2() {
    return nullptr;
}

} // namespace gauge::core
#endif
