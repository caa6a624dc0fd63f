// Ours beside the general libraries, in one table. How to run and read it: DEVELOPERS.md, "Benchmarks".
#include "tests/bench/compare/growth.h"
#include "tests/bench/compare/rows.h"

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>
#include <unistd.h>

namespace {

using namespace gauge::bench;

constexpr const char* kUsage =
    "gauge_compare [options] [part of a row's name ...]\n"
    "  --list        names of the rows\n"
    "  --samples N   of each side of each row (7)\n"
    "  --budget S    seconds after which a row takes no more than three samples (20)\n"
    "  --slices N    of the volume (400); --phases N (10); --phase-slices N (250); --coded-slices N (100)\n"
    "  --growth      time and memory by the number of slices and phases instead, and --plot FILE an SVG of it\n";

struct Arguments {
    CompareOptions options;
    StageSizes sizes;
    bool growth = false;
    std::string plot;
};

bool readArguments(int argc, char** argv, Arguments& to) {
    const auto number = [&](const char* name, int& i, int& into) {
        if (std::strcmp(argv[i], name) != 0 || i + 1 >= argc) return false;
        into = std::atoi(argv[++i]);
        return true;
    };
    int budget = static_cast<int>(to.options.budgetSeconds);
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--list") to.options.list = true;
        else if (word == "--growth") to.growth = true;
        else if (word == "--plot" && i + 1 < argc) to.plot = argv[++i];
        else if (number("--samples", i, to.options.samples) || number("--slices", i, to.sizes.slices) ||
                 number("--phases", i, to.sizes.phases) || number("--phase-slices", i, to.sizes.phaseSlices) ||
                 number("--coded-slices", i, to.sizes.compressedSlices) || number("--budget", i, budget)) continue;
        else if (word.starts_with("--")) return false;
        else to.options.wanted.push_back(word);
    }
    to.options.budgetSeconds = budget;
    const auto& s = to.sizes;
    return to.options.samples > 0 && s.slices >= 40 && s.phases > 0 && s.phaseSlices > 1 && s.phaseSlices <= s.slices &&
           s.compressedSlices > 1 && s.compressedSlices <= s.slices;
}

} // namespace

int main(int argc, char** argv) {
    Arguments arguments;
    if (!readArguments(argc, argv, arguments)) {
        std::fputs(kUsage, stderr);
        return 2;
    }
    if (arguments.growth) return printGrowth(arguments.options.samples, arguments.plot) ? 0 : 1;
    Stage stage(arguments.sizes);
    Comparison table(arguments.options);
    addLoadingRows(table, stage);
    addVolumeRows(table, stage);
    addShapeRows(table, stage);
    addWholeRows(table, stage);
    table.print();
    return table.failed() ? 1 : 0;
}
