#include "sample-data/echo/doppler.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace gauge::sample_case {
namespace {

TEST(MeanGradient, IsTheTimeMeanOfFourVSquared) {
    const InflowBeat beat{530.0, 915.0, 1.55};
    // The same integral by the midpoint rule, in small steps.
    double gradient = 0.0, integral = 0.0;
    constexpr int kSteps = 400000;
    for (int i = 0; i < kSteps; ++i) {
        const double v = velocityAt(beat, 530.0 + 385.0 * (i + 0.5) / kSteps);
        gradient += 4.0 * v * v / kSteps;
        integral += 100.0 * v * 0.385 / kSteps;
    }
    EXPECT_NEAR(meanGradientMmHg(beat), gradient, 1e-6);
    EXPECT_NEAR(velocityTimeIntegralCm(beat), integral, 1e-6);
    // Simplified Bernoulli: at most 4 v^2 of the peak.
    EXPECT_LT(meanGradientMmHg(beat), 4.0 * 1.55 * 1.55);
}

TEST(VelocityAt, IsNothingOutsideTheBeatAndNeverAboveThePeak) {
    const InflowBeat beat{100.0, 500.0, 1.4};
    EXPECT_EQ(velocityAt(beat, 99.0), 0.0);
    EXPECT_EQ(velocityAt(beat, 501.0), 0.0);
    double most = 0.0;
    for (double ms = 100.0; ms <= 500.0; ms += 0.1)
        most = std::max(most, velocityAt(beat, ms));
    EXPECT_LE(most, 1.4);
    EXPECT_GT(most, 1.35);
}

TEST(DopplerStill, ShowsTheEnvelopeAtItsSpeed) {
    DopplerStill still;
    still.rWavesMs = {100.0};
    still.beats = {{400.0, 900.0, 1.5}};
    const Picture picture = still.draw();
    for (int x = still.x0 + 120; x < still.x0 + 215; x += 10) {
        const double envelope = 100.0 * velocityAt(still.beats[0], 4.0 * (x - still.x0));
        // The lowest row with three bright neighbours in a column band: two pixels for speckle.
        int lowest = still.baselineY;
        for (int y = still.baselineY; y < still.y1; ++y) {
            double sum = 0.0;
            for (int k = -1; k <= 1; ++k)
                sum += picture.at(x + k, y).red / 3.0;
            if (sum > 60.0) lowest = y;
        }
        EXPECT_NEAR(still.cmPerSPerPixel * (lowest - still.baselineY), envelope, 5.0 * still.cmPerSPerPixel) << x;
    }
}

TEST(Ecg, PeaksAtItsRWaves) {
    const std::vector<double> waves{120.0, 920.0};
    for (const double wave : waves)
        for (double ms = wave - 60.0; ms <= wave + 60.0; ms += 1.0)
            EXPECT_LE(ecgAt(ms, waves), ecgAt(wave, waves) + 0.02);
    EXPECT_GT(ecgAt(120.0, waves), 0.8);
    EXPECT_LT(std::abs(ecgAt(600.0, waves)), 0.1);
}

} // namespace
} // namespace gauge::sample_case
