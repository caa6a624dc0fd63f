// Loading a series of 512 x 512 x 400: against reading the same bytes, and how much memory it takes at most.
#include "dicomio/ct/ct_reader.h"
#include "dicomio/index/series_index.h"
#include "tests/bench/ct_series.h"
#include "tests/bench/memory.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <fstream>
#include <stdexcept>
#include <unistd.h>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace gauge;

const Eigen::Vector3i kSize(512, 512, 400);
const double kVolumeBytes = 2.0 * 512 * 512 * 400;

/// The series, written once and removed at the end.
struct SeriesOnDisk {
    fs::path folder = fs::temp_directory_path() / ("gauge-bench-" + std::to_string(getpid()));
    dicomio::SeriesIndex index;

    SeriesOnDisk() {
        bench::writeCtSeries(folder, kSize);
        auto found = dicomio::indexFolder(folder);
        if (!found) throw std::runtime_error(found.error().message);
        index = std::move(*found);
    }
    ~SeriesOnDisk() {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    const dicomio::SeriesEntry& series() const { return index.series.front(); }
};

const SeriesOnDisk& onDisk() {
    static const SeriesOnDisk instance;
    return instance;
}

double secondsOf(const auto& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Every byte of every file, one after the other, into one block: what loading cannot do without.
void readBytes(std::vector<char>& block) {
    std::size_t at = 0;
    for (const auto& image : onDisk().series().phases.front().images) {
        std::ifstream in(image.file, std::ios::binary);
        const auto size = static_cast<std::size_t>(fs::file_size(image.file));
        if (block.size() < at + size) block.resize(at + size);
        in.rdbuf()->pubsetbuf(nullptr, 0);
        in.read(block.data() + at, static_cast<std::streamsize>(size));
        at += size;
    }
    benchmark::DoNotOptimize(block.data());
}

void loadOnce() {
    auto volume = dicomio::readCtPhase(onDisk().series(), 0);
    if (!volume) throw std::runtime_error(volume.error().message);
    benchmark::DoNotOptimize(volume->volume->data());
}

void loadSeries(benchmark::State& state) {
    std::vector<double> reading, loading;
    onDisk();
    for (auto _ : state) {
        // By turns, so that both see the same warm file cache. A fresh block each time: both pay for its pages.
        reading.push_back(secondsOf([] {
            std::vector<char> block(static_cast<std::size_t>(kVolumeBytes));
            readBytes(block);
        }));
        loading.push_back(secondsOf(loadOnce));
        state.SetIterationTime(loading.back());
    }
    std::nth_element(reading.begin(), reading.begin() + reading.size() / 2, reading.end());
    std::nth_element(loading.begin(), loading.begin() + loading.size() / 2, loading.end());
    const double read = reading[reading.size() / 2], load = loading[loading.size() / 2];
    state.counters["reading_s"] = read;
    bench::reportLine("load 512 x 512 x 400, times reading its bytes (medians)", load / read, "x", 1.5);
}
BENCHMARK(loadSeries)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(7);

void loadPeakMemory(benchmark::State& state) {
    onDisk();
    double most = 0.0;
    for (auto _ : state) {
        const double before = static_cast<double>(bench::processMemory("VmRSS"));
        bench::forgetPeak();
        loadOnce();
        most = std::max(most, static_cast<double>(bench::processMemory("VmHWM")) - before);
    }
    state.counters["peak_MB"] = most / 1e6;
    bench::reportLine("peak memory while loading, times the volume", most / kVolumeBytes, "x", 1.3);
}
BENCHMARK(loadPeakMemory)->Unit(benchmark::kMillisecond)->Iterations(2);

void indexSeries(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(dicomio::indexFolder(onDisk().folder));
}
BENCHMARK(indexSeries)->Unit(benchmark::kMillisecond)->Iterations(3);

} // namespace
