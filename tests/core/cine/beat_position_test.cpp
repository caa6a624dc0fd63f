#include "core/cine/beat_position.h"

#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

FrameTimes every40Ms(int frames, std::vector<double> rWaveMs) {
    FrameTimes times;
    times.source = FrameTimeSource::FrameTime;
    for (int i = 0; i < frames; ++i)
        times.startMs.push_back(40.0 * i);
    times.rWaveMs = std::move(rWaveMs);
    return times;
}

} // namespace

TEST(BeatPosition, CountsBeatsFromTheFirstRWave) {
    const FrameTimes times = every40Ms(60, {200.0, 1000.0, 2200.0}); // 800 ms, then 1200 ms: an irregular rhythm
    EXPECT_DOUBLE_EQ(*beatPosition(times, 5), 0.0);
    EXPECT_DOUBLE_EQ(*beatPosition(times, 15), 0.5);  // 600 ms: half of the first beat
    EXPECT_DOUBLE_EQ(*beatPosition(times, 25), 1.0);
    EXPECT_DOUBLE_EQ(*beatPosition(times, 40), 1.5);  // 1600 ms: half of the second
    EXPECT_DOUBLE_EQ(*beatPosition(times, 0), -0.2);  // 200 ms before, in mean beats of 1000 ms
    EXPECT_DOUBLE_EQ(shareOfBeat(-0.2), 0.8);
}

TEST(BeatPosition, IsUnknownWithoutTwoRWavesOrTimes) {
    EXPECT_FALSE(beatPosition(every40Ms(10, {100.0}), 3));
    EXPECT_FALSE(beatPosition(every40Ms(10, {100.0, 300.0}), 10));
    EXPECT_FALSE(frameAtBeatPosition({}, 0.5));
}

TEST(FrameAtBeatPosition, FindsTheSamePlaceInAnotherRhythm) {
    const FrameTimes slow = every40Ms(60, {0.0, 1200.0, 2400.0}), fast = every40Ms(45, {0.0, 600.0, 1200.0, 1800.0});
    const auto position = beatPosition(slow, 12); // 480 of 1200 ms: 40 %
    EXPECT_EQ(frameAtBeatPosition(fast, *position), 6); // 240 of 600 ms
}

TEST(FrameAtBeatPosition, GoesRoundByWholeBeatsWhereTheCineEnds) {
    const FrameTimes times = every40Ms(25, {0.0, 800.0}); // one beat and a little
    EXPECT_EQ(frameAtBeatPosition(times, 7.5), 10);
    EXPECT_EQ(frameAtBeatPosition(times, -3.5), 10);
}
