// The benchmark program. How to run it: DEVELOPERS.md, "Benchmarks".
#include "tests/bench/report.h"

#include <benchmark/benchmark.h>

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    gauge::bench::printReport();
    return 0;
}
