#include "sample-data/echo/echo_volume.h"

#include "core/parallel/parallel_for.h"
#include "sample-data/random.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::sample_case {
namespace {

/// White complex noise of one plane, smoothed in it by (1 2 1) both ways; unit mean power.
std::vector<float> plane(int columns, int rows, std::uint64_t seed, int index) {
    Random random(seed, static_cast<std::uint64_t>(static_cast<std::int64_t>(index)));
    const auto count = static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows);
    std::vector<float> noise(count), pass(count);
    for (float& value : noise)
        value = static_cast<float>(random.normal());
    const auto at = [&](int x, int y) {
        return static_cast<std::size_t>(std::clamp(y, 0, rows - 1)) * static_cast<std::size_t>(columns) +
               static_cast<std::size_t>(std::clamp(x, 0, columns - 1));
    };
    for (int y = 0; y < rows; ++y)
        for (int x = 0; x < columns; ++x)
            pass[at(x, y)] = 0.25f * noise[at(x - 1, y)] + 0.5f * noise[at(x, y)] + 0.25f * noise[at(x + 1, y)];
    for (int y = 0; y < rows; ++y)
        for (int x = 0; x < columns; ++x) // 0.375: the power that (1 2 1)/4 leaves, each way
            noise[at(x, y)] =
                (0.25f * pass[at(x, y - 1)] + 0.5f * pass[at(x, y)] + 0.25f * pass[at(x, y + 1)]) / 0.375f;
    return noise;
}

/// Factors of mean 1, alike in neighbouring planes.
std::vector<float> speckle(int columns, int rows, const EchoVolumeOptions& options, int index) {
    std::vector<float> power(static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows), 0.0f);
    for (const std::uint64_t part : {0u, 1u}) {
        std::vector<float> sum(power.size(), 0.0f);
        for (const int step : {-1, 0, 1}) {
            const std::vector<float> noise = plane(columns, rows, options.seed + 7919 * part, index + step);
            const float weight = (step == 0 ? 0.5f : 0.25f) / std::sqrt(0.375f);
            for (std::size_t i = 0; i < sum.size(); ++i)
                sum[i] += weight * noise[i];
        }
        for (std::size_t i = 0; i < sum.size(); ++i)
            power[i] += 0.5f * sum[i] * sum[i];
    }
    const auto share = static_cast<float>(options.speckleShare);
    const auto scale = static_cast<float>(2.0 / std::sqrt(std::numbers::pi));
    for (float& value : power)
        value = 1.0f - share + share * scale * std::sqrt(value);
    return power;
}

} // namespace

core::Result<std::vector<std::vector<std::uint8_t>>> echoVolume(const Scene& scene, const RasterGrid& grid,
                                                                const Eigen::Isometry3d& patientFromVolume,
                                                                const EchoVolumeOptions& options,
                                                                const core::WorkContext& work) {
    RasterGrid placed = grid;
    placed.axes = patientFromVolume.linear() * grid.axes;
    placed.firstVoxelMm = patientFromVolume * grid.firstVoxelMm;
    RasterOptions imaging;
    imaging.blurFwhmMm = options.blurFwhmMm;
    imaging.noiseSdHu = 0.0;
    const auto grey = rasterise(echoScene(scene, options.levels), placed, imaging, work);
    if (!grey) return tl::unexpected(grey.error());

    const int columns = grid.size.x(), rows = grid.size.y(), planes = grid.size.z();
    const double slope = std::tan(options.halfAngleDeg * std::numbers::pi / 180.0);
    const Eigen::Affine3d volumeFromVoxel = grid.patientFromVoxel();
    std::vector<std::vector<std::uint8_t>> frames(static_cast<std::size_t>(planes));
    core::parallelFor(frames.size(), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t k = begin; k < end; ++k) {
            const std::vector<float> factor = speckle(columns, rows, options, static_cast<int>(k));
            frames[k].resize(factor.size());
            for (int j = 0; j < rows; ++j)
                for (int i = 0; i < columns; ++i) {
                    const Eigen::Vector3d at = volumeFromVoxel * Eigen::Vector3d(i, j, static_cast<double>(k));
                    if (std::max(std::abs(at.x()), std::abs(at.y())) > slope * at.z()) continue;
                    const std::size_t pixel = static_cast<std::size_t>(j * columns + i);
                    const double value = (*grey)->at(i, j, static_cast<int>(k)) * factor[pixel];
                    frames[k][pixel] = static_cast<std::uint8_t>(std::clamp(std::lround(value), 1l, 255l));
                }
        }
    });
    return frames;
}

} // namespace gauge::sample_case
