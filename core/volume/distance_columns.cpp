#include "core/volume/distance_columns.h"

#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

bool anyAbove(const float* lanes, float square) {
    bool any = false;
    for (int l = 0; l < kDistanceLanes; ++l)
        any |= lanes[l] > square;
    return any;
}

void lowerBy(float* lanes, const float* from, float square) {
    for (int l = 0; l < kDistanceLanes; ++l) {
        const float candidate = from[l] + square;
        lanes[l] = candidate < lanes[l] ? candidate : lanes[l];
    }
}

void lowest(const float* in, int n, const float* squares, float* out) {
    for (int y = 0; y < n; ++y) {
        float best[kDistanceLanes];
        for (int l = 0; l < kDistanceLanes; ++l)
            best[l] = in[y * kDistanceLanes + l];
        // No sum with a greater square can be lower.
        for (int d = 1; (y - d >= 0 || y + d < n) && anyAbove(best, squares[d]); ++d) {
            if (y - d >= 0)
                lowerBy(best, in + (y - d) * kDistanceLanes, squares[d]);
            if (y + d < n)
                lowerBy(best, in + (y + d) * kDistanceLanes, squares[d]);
        }
        for (int l = 0; l < kDistanceLanes; ++l)
            out[y * kDistanceLanes + l] = best[l];
    }
}

void roots(const float* in, int count, double scale, float* out) {
    for (int i = 0; i < count; ++i)
        out[i] = in[i] >= kUnreachedSquare ? std::numeric_limits<float>::max()
                                           : static_cast<float>(std::sqrt(static_cast<double>(in[i])) * scale);
}

} // namespace

const DistanceColumns kDistanceColumns = {lowest, roots};

} // namespace gauge::core
