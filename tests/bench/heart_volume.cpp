#include "tests/bench/heart_volume.h"

#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace gauge::bench {
namespace {

constexpr double kStepMm = 0.4, kSliceMm = 0.5;
constexpr double kArcMm = 40.0, kTubeMm = 9.0, kChamberMm = 30.0;
const Eigen::Vector3d kArcCentre(30.0, 40.0, 0.0);

} // namespace

double heartDistanceMm(const Eigen::Vector3d& p) {
    const double chamber = p.norm() - kChamberMm;
    const Eigen::Vector3d q = p - kArcCentre;
    const double ring = std::hypot(std::hypot(q.x(), q.y()) - kArcMm, q.z()) - kTubeMm;
    const double tube = q.x() > 0.0 && q.y() < 10.0 ? ring : 1e3;
    return std::min(chamber, tube);
}

Eigen::Vector3d heartTubeEnd() {
    const double y = 6.0; // a little before the cut at 10 mm
    return kArcCentre + Eigen::Vector3d(std::sqrt(kArcMm * kArcMm - y * y), y, 0.0);
}

std::shared_ptr<const core::Volume> heartVolume(const Eigen::Vector3i& size) {
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.linear() = Eigen::Vector3d(kStepMm, kStepMm, kSliceMm).asDiagonal();
    placement.translation() = Eigen::Vector3d(-0.464 * kStepMm * size.x(), -0.464 * kStepMm * size.y(), -0.5 * kSliceMm * size.z());
    const auto slice = static_cast<std::size_t>(size.x()) * static_cast<std::size_t>(size.y());
    core::LargeVector<std::int16_t> voxels(slice * static_cast<std::size_t>(size.z()));
    core::parallelFor(static_cast<std::size_t>(size.z()), 1, [&](std::size_t k, std::size_t) {
        std::uint32_t state = static_cast<std::uint32_t>(k) * 2654435761u + 1;
        std::size_t at = k * slice;
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i) {
                int noise = -510; // sum of four numbers of 0 to 255: SD 147.8, scaled to 25
                for (int n = 0; n < 4; ++n) {
                    state = state * 1664525u + 1013904223u;
                    noise += static_cast<int>(state >> 24);
                }
                const double d = heartDistanceMm(placement * Eigen::Vector3d(i, j, static_cast<double>(k)));
                const double edge = d < -1.5 ? 400.0 : d > 1.5 ? 40.0 : 40.0 + 180.0 * std::erfc(d / 0.57);
                voxels[at++] = static_cast<std::int16_t>(std::lround(edge + noise * (25.0 / 147.8)));
            }
    });
    return core::Volume::takeOver(size, std::move(voxels), placement, core::VoxelQuantity::HounsfieldUnits, "").value();
}

} // namespace gauge::bench
