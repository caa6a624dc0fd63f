// Widths of a known ellipse with noise, for the tests beside this file.
#pragma once

#include "core/echo/width_ellipse.h"
#include "core/echo/width_reading.h"

#include <cmath>
#include <cstdlib>
#include <numbers>
#include <random>
#include <vector>

namespace gauge::test {

inline constexpr double kRad = std::numbers::pi / 180.0;

/// GAUGE_LONG=1 multiplies the number of random cases.
inline int cases(int usual) { return std::getenv("GAUGE_LONG") ? 20 * usual : usual; }

/// Chord through the centre from the defining equation, independent of the code under test.
inline double chord(double longest, double shortest, double directionDeg, double angleDeg) {
    const double t = (angleDeg - directionDeg) * kRad;
    return 1.0 / std::hypot(std::cos(t) / longest, std::sin(t) / shortest);
}

inline std::vector<core::WidthReading> readingsOf(double longest, double shortest, double directionDeg,
                                                  const std::vector<double>& angles, std::mt19937_64* random = nullptr,
                                                  double noiseMm = 0.0, std::optional<double> stated = std::nullopt) {
    std::normal_distribution<double> normal;
    std::vector<core::WidthReading> readings;
    for (const double a : angles)
        readings.push_back({a, chord(longest, shortest, directionDeg, a) + (random ? noiseMm * normal(*random) : 0.0),
                            stated, core::BeatPhase::EndSystole});
    return readings;
}

inline std::vector<core::AngledWidth> angled(const std::vector<core::WidthReading>& readings, double u) {
    std::vector<core::AngledWidth> widths;
    for (const auto& r : readings)
        widths.push_back({r.angleDeg * kRad, r.widthMm, u});
    return widths;
}

inline bool hasNotice(const std::vector<core::Notice>& notices, std::string_view code) {
    for (const auto& n : notices)
        if (n.code == code) return true;
    return false;
}

} // namespace gauge::test
