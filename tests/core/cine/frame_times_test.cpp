#include "core/cine/frame_times.h"
#include "core/cine/probe_angle.h"

#include <gtest/gtest.h>
#include <limits>

using namespace gauge::core;

TEST(FrameTimes, CountBetweenFramesEitherWay) {
    const FrameTimes times{FrameTimeSource::FrameTimeVector, {0.0, 40.0, 90.0}, {}};
    EXPECT_DOUBLE_EQ(times.betweenMs(0, 2).value(), 90.0);
    EXPECT_DOUBLE_EQ(times.betweenMs(2, 1).value(), -50.0);
    EXPECT_EQ(times.betweenMs(0, 3), std::nullopt);
    EXPECT_EQ(times.betweenMs(-1, 0), std::nullopt);
}

TEST(FrameTimes, AreNotInventedWhenNothingTells) {
    EXPECT_FALSE(FrameTimes{}.known());
    EXPECT_EQ(FrameTimes{}.betweenMs(0, 0), std::nullopt);
    EXPECT_EQ(FrameTimes{}.heartRatePerMinute(), std::nullopt);
    EXPECT_EQ(words(FrameTimes{}.source), "not known");
}

TEST(FrameTimes, HeartRateIsOfTheMeanInterval) {
    FrameTimes times;
    times.rWaveMs = {100.0};
    EXPECT_EQ(times.heartRatePerMinute(), std::nullopt) << "one R wave is no interval";
    times.rWaveMs = {100.0, 900.0, 2100.0};
    EXPECT_DOUBLE_EQ(times.heartRatePerMinute().value(), 60.0); // two intervals of 1000 ms on average
    times.rWaveMs = {100.0, 100.0};
    EXPECT_EQ(times.heartRatePerMinute(), std::nullopt);
}

TEST(ProbeAngle, IsTakenIntoTheHalfTurn) {
    const auto deg = [](double d) { return probeAngle(d, ProbeAngleSource::Person)->deg; };
    EXPECT_DOUBLE_EQ(deg(0.0), 0.0);
    EXPECT_DOUBLE_EQ(deg(135.0), 135.0);
    EXPECT_DOUBLE_EQ(deg(180.0), 0.0) << "the same plane, mirrored";
    EXPECT_DOUBLE_EQ(deg(-45.0), 135.0);
    EXPECT_DOUBLE_EQ(deg(405.0), 45.0);
    EXPECT_DOUBLE_EQ(deg(-1e-300), 0.0) << "never the excluded end";
}

TEST(ProbeAngle, IsUnsetWithoutANumber) {
    EXPECT_EQ(probeAngle(std::numeric_limits<double>::quiet_NaN(), ProbeAngleSource::File), std::nullopt);
    EXPECT_EQ(probeAngle(std::numeric_limits<double>::infinity(), ProbeAngleSource::File), std::nullopt);
}

TEST(ProbeAngle, SaysWhoSetIt) {
    EXPECT_EQ(words(ProbeAngleSource::File), "from the file");
    EXPECT_EQ(words(ProbeAngleSource::Person), "set by hand");
}
