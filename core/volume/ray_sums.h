// Sums along rays through a block of voxels: the hot loop of radiograph.cpp. Portable twin: ray_sums.cpp; AVX2: ray_sums_avx2.cpp
// (eight neighbouring rays at once; two voxels in one 32-bit gather), bit by bit the same. Raw pointers only: see
// core/fast/fast_path.h.
//
//   A ray crosses the slices of one axis of the block ("slice axis"); within a slice its place is (p, q), the other two
//   axes:
//
//        q ^    .--- slice 0 --.  .--- slice 1 --.       p(slice) = p + alongP (slice - middle), likewise q
//          |    |      *       |  |          *   |       begin, end: the part of the ray inside the block, in slices; a
//          slice |    '--------------'  '--------------'       counts with the share of it that lies between them
//          '------> p            --> slices
#pragma once

#include <cstddef>
#include <cstdint>

namespace gauge::core {

/// A bundle of neighbouring rays that cross the slices of the same axis.
struct RayBundle {
    static constexpr int kMost = 256;
    static constexpr int kLanes = 8;

    const std::int16_t* voxels = nullptr; ///< the block's first
    std::ptrdiff_t strideP = 1, strideQ = 1, strideSlice = 1;
    std::int32_t sizeP = 1, sizeQ = 1, slices = 1;
    std::int32_t first = 0, last = -1; ///< slices that any ray meets; `first` a multiple of `every`
    std::int32_t every = 1;            ///< 1: all slices; 2: every second, counting twice…
    float middle = 0.0f;               ///< slice at which p and q hold
    std::int32_t count = 0;            ///< of rays, a multiple of kLanes

    alignas(32) float p[kMost];
    alignas(32) float q[kMost];
    alignas(32) float alongP[kMost];
    alignas(32) float alongQ[kMost];
    alignas(32) float begin[kMost];
    alignas(32) float end[kMost]; ///< below `begin`: the ray misses the block
    alignas(32) float sum[kMost]; ///< answer: of max(voxel, -1000) + 1000, bilinear within each slice, outermost voxels held
};

/// Fills `sum`.
struct RaySums {
    void (*alongRays)(RayBundle& rays);
};

extern const RaySums kRaySums; ///< the portable twin, for any block
/// Eight rays at once; null where it was not compiled. For blocks that avx2Serves().
const RaySums* raySumsAvx2();
/// At least two voxels along each axis, and 32-bit offsets within a slice's reach.
bool avx2Serves(const RayBundle& rays);

/// By the fastest twin that processor and block allow.
void sumAlongRays(RayBundle& rays);

} // namespace gauge::core
