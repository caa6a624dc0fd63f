// All sizes of a chart seated in a measured phantom.
#include "core/sizing/seat.h"
#include "sample-data/phantom.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <string>
#include <vector>

namespace {

using namespace gauge;

void seatChart(benchmark::State& state, sample_case::Shape shape) {
    const auto phantom = sample_case::makePhantom(shape, 1);
    const auto volume = phantom.rasterise();
    core::AppendageMarks marks;
    marks.atrium = phantom.marks.atrium;
    marks.tip = phantom.marks.tip;
    marks.circumflex = phantom.marks.circumflex;
    marks.ridge = phantom.marks.ridge;
    const auto measured = core::measureAppendage(volume, marks, {});
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
    question->circumflex = phantom.marks.circumflex;
    question->neighbours = {{core::Structure::Ridge, {phantom.marks.ridge}, false}};
    std::vector<double> seconds;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        const auto wall = core::seatWallOf(*measured);
        const auto answer = core::seatSizes(*wall, *question);
        seconds.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
        if (!answer) {
            state.SkipWithError(answer.error().message.c_str());
            return;
        }
        state.SetIterationTime(seconds.back());
    }
    const double worst = *std::max_element(seconds.begin(), seconds.end());
    bench::reportLine("six sizes seated, " + std::string(sample_case::name(shape)) + " (worst of 5)", 1000.0 * worst, "ms",
                      300.0);
}
BENCHMARK_CAPTURE(seatChart, oval, sample_case::Shape::Oval)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(5);
BENCHMARK_CAPTURE(seatChart, bent, sample_case::Shape::SharplyBent)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(5);

} // namespace
