#include "core/volume/ray_sums.h"

#include "core/fast/fast_path.h"

#include <algorithm>
#include <limits>

namespace gauge::core {
namespace {

/// Attenuation of a voxel, thousandths of water's; what reads below air is air.
float attenuationOf(std::int16_t hu) {
    return static_cast<float>(std::max<std::int32_t>(hu, -1000) + 1000);
}

/// A place along one axis between two neighbouring voxels.
struct BetweenVoxels {
    std::int32_t index;
    float share;
    BetweenVoxels(float at, std::int32_t size) {
        const float held = std::min(std::max(at, 0.0f), static_cast<float>(size - 1));
        index = std::max(std::min(static_cast<std::int32_t>(held), size - 2), 0);
        share = held - static_cast<float>(index);
    }
};

void sumPlainly(RayBundle& rays) {
    std::fill_n(rays.sum, rays.count, 0.0f);
    const std::ptrdiff_t nextP = rays.sizeP > 1 ? rays.strideP : 0, nextQ = rays.sizeQ > 1 ? rays.strideQ : 0;
    const float half = 0.5f * static_cast<float>(rays.every);
    // Slice by slice through the whole bundle: what its rays need of a slice lies close together.
    for (std::int32_t slice = rays.first; slice <= rays.last; slice += rays.every) {
        const float at = static_cast<float>(slice);
        const float along = at - rays.middle, low = at - half, high = at + half;
        const std::int16_t* voxels = rays.voxels + std::min(slice, rays.slices - 1) * rays.strideSlice;
        for (std::int32_t r = 0; r < rays.count; ++r) {
            const float share = std::max(std::min(rays.end[r], high) - std::max(rays.begin[r], low), 0.0f);
            const BetweenVoxels p(rays.p[r] + along * rays.alongP[r], rays.sizeP);
            const BetweenVoxels q(rays.q[r] + along * rays.alongQ[r], rays.sizeQ);
            const std::int16_t* v = voxels + p.index * rays.strideP + q.index * rays.strideQ;
            const float v00 = attenuationOf(v[0]), v10 = attenuationOf(v[nextP]);
            const float v01 = attenuationOf(v[nextQ]), v11 = attenuationOf(v[nextP + nextQ]);
            const float near = v00 + (v10 - v00) * p.share, far = v01 + (v11 - v01) * p.share;
            rays.sum[r] += share * (near + (far - near) * q.share);
        }
    }
}

} // namespace

const RaySums kRaySums{sumPlainly};

bool avx2Serves(const RayBundle& rays) {
    const std::ptrdiff_t farthest = rays.sizeP * rays.strideP + rays.sizeQ * rays.strideQ;
    return rays.sizeP > 1 && rays.sizeQ > 1 && rays.slices > 1 && farthest < std::numeric_limits<std::int32_t>::max();
}

void sumAlongRays(RayBundle& rays) {
    (avx2Serves(rays) ? fastOr(kRaySums, raySumsAvx2()) : kRaySums).alongRays(rays);
}

} // namespace gauge::core
