#include "core/geometry/point_sums.h"

namespace gauge::core {
namespace {

constexpr std::size_t kLanes = 4;

struct Lanes {
    double at[kLanes] = {};
    double sum() const { return (at[0] + at[2]) + (at[1] + at[3]); }
};

void meanOfPoints(const double* points, std::size_t count, double* middle) {
    Lanes x, y;
    for (std::size_t n = 0; n < count; ++n) {
        x.at[n % kLanes] += points[2 * n];
        y.at[n % kLanes] += points[2 * n + 1];
    }
    middle[0] = x.sum() / static_cast<double>(count);
    middle[1] = y.sum() / static_cast<double>(count);
}

void sumsOfPoints(const double* points, std::size_t count, const double* middle, PointSums& sums) {
    Lanes s[14];
    for (std::size_t n = 0; n < count; ++n) {
        const std::size_t lane = n % kLanes;
        const double x = points[2 * n] - middle[0], y = points[2 * n + 1] - middle[1];
        const double xx = x * x, xy = x * y, yy = y * y;
        const double terms[14] = {x,      y,      xx,     xy,      yy,      xx * x,  xx * y,
                                  x * yy, yy * y, xx * xx, xx * xy, xx * yy, xy * yy, yy * yy};
        for (std::size_t t = 0; t < 14; ++t)
            s[t].at[lane] += terms[t];
    }
    sums = {s[0].sum(), s[1].sum(), s[2].sum(), s[3].sum(),  s[4].sum(),  s[5].sum(),  s[6].sum(),
            s[7].sum(), s[8].sum(), s[9].sum(), s[10].sum(), s[11].sum(), s[12].sum(), s[13].sum()};
}

} // namespace

const PointSumLoops kPointSumLoops = {meanOfPoints, sumsOfPoints};

} // namespace gauge::core
