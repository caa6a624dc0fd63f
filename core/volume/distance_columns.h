// The hot loop of the distance transform: along one axis, sixteen lines side by side. Portable twin:
// distance_columns.cpp; AVX2: distance_columns_avx2.cpp. The results are minima of the same sums, so that they do not
// depend on the order in which these are looked at. Raw pointers only: see core/fast/fast_path.h.
#pragma once

namespace gauge::core {

constexpr int kDistanceLanes = 16;
/// Squared distance of a place from which nothing was reached; any real one is smaller.
constexpr float kUnreachedSquare = 1e20f;

struct DistanceColumns {
    /// out[y][l] = least in[i][l] + squares[|y - i|] over i = 0 … n - 1, for lanes l = 0 … 15.
    /// Looks no further than the result so far allows: quick where distances are short.
    /// @param in, out  n rows of 16 values >= 0.  @param squares  n values, increasing from 0.
    void (*lowest)(const float* in, int n, const float* squares, float* out);
    /// out[i] = square root of in[i] (in double) times `scale`, rounded; the greatest float from kUnreachedSquare on.
    /// @param count  a multiple of 4.
    void (*roots)(const float* in, int count, double scale, float* out);
};

extern const DistanceColumns kDistanceColumns; ///< the portable twin
const DistanceColumns* distanceColumnsAvx2();  ///< null where it was not compiled

} // namespace gauge::core
