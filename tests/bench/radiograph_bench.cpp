// Simulated radiographs through a volume of 512 x 512 x 400: a whole picture, the preview, and pictures while the C-arm
// turns.
#include "core/fluoro/c_arm.h"
#include "core/volume/radiograph.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cmath>
#include <string>
#include <vector>

namespace {

using namespace gauge;

/// A body of water with a bright chamber and noise, 0.4 x 0.4 x 0.5 mm.
const core::Volume& chest() {
    static const auto made = [] {
        const Eigen::Vector3i size(512, 512, 400);
        std::vector<std::int16_t> voxels;
        voxels.reserve(static_cast<std::size_t>(512) * 512 * 400);
        std::uint32_t state = 1;
        for (int k = 0; k < 400; ++k)
            for (int j = 0; j < 512; ++j)
                for (int i = 0; i < 512; ++i) {
                    state = state * 1664525u + 1013904223u;
                    const double chamber = std::hypot(0.4 * (i - 256), 0.4 * (j - 256), 0.5 * (k - 200));
                    const double body = std::hypot((i - 256) / 250.0, (j - 256) / 200.0);
                    const int hu = chamber < 30.0 ? 400 : body < 1.0 ? 40 : -1000;
                    voxels.push_back(static_cast<std::int16_t>(hu + static_cast<int>(state >> 26) - 32));
                }
        Eigen::Affine3d placement = Eigen::Affine3d::Identity();
        placement.linear() = Eigen::Vector3d(0.4, 0.4, 0.5).asDiagonal();
        placement.translation() = Eigen::Vector3d(-102.2, -102.2, -99.75);
        return core::Volume::make(size, std::move(voxels), placement, core::VoxelQuantity::HounsfieldUnits, "").value();
    }();
    return *made;
}

core::PinholeCamera cameraAt(const core::CArmAngles& angles, int pixels) {
    core::CArm arm;
    arm.angles = angles;
    arm.sourceToIsocentreMm = 750.0;
    arm.sourceToDetectorMm = 1100.0;
    arm.imagerSpacingMm = Eigen::Vector2d::Constant(256.0 / pixels);
    arm.columns = arm.rows = pixels;
    return core::cameraOf(arm).value();
}

double median(std::vector<double>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

double millisecondsOf(const auto& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return 1e3 * std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The median over the usual working view, one from the side and one from the head: rays along each of the volume's axes.
void radiograph(benchmark::State& state, const std::string& name, int pixels, int every, double goalMs) {
    chest();
    std::vector<double> times;
    std::size_t turn = 0;
    const core::CArmAngles views[] = {{-30.0, -20.0}, {85.0, 5.0}, {10.0, 70.0}};
    for (auto _ : state) {
        const auto camera = cameraAt(views[turn++ % 3], pixels);
        times.push_back(millisecondsOf([&] {
            benchmark::DoNotOptimize(core::simulateRadiograph(chest(), camera, {.everySlice = every})->waterMm.data());
        }));
        state.SetIterationTime(1e-3 * times.back());
    }
    bench::reportLine(name, median(times), "ms", goalMs);
}

void wholeRadiograph(benchmark::State& state) {
    // 1951 ms: the fastest general library when the goal was set; ours at most a fifth of it.
    radiograph(state, "simulated radiograph 512 x 512 through 512 x 512 x 400 (median)", 512, 1, 390.0);
}
BENCHMARK(wholeRadiograph)->UseManualTime()->Unit(benchmark::kMillisecond)->MinTime(2.0);

void radiographPreview(benchmark::State& state) {
    radiograph(state, "simulated radiograph 256 x 256, preview (median)", 256, 1, 60.0);
}
BENCHMARK(radiographPreview)->UseManualTime()->Unit(benchmark::kMillisecond)->MinTime(1.0);

void radiographWhileTurning(benchmark::State& state) {
    // At least 10 pictures a second.
    radiograph(state, "simulated radiograph 256 x 256 while turning, every second slice (median)", 256, 2, 100.0);
}
BENCHMARK(radiographWhileTurning)->UseManualTime()->Unit(benchmark::kMillisecond)->MinTime(1.0);

} // namespace
