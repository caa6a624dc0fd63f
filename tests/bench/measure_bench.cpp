// From seeds to the complete measurement, on phantoms.
#include "core/anatomy/appendage.h"
#include "sample-data/phantom.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <string>
#include <vector>

namespace {

using namespace gauge;

void measure(benchmark::State& state, sample_case::Shape shape) {
    const auto phantom = sample_case::makePhantom(shape, 1);
    const auto volume = phantom.rasterise();
    core::AppendageMarks marks;
    marks.atrium = phantom.marks.atrium;
    marks.tip = phantom.marks.tip;
    marks.circumflex = phantom.marks.circumflex;
    marks.ridge = phantom.marks.ridge;
    std::vector<double> seconds;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        const auto measured = core::measureAppendage(volume, marks, {});
        seconds.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
        if (!measured) {
            state.SkipWithError(measured.error().message.c_str());
            return;
        }
        state.SetIterationTime(seconds.back());
    }
    const double worst = *std::max_element(seconds.begin(), seconds.end());
    bench::reportLine("seeds to measurement, " + std::string(sample_case::name(shape)) + " (worst of 3)", worst, "s",
                      5.0);
}
BENCHMARK_CAPTURE(measure, oval, sample_case::Shape::Oval)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(3);
BENCHMARK_CAPTURE(measure, bent, sample_case::Shape::SharplyBent)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(3);
BENCHMARK_CAPTURE(measure, lobed, sample_case::Shape::MultiLobed)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(3);

} // namespace
