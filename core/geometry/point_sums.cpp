#include "core/geometry/point_sums.h"

namespace gauge::core {
namespace {

void meanOfPoints(const double* points, std::size_t count, double* middle) {
    for (std::size_t d = 0; d < 2; ++d) {
        double at[8] = {};
        for (std::size_t n = 0; n < count; ++n)
            at[n % 8] += points[2 * n + d];
        middle[d] = (((at[0] + at[2]) + (at[4] + at[6])) + ((at[1] + at[3]) + (at[5] + at[7]))) / static_cast<double>(count);
    }
}

struct Lanes {
    double at[4] = {};
    double sum() const { return (at[0] + at[2]) + (at[1] + at[3]); }
};

void sumsOfPoints(const double* points, std::size_t count, const double* middle, PointSums& sums) {
    Lanes s[12];
    for (std::size_t n = 0; n < count; ++n) {
        const double x = points[2 * n] - middle[0], y = points[2 * n + 1] - middle[1];
        const double xx = x * x, xy = x * y, yy = y * y;
        const double terms[12] = {xx, xy, yy, xx * x, xx * y, x * yy, yy * y, xx * xx, xx * xy, xx * yy, xy * yy, yy * yy};
        for (std::size_t t = 0; t < 12; ++t)
            s[t].at[n % 4] += terms[t];
    }
    sums = {s[0].sum(), s[1].sum(), s[2].sum(), s[3].sum(), s[4].sum(),  s[5].sum(),
            s[6].sum(), s[7].sum(), s[8].sum(), s[9].sum(), s[10].sum(), s[11].sum()};
}

} // namespace

const PointSumLoops kPointSumLoops = {meanOfPoints, sumsOfPoints};

} // namespace gauge::core
