// Trilinear values along straight rows of a volume: the hot loop of sections, slabs, boxes and profiles across a border.
// Portable twin: trilinear_rows.cpp; AVX2: trilinear_rows_avx2.cpp (four places at a time; the two neighbours along i
// come in one 32-bit gather). Both give the bits of TrilinearSampler (sampling.h), which works point by point.
// Raw pointers only: see core/fast/fast_path.h.
#pragma once

#include <cstddef>
#include <cstdint>

namespace gauge::core {

/// Voxels, i fastest.
struct VoxelBlock {
    const std::int16_t* values;
    int size[3]; ///< each >= 1
};

/// Places start + n * step, n = 0, 1, …, in voxel coordinates, added in this order.
struct VoxelRow {
    double start[3];
    double step[3];
};

/// What counts as outside, and what is written there.
struct OutsideRule {
    double toleranceVoxels; ///< a place this far beyond the block of voxel centres still counts as on its face
    float value;
};

/// The planes of a slab: at each place + k * step, k = -half … half.
struct SlabPlanes {
    double step[3];
    int half;
    bool maximum; ///< otherwise the mean
};

/// out[n - first] for n = first … end - 1.
struct TrilinearRows {
    /// Values held at the faces.
    void (*held)(const VoxelBlock& block, const VoxelRow& row, int first, int end, double* out);
    /// Values inside, `outside.value` elsewhere.
    void (*inside)(const VoxelBlock& block, const VoxelRow& row, const OutsideRule& outside, int first, int end,
                   float* out);
    /// Mean or maximum over the planes of those inside, `outside.value` where none is.
    void (*slab)(const VoxelBlock& block, const VoxelRow& row, const SlabPlanes& planes, const OutsideRule& outside,
                 int first, int end, float* out);
};

extern const TrilinearRows kTrilinearRows;  ///< the portable twin
const TrilinearRows* trilinearRowsAvx2();   ///< null where it was not compiled

} // namespace gauge::core
