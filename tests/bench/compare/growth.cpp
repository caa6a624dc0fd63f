#include "tests/bench/compare/growth.h"

#include "core/fast/spare_memory.h"
#include "tests/bench/compare/ours.h"
#include "tests/bench/compare/text.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <exception>
#include <fstream>
#include <vector>

namespace gauge::bench {
namespace {

/// One operation at growing sizes.
struct Course {
    std::string name;
    std::vector<int> sizes;
    std::vector<double> ms, processorMs, peakMb;

    /// t grows as the size to this power, from the first to the last size, by processor time: what other work on the machine
    /// stretches least.
    double exponent() const {
        return std::log(processorMs.back() / processorMs.front()) / std::log(static_cast<double>(sizes.back()) / sizes.front());
    }
};

/// More is called growing faster than the voxels: caches that no longer hold what they held may add a little to 1.
constexpr double kGreatestExponent = 1.15;

/// The least of the samples counts: growth is no matter of what else the machine does. The first run, which finds no memory at
/// hand, warms up and tells the memory.
void measure(Course& course, int size, const std::function<Check()>& work, int samples) {
    const auto run = timed(work);
    core::releaseSpareLarge();
    const double peakBytes = run().peakBytes;
    double seconds = 1e9, processor = 1e9;
    for (int n = 0; n < samples; ++n) {
        const Measured m = run();
        seconds = std::min(seconds, m.seconds);
        processor = std::min(processor, m.processor);
    }
    course.sizes.push_back(size);
    course.ms.push_back(1e3 * seconds);
    course.processorMs.push_back(1e3 * processor);
    course.peakMb.push_back(1e-6 * peakBytes);
}

std::vector<Course> bySlices(int samples) {
    std::vector<Course> all;
    for (const char* name : {"load", "oblique section", "slab maximum", "region growing", "components", "surface"})
        all.push_back({name, {}, {}, {}, {}});
    for (const int slices : {100, 200, 400, 800}) {
        std::fprintf(stderr, "%d slices\n", slices);
        Stage stage({.slices = slices});
        measure(all[0], slices, ourLoad(stage.raw()), samples);
        measure(all[1], slices, ourOblique(stage), samples);
        measure(all[2], slices, ourSlab(stage), samples);
        measure(all[3], slices, ourGrow(stage), samples);
        measure(all[4], slices, ourComponents(stage), samples);
        measure(all[5], slices, ourSurface(stage), samples);
    }
    return all;
}

Course byPhases(int samples) {
    Course course{"load all phases of 250 slices", {}, {}, {}, {}};
    for (const int phases : {1, 5, 10}) {
        std::fprintf(stderr, "%d phases\n", phases);
        Stage stage({.slices = 250, .phases = phases});
        measure(course, phases, ourPhases(stage.phases()), samples);
    }
    return course;
}

/// False when a course grows faster than the voxels.
bool printTable(const std::vector<Course>& all, const char* unit) {
    std::printf("| ms (processor; MB at the highest) |");
    for (const int size : all.front().sizes)
        std::printf(" %d %s |", size, unit);
    std::printf(" exponent |\n| --- |");
    for (std::size_t n = 0; n <= all.front().sizes.size(); ++n)
        std::printf(" --- |");
    std::printf("\n");
    bool withinVoxels = true;
    for (const Course& course : all) {
        std::printf("| %s |", course.name.c_str());
        for (std::size_t n = 0; n < course.ms.size(); ++n)
            std::printf(" %.3g (%.3g; %.0f) |", course.ms[n], course.processorMs[n], course.peakMb[n]);
        const bool faster = course.exponent() > kGreatestExponent;
        std::printf(" %.2f%s |\n", course.exponent(), faster ? " FASTER THAN THE VOXELS" : "");
        withinVoxels = withinVoxels && !faster;
    }
    std::printf("\n");
    return withinVoxels;
}

constexpr double kLeft = 60.0, kTop = 20.0, kWidth = 420.0, kHeight = 300.0;

/// Milliseconds over slices, both logarithmic; the dashed line grows as the slices do.
std::string drawn(const std::vector<Course>& all) {
    constexpr const char* kColours[] = {"#1b6ca8", "#c2571a", "#3a7d44", "#7a4fa3", "#a8324a", "#5c5c5c"};
    double least = 1e9, most = 0.0;
    for (const Course& course : all)
        for (const double ms : course.ms)
            least = std::min(least, ms), most = std::max(most, ms);
    least = std::pow(10.0, std::floor(std::log10(least)));
    most = std::pow(10.0, std::ceil(std::log10(most)));
    const auto x = [](double slices) { return kLeft + kWidth * std::log2(slices / 100.0) / 3.0; };
    const auto y = [&](double ms) { return kTop + kHeight * (1.0 - std::log(ms / least) / std::log(most / least)); };
    std::string svg;
    svg += text("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 370\" font-family=\"sans-serif\" font-size=\"12\">\n");
    svg += text("<rect width=\"640\" height=\"370\" fill=\"#ffffff\"/>\n");
    for (double ms = least; ms <= 1.01 * most; ms *= 10.0)
        svg += text("<path d=\"M%.1f %.1fH%.1f\" stroke=\"#cccccc\"/><text x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%g ms</text>\n", kLeft, y(ms),
            kLeft + kWidth, kLeft - 6.0, y(ms) + 4.0, ms);
    for (const int slices : {100, 200, 400, 800})
        svg += text("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d</text>\n", x(slices), kTop + kHeight + 18.0, slices);
    svg += text("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">slices of 512 x 512</text>\n", kLeft + 0.5 * kWidth, kTop + kHeight + 38.0);
    svg += text("<path d=\"M%.1f %.1fL%.1f %.1f\" stroke=\"#888888\" stroke-dasharray=\"5 4\" fill=\"none\"/>\n", x(100.0), y(least), x(800.0),
        y(std::min(most, 8.0 * least)));
    for (std::size_t n = 0; n < all.size(); ++n) {
        const Course& course = all[n];
        svg += "<path fill=\"none\" stroke-width=\"2\" stroke=\"" + std::string(kColours[n % std::size(kColours)]) + "\" d=\"";
        for (std::size_t i = 0; i < course.ms.size(); ++i)
            svg += text("%c%.1f %.1f", i == 0 ? 'M' : 'L', x(course.sizes[i]), y(course.ms[i]));
        svg += "\"/>\n";
        svg += text("<text x=\"%.1f\" y=\"%.1f\" fill=\"%s\">%s</text>\n", kLeft + kWidth + 8.0, y(course.ms.back()) + 4.0,
            kColours[n % std::size(kColours)], course.name.c_str());
    }
    return svg + "</svg>\n";
}

} // namespace

bool printGrowth(int samples, const std::string& plot) {
    try {
        const std::vector<Course> slices = bySlices(samples);
        const Course phases = byPhases(samples);
        const bool bySlicesHolds = printTable(slices, "slices"), byPhasesHolds = printTable({phases}, "phases");
        const bool holds = bySlicesHolds && byPhasesHolds;
        if (plot.empty()) return holds;
        std::ofstream out(plot);
        out << drawn(slices);
        if (out.flush()) return holds;
        std::fprintf(stderr, "Cannot write the plot to %s.\n", plot.c_str());
    } catch (const std::exception& e) {
        std::fprintf(stderr, "Cannot measure the growth: %s\n", e.what());
    }
    return false;
}

} // namespace gauge::bench
