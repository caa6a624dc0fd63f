#include "sample-data/echo/doppler.h"

#include "sample-data/random.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace gauge::sample_case {
namespace {

constexpr double kRiseShare = 0.14, kEndShare = 0.06, kSpeedAtEnd = 0.22;
/// Below this speed the wall filter lets nothing through.
constexpr double kWallFilterCmPerS = 5.0;

double smooth(double t) {
    return 0.5 - 0.5 * std::cos(std::numbers::pi * std::clamp(t, 0.0, 1.0));
}

template <class Function> double meanOver(const InflowBeat& beat, const Function& f) {
    // Simpson's rule; the envelope is smooth but for corners where its pieces join.
    constexpr int kSteps = 20000;
    double sum = 0.0;
    for (int i = 0; i <= kSteps; ++i) {
        const double ms = beat.startMs + (beat.endMs - beat.startMs) * i / kSteps;
        sum += (i == 0 || i == kSteps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0) * f(velocityAt(beat, ms));
    }
    return sum / (3.0 * kSteps);
}

} // namespace

double velocityAt(const InflowBeat& beat, double ms) {
    const double t = (ms - beat.startMs) / (beat.endMs - beat.startMs);
    if (t <= 0.0 || t >= 1.0) return 0.0;
    const double fall = 1.0 - (1.0 - kSpeedAtEnd) * std::max(0.0, t - kRiseShare) / (1.0 - kRiseShare);
    return beat.peakMPerS * smooth(t / kRiseShare) * smooth((1.0 - t) / kEndShare) * fall;
}

double meanGradientMmHg(const InflowBeat& beat) {
    return meanOver(beat, [](double v) { return 4.0 * v * v; });
}

double velocityTimeIntegralCm(const InflowBeat& beat) {
    return 100.0 * meanOver(beat, [](double v) { return v; }) * (beat.endMs - beat.startMs) / 1000.0;
}

Picture DopplerStill::draw() const {
    Picture picture(columns, rows, 3);
    Random random(seed);
    for (int x = x0; x <= x1; ++x) {
        const double ms = 1000.0 * secondsPerPixel * (x - x0);
        double envelope = 0.0;
        for (const InflowBeat& beat : beats)
            envelope = std::max(envelope, 100.0 * velocityAt(beat, ms));
        for (int y = y0; y <= y1; ++y) {
            const double speed = cmPerSPerPixel * (y - baselineY);
            double level = 6.0;
            if (speed > kWallFilterCmPerS && envelope > 0.0) {
                const double inside = std::clamp((envelope - speed) / cmPerSPerPixel + 0.5, 0.0, 1.0);
                const double share = std::min(1.0, speed / envelope);
                level += inside * (95.0 + 105.0 * share * share * share);
            } else if (std::abs(speed) > kWallFilterCmPerS && std::abs(speed) < 14.0) {
                level += 40.0 * std::exp(-std::abs(speed) / 8.0);
            }
            const double grain = std::hypot(random.normal(), random.normal()) / 1.2533;
            picture.set(x, y,
                        Colour::grey(static_cast<std::uint8_t>(
                            std::clamp(level * (0.55 + 0.45 * grain), 0.0, 255.0))));
        }
    }
    const Colour scale = Colour::grey(200);
    picture.line(x0, baselineY, x1, baselineY, Colour{210, 170, 60});
    for (int cm = 50; cm / cmPerSPerPixel + baselineY <= y1; cm += 50) {
        const int y = baselineY + static_cast<int>(std::lround(cm / cmPerSPerPixel));
        picture.line(x1 + 1, y, x1 + 6, y, scale);
        const std::string words = "-" + std::to_string(cm);
        picture.text(x1 + 9, y - 3, words, scale);
    }
    picture.text(x1 + 9, baselineY - 3, "0", scale);
    picture.text(x1 + 5, y0 - 10, "CM/S", scale);
    for (int x = x0; x <= x1; x += static_cast<int>(std::lround(0.2 / secondsPerPixel)))
        picture.line(x, y1 + 1, x, y1 + 4, scale);
    drawEcg(picture, ecg, rWavesMs, std::nullopt, Colour{90, 220, 120});
    return picture;
}

} // namespace gauge::sample_case
