// What a person waits for, with no library to compare with.
#include "core/anatomy/appendage.h"
#include "core/measure/section_measure.h"
#include "core/parallel/parallel_for.h"
#include "sample-data/phantom.h"
#include "tests/bench/compare/rows.h"

#include <atomic>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace gauge::bench {
namespace {

/// Planes square to the tube's middle line, from where it leaves the chamber to its end.
std::vector<core::SectionFrame> tubeFrames(int count) {
    std::vector<core::SectionFrame> frames;
    for (int n = 0; n < count; ++n) {
        const double angle = (-25.0 + 30.0 * n / count) * std::numbers::pi / 180.0;
        const Eigen::Vector3d middle(30.0 + 40.0 * std::cos(angle), 40.0 + 40.0 * std::sin(angle), 0.0);
        const core::PatientVector along{Eigen::Vector3d(-std::sin(angle), std::cos(angle), 0.0)};
        frames.push_back(core::frameOf(core::Plane{{middle}, along}));
    }
    return frames;
}

core::SectionGuide guide() {
    return {.bloodHu = 400.0, .wallHu = 40.0};
}

double areaOf(const core::Volume& volume, const core::SectionFrame& frame) {
    const auto section = core::measureSection(volume, frame, guide());
    if (!section) throw std::runtime_error(section.error().message);
    return section->metrics.areaMm2.value;
}

Operation oneSection(Stage& stage) {
    const auto frame = tubeFrames(3)[1];
    return {{.ms = 1.5}, "mm2", 0.0, {"ours", 1, timed(onOneCore([&volume = stage.volume(), frame]() -> Check {
                                          const double area = areaOf(volume, frame);
                                          return [area] { return area; };
                                      }))},
            {}, {}};
}

Operation profile(Stage& stage) {
    return {{.ms = 100.0}, "mm2, sum", 0.0, {"ours", 2, timed([&volume = stage.volume(), frames = tubeFrames(100)]() -> Check {
                                                 std::vector<double> areas(frames.size());
                                                 core::parallelFor(frames.size(), 1, [&](std::size_t begin, std::size_t end) {
                                                     for (std::size_t i = begin; i < end; ++i)
                                                         areas[i] = areaOf(volume, frames[i]);
                                                 });
                                                 double sum = 0.0;
                                                 for (const double area : areas)
                                                     sum += area;
                                                 return [sum] { return sum; };
                                             })},
            {}, {}};
}

Operation wholeMeasurement(sample_case::Shape shape) {
    const auto phantom = sample_case::makePhantom(shape, 1);
    core::AppendageMarks marks;
    marks.atrium = phantom.marks.atrium;
    marks.tip = phantom.marks.tip;
    marks.circumflex = phantom.marks.circumflex;
    marks.ridge = phantom.marks.ridge;
    return {{.ms = 2000.0}, "mL", 0.0, {"ours", 2, timed([volume = phantom.rasterise(), marks]() -> Check {
                                            auto measured = core::measureAppendage(volume, marks, {});
                                            if (!measured) throw std::runtime_error(measured.error().message);
                                            return [ml = measured->volumeMl.value] { return ml; };
                                        })},
            {}, {}};
}

} // namespace

void addWholeRows(Comparison& table, Stage& stage) {
    table.row("section contour with all metrics and uncertainty", [&] { return oneSection(stage); });
    table.row("profile of 100 sections with all metrics and uncertainty", [&] { return profile(stage); });
    for (const auto shape : {sample_case::Shape::Oval, sample_case::Shape::SharplyBent, sample_case::Shape::MultiLobed})
        table.row("seeds to complete measurement, " + std::string(sample_case::name(shape)), [&] { return wholeMeasurement(shape); });
}

} // namespace gauge::bench
