// Phantoms from seeds to the complete measurement, and all sizes of a chart seated in it.
#include "core/anatomy/appendage.h"
#include "core/sizing/seat.h"
#include "sample-data/phantom.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <memory>
#include <string>

namespace {

using namespace gauge;

/// A phantom, its volume, and the marks that a person would set.
struct MarkedPhantom {
    explicit MarkedPhantom(sample_case::Shape shape)
        : phantom(sample_case::makePhantom(shape, 1)), volume(phantom.rasterise()) {
        marks.atrium = phantom.marks.atrium;
        marks.tip = phantom.marks.tip;
        marks.circumflex = phantom.marks.circumflex;
        marks.ridge = phantom.marks.ridge;
    }
    core::Result<core::AppendageMeasurement> measured() const { return core::measureAppendage(volume, marks, {}); }

    sample_case::Phantom phantom;
    std::shared_ptr<const core::Volume> volume;
    core::AppendageMarks marks;
};

/// Runs `work`, which returns a Result, for each iteration; its worst time in seconds, below 0 when it failed.
template <class Work> double worstOf(benchmark::State& state, const Work& work) {
    double worst = -1.0;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        const auto done = work();
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        if (!done) {
            state.SkipWithError(done.error().message.c_str());
            return -1.0;
        }
        state.SetIterationTime(seconds);
        worst = std::max(worst, seconds);
    }
    return worst;
}

void measure(benchmark::State& state, sample_case::Shape shape) {
    const MarkedPhantom marked(shape);
    if (const double worst = worstOf(state, [&] { return marked.measured(); }); worst >= 0.0)
        bench::reportLine("seeds to measurement, " + std::string(sample_case::name(shape)) + " (worst of 3)", worst, "s", 5.0);
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

void seatChart(benchmark::State& state, sample_case::Shape shape) {
    const MarkedPhantom marked(shape);
    const auto measured = marked.measured();
    auto question = measured ? core::seatQuestionOf(*measured) : tl::make_unexpected(measured.error());
    if (!question) {
        state.SkipWithError(question.error().message.c_str());
        return;
    }
    question->chart.depthFrom = core::DepthFrom::LandingZone;
    for (int i = 0; i < 6; ++i) {
        core::ChartSize size;
        size.name = std::to_string(i);
        size.nominalMm = 17.5 + 3.0 * i;
        size.compressionPercent = {4.0, 32.0};
        size.leastDepthMm = 11.0 + 1.5 * i;
        size.landingOffsetMm = 8.0;
        size.discDiameterMm = size.nominalMm + 6.0;
        question->chart.sizes.push_back(size);
    }
    question->circumflex = marked.phantom.marks.circumflex;
    question->neighbours = {{core::Structure::Ridge, {marked.phantom.marks.ridge}, false}};
    const double worst = worstOf(state, [&] { return core::seatSizes(*core::seatWallOf(*measured), *question); });
    if (worst >= 0.0)
        bench::reportLine("six sizes seated, " + std::string(sample_case::name(shape)) + " (worst of 5)", 1000.0 * worst, "ms",
                          300.0);
}
BENCHMARK_CAPTURE(seatChart, oval, sample_case::Shape::Oval)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(5);
BENCHMARK_CAPTURE(seatChart, bent, sample_case::Shape::SharplyBent)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(5);

} // namespace
