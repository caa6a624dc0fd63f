// Contours and point sets.
#include "core/geometry/ellipse_fit.h"
#include "core/geometry/planar_contour.h"
#include "core/measure/marching_squares.h"
#include "tests/bench/compare/libraries.h"
#include "tests/bench/compare/rows.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace gauge::bench {
namespace {

constexpr double kSingleFloats = 1e-4; // the rival computes in single floats
constexpr double kRectangle = 5e-3;    // the least rectangle's side against the least width
constexpr double kSaddles = 1e-4;      // where an ambiguous cell is cut

Operation against(Stage& stage, Task task, Goal goal, const char* checks, double tolerance, Contestant ours) {
    Operation operation{goal, checks, tolerance, std::move(ours), {}, {}};
    addRivals(operation, task, stage);
    return operation;
}

/// Of the largest line: area and perimeter in pixels, added.
std::function<Check()> contour(Stage& stage) {
    return [&picture = stage.picture()]() -> Check {
        double largest = 0.0, perimeter = 0.0;
        for (const auto& line :
             core::isoContours(picture.values, picture.grid.columns, picture.grid.rows, static_cast<float>(kLevelHu))) {
            const double area = std::abs(core::signedAreaMm2(line));
            if (area <= largest) continue;
            largest = area;
            perimeter = core::perimeterMm(line);
        }
        return [=] { return largest + perimeter; };
    };
}

std::function<Check()> fits(Stage& stage) {
    return [&all = stage.ellipsePoints()]() -> Check {
        double sum = 0.0;
        for (const auto& points : all) {
            const auto ellipse = core::fitEllipseDirect(points);
            if (!ellipse) throw std::runtime_error(ellipse.error().message);
            sum += ellipse->semiMajorMm + ellipse->semiMinorMm;
        }
        return [sum, n = all.size()] { return sum / static_cast<double>(n); };
    };
}

std::function<Check()> calipers(Stage& stage) {
    return [&all = stage.contourPoints()]() -> Check {
        double sum = 0.0;
        for (const auto& points : all) {
            const core::Calipers found = core::calipers(points);
            sum += core::perimeterMm(points) + found.longest.lengthMm + found.leastWidth.lengthMm;
        }
        return [sum, n = all.size()] { return sum / static_cast<double>(n); };
    };
}

} // namespace

void addShapeRows(Comparison& table, Stage& stage) {
    table.row("sub-pixel contour of a 512 x 512 section with area and perimeter", [&] {
        return against(stage, Task::SectionContour, {.ratio = 10.0}, "px2 + px", kSaddles, {"ours", 1, timed(contour(stage))});
    });
    table.row("10,000 direct ellipse fits of 64 points", [&] {
        return against(stage, Task::EllipseFits, {.ratio = 8.0}, "mm, mean of a + b", kSingleFloats, {"ours", 1, timed(fits(stage))});
    });
    table.row("10,000 calipers of 500 points", [&] {
        return against(stage, Task::Calipers, {.ratio = 3.5}, "mm, mean of sums", kRectangle, {"ours", 1, timed(calipers(stage))});
    });
}

} // namespace gauge::bench
