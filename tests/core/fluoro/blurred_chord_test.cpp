#include "core/fluoro/blurred_chord.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

/// Brute force in another way: 200,000 midpoints in u, the integrand with its square root as it stands.
double brute(double t, double radius, double blur) {
    constexpr int kPoints = 200000;
    double sum = 0.0;
    const double step = 2.0 * radius / kPoints;
    for (int i = 0; i < kPoints; ++i) {
        const double u = -radius + (i + 0.5) * step, away = (t - u) / blur;
        sum += std::sqrt(1.0 - u * u / (radius * radius)) * std::exp(-0.5 * away * away);
    }
    return sum * step / (blur * std::sqrt(2.0 * M_PI));
}

constexpr double kStated = 1e-4;

} // namespace

TEST(BlurredChord, AgreesWithBruteForce) {
    for (const double radius : {2.0, 6.0, 12.0})
        for (const double blur : {0.35, 0.8, 2.0}) {
            const BlurredChord chord(radius, blur, 40.0);
            for (const double t : {0.0, 0.37, 0.6 * radius, radius - 0.2, radius + 0.9 * blur, -radius})
                EXPECT_NEAR(chord.at(t).value, brute(t, radius, blur), kStated)
                    << radius << " " << blur << " " << t;
        }
}

TEST(BlurredChord, HoldsTheAreaOfTheBar) {
    // Blur moves, but neither makes nor takes: the integral over t is pi r / 2.
    const BlurredChord chord(5.0, 1.3, 40.0);
    double sum = 0.0;
    for (double t = -20.0; t <= 20.0; t += 0.01)
        sum += 0.01 * chord.at(t).value;
    EXPECT_NEAR(sum, M_PI * 5.0 / 2.0, 1e-3);
}

TEST(BlurredChord, HasTheDerivativesThatDifferencesGive) {
    constexpr double kStep = 1e-5;
    const auto value = [](double t, double r, double b) { return blurredChord(t, r, b, 300).value; };
    for (const double t : {-7.0, -2.0, 0.5, 5.5, 6.4}) {
        const auto at = blurredChord(t, 6.0, 0.9, 300);
        EXPECT_NEAR(at.perT, (value(t + kStep, 6, 0.9) - value(t - kStep, 6, 0.9)) / (2 * kStep), 1e-7);
        EXPECT_NEAR(at.perRadius, (value(t, 6 + kStep, 0.9) - value(t, 6 - kStep, 0.9)) / (2 * kStep), 1e-7);
        EXPECT_NEAR(at.perBlur, (value(t, 6, 0.9 + kStep) - value(t, 6, 0.9 - kStep)) / (2 * kStep), 1e-7);
    }
}
