#include "core/volume/chamber_volume.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gauge::core {
namespace {

constexpr double kReachInSigma = 3.0; // smoothed() cuts its kernel there

/// First and last node that is set along each axis; first beyond last when none is.
std::pair<Eigen::Array3i, Eigen::Array3i> boundsOfMask(const BoxMask& mask) {
    Eigen::Array3i low = mask.grid.size.array(), high = Eigen::Array3i::Constant(-1);
    for (std::size_t i = 0; i < mask.values.size(); ++i)
        if (mask[i]) {
            const Eigen::Array3i node = mask.grid.node(i).array();
            low = low.min(node);
            high = high.max(node);
        }
    return {low, high};
}

} // namespace

Result<std::shared_ptr<const Volume>> chamberVolume(const BoxMask& mask, double edgeSigmaMm) {
    if (!(edgeSigmaMm >= 0.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot make a volume of a mask: its edges cannot be smoothed by less than nothing.");
    const auto [first, last] = boundsOfMask(mask);
    if ((last < first).any())
        return failure(ErrorCode::NothingUsable, "Cannot make a volume of a mask: nothing is marked in it.");
    // The smoothing may reach beyond the box.
    const int margin = static_cast<int>(std::ceil(kReachInSigma * edgeSigmaMm / mask.grid.stepMm)) + 1;
    const Eigen::Array3i low = first - margin, high = last + margin;
    BoxGrid grid = mask.grid;
    grid.origin = mask.grid.patientFrom(low.cast<double>().matrix());
    grid.size = high - low + 1;
    BoxField<float> share(grid);
    for (int z = 0; z < grid.size.z(); ++z)
        for (int y = 0; y < grid.size.y(); ++y)
            for (int x = 0; x < grid.size.x(); ++x) {
                const Eigen::Array3i node = low + Eigen::Array3i(x, y, z);
                const bool inBox = (node >= 0).all() && (node < mask.grid.size.array()).all();
                share[grid.index({x, y, z})] = inBox && mask[mask.grid.index(node.matrix())] ? 1.0f : 0.0f;
            }
    if (edgeSigmaMm > 0.0) share = smoothed(share, edgeSigmaMm);
    std::vector<std::int16_t> voxels(share.values.size());
    std::transform(share.values.begin(), share.values.end(), voxels.begin(),
                   [](float inside) { return static_cast<std::int16_t>(std::lround(1000.0f * inside) - 1000); });
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.linear() = grid.axes * grid.stepMm;
    placement.translation() = grid.origin.mm;
    return Volume::make(grid.size, std::move(voxels), placement, VoxelQuantity::HounsfieldUnits, "");
}

} // namespace gauge::core
