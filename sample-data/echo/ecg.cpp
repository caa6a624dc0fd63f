#include "sample-data/echo/ecg.h"

#include <cmath>
#include <numbers>

namespace gauge::sample_case {
namespace {

double bump(double ms, double at, double width) {
    const double u = (ms - at) / width;
    return std::exp(-0.5 * u * u);
}

} // namespace

double ecgAt(double ms, const std::vector<double>& rWavesMs) {
    const double turns = 2.0 * std::numbers::pi * ms / 1000.0;
    double value = 0.030 * std::sin(6.1 * turns) + 0.022 * std::sin(7.9 * turns + 1.0) +
                   0.015 * std::sin(4.7 * turns + 2.2); // fibrillation
    for (const double r : rWavesMs)
        value += bump(ms, r, 9.0) - 0.10 * bump(ms, r - 26.0, 8.0) - 0.22 * bump(ms, r + 27.0, 9.0) +
                 0.20 * bump(ms, r + 270.0, 42.0);
    return value;
}

void drawEcg(Picture& picture, const EcgStrip& strip, const std::vector<double>& rWavesMs,
             std::optional<double> cursorMs, Colour colour) {
    const double height = 0.68 * (strip.y1 - strip.y0);
    if (cursorMs) {
        const double x = strip.pixelOf(*cursorMs);
        picture.line(x, strip.y0, x, strip.y1, Colour::grey(110));
    }
    const auto y = [&](int x) {
        const double ms = 1000.0 * strip.secondsPerPixel * (x - strip.x0);
        return strip.baselineY() - height * ecgAt(ms, rWavesMs);
    };
    for (int x = strip.x0; x < strip.x1; ++x)
        picture.line(x, y(x), x + 1, y(x + 1), colour);
}

} // namespace gauge::sample_case
