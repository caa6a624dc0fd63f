// Sums over the points of a plane that a fit of an ellipse rests on: the hot loops of ellipse_fit.cpp. Portable twin:
// point_sums.cpp; AVX2: point_sums_avx2.cpp. Both add in the same order: for the mean the n-th point goes to partial sum
// n mod 8 and the whole is ((0th + 2nd) + (4th + 6th)) + ((1st + 3rd) + (5th + 7th)); for the others to n mod 4, and the
// whole is (0th + 2nd) + (1st + 3rd). Raw pointers only: see core/fast/fast_path.h.
#pragma once

#include <cstddef>

namespace gauge::core {

/// Sums of x^i y^j about a middle: `x2y` is that of x x y.
struct PointSums {
    double x2, xy, y2, x3, x2y, xy2, y3, x4, x3y, x2y2, xy3, y4;
};

/// Points as pairs x, y one after the other.
struct PointSumLoops {
    /// Mean of `count` (>= 1) points into middle[0] and middle[1]; not finite where a coordinate is not.
    void (*mean)(const double* points, std::size_t count, double* middle);
    void (*sums)(const double* points, std::size_t count, const double* middle, PointSums& sums);
};

extern const PointSumLoops kPointSumLoops; ///< the portable twin
const PointSumLoops* pointSumLoopsAvx2();  ///< null where it was not compiled

} // namespace gauge::core
