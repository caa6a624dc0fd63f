// One oblique section of 512 x 512 pixels through a volume of 512 x 512 x 400, on one core.
#include "core/parallel/parallel_for.h"
#include "core/volume/section_image.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <stdexcept>
#include <vector>

namespace {

using namespace gauge::core;

std::shared_ptr<const Volume> bigVolume() {
    const Eigen::Vector3i size(512, 512, 400);
    std::vector<std::int16_t> voxels(std::size_t{512} * 512 * 400);
    for (std::size_t i = 0; i < voxels.size(); ++i)
        voxels[i] = static_cast<std::int16_t>((i * 2654435761u >> 9) % 2000);
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.linear() = Eigen::Vector3d(0.4, 0.4, 0.5).asDiagonal();
    return Volume::make(size, std::move(voxels), placement, VoxelQuantity::HounsfieldUnits, "").value();
}

/// Seconds of `work` on one thread: work that stands inside a parallelFor runs its own parallelFor alone.
double secondsOnOneCore(const auto& work) {
    double seconds = 0.0;
    parallelFor(2, 1, [&](std::size_t begin, std::size_t) {
        if (begin != 0) return;
        const auto start = std::chrono::steady_clock::now();
        work();
        seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    });
    return seconds;
}

void obliqueSection(benchmark::State& state) {
    static const auto volume = bigVolume();
    const PatientPoint middle{volume->patientFromVoxel() * Eigen::Vector3d(256, 256, 200)};
    // 512 pixels of 0.35 mm: the whole section lies inside the volume.
    const SectionGrid grid{frameOf(Plane{middle, {{0.4, -0.5, 0.77}}}), 512, 512, 0.35};
    std::vector<double> seconds;
    for (auto _ : state) {
        seconds.push_back(secondsOnOneCore([&] { benchmark::DoNotOptimize(cutSection(*volume, grid)); }));
        state.SetIterationTime(seconds.back());
    }
    std::nth_element(seconds.begin(), seconds.begin() + static_cast<std::ptrdiff_t>(seconds.size() / 2),
                     seconds.end());
    gauge::bench::reportLine("oblique section 512 x 512, one core (median)", 1e3 * seconds[seconds.size() / 2], "ms",
                             8.0);
}
BENCHMARK(obliqueSection)->UseManualTime()->Unit(benchmark::kMillisecond)->MinTime(1.0);

} // namespace
