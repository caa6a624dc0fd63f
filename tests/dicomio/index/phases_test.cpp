#include "dicomio/index/phases.h"

#include <gtest/gtest.h>

using namespace gauge::dicomio;

namespace {

SliceFacts at(double z) {
    SliceFacts slice;
    slice.position.z() = z;
    return slice;
}

template <class Change> std::vector<SliceFacts> gated(int phases, int places, Change change) {
    std::vector<SliceFacts> slices;
    for (int p = 0; p < phases; ++p)
        for (int k = 0; k < places; ++k) {
            SliceFacts slice = at(k);
            change(slice.phase, p, k);
            slices.push_back(slice);
        }
    return slices;
}

} // namespace

TEST(SplitPhases, SplitsByPercentageFirst) {
    const auto split = splitPhases(gated(3, 4, [](PhaseFacts& f, int p, int) {
        f.percent = 75.0 - 30.0 * p;
        f.triggerMs = 7.0; // says nothing here
    }));
    ASSERT_EQ(split.phases.size(), 3u);
    EXPECT_EQ(split.phases[0].percent, 15.0);
    EXPECT_EQ(split.phases[2].label, "75 %");
    EXPECT_EQ(split.phases[1].slices.size(), 4u);
}

TEST(SplitPhases, RanksTriggerTimesThatFollowTheHeartRate) {
    const auto split =
        splitPhases(gated(2, 5, [](PhaseFacts& f, int p, int k) { f.triggerMs = 300.0 * p + 100.0 + k; }));
    ASSERT_EQ(split.phases.size(), 2u);
    EXPECT_EQ(split.phases[0].label, "102 ms"); // the mean of 100 to 104
    EXPECT_FALSE(split.phases[0].percent);
    EXPECT_EQ(split.phases[1].slices.size(), 5u);
}

TEST(SplitPhases, FallsBackToTemporalPositionThenDescription) {
    EXPECT_EQ(splitPhases(gated(2, 3, [](PhaseFacts& f, int p, int) { f.temporal = p + 1; })).phases.size(),
              2u);
    const auto split = splitPhases(
        gated(2, 3, [](PhaseFacts& f, int p, int) { f.description = p ? "Heart 40%" : "Heart 70 %"; }));
    ASSERT_EQ(split.phases.size(), 2u);
    EXPECT_EQ(split.phases[0].percent, 40.0);
    EXPECT_EQ(split.notices.front().code, "phase-from-description");
}

TEST(SplitPhases, KeepsAPhaseWithAMissingSliceApart) {
    auto slices = gated(3, 4, [](PhaseFacts& f, int p, int) { f.percent = 10.0 * p; });
    slices.erase(slices.begin() + 5);
    const auto split = splitPhases(slices);
    ASSERT_EQ(split.phases.size(), 3u);
    EXPECT_EQ(split.phases[1].slices.size(), 3u);
}

TEST(SplitPhases, LeavesASeriesWithoutRepeatedPlacesWhole) {
    const auto split = splitPhases(gated(1, 6, [](PhaseFacts& f, int, int k) { f.triggerMs = 50.0 * k; }));
    EXPECT_EQ(split.phases.size(), 1u);
}

TEST(SplitPhases, LeavesWhatNothingTellsApartTogether) {
    EXPECT_EQ(splitPhases(gated(2, 3, [](PhaseFacts&, int, int) {})).phases.size(), 1u);
}

TEST(PercentInText, ReadsOneAndOnlyOnePercentage) {
    EXPECT_EQ(percentInText("Heart 0.6 mm 45 %"), 45.0);
    EXPECT_EQ(percentInText("37.5% RR"), 37.5);
    EXPECT_FALSE(percentInText("30 % - 70 %"));
    EXPECT_FALSE(percentInText("145 %"));
    EXPECT_FALSE(percentInText("%"));
    EXPECT_FALSE(percentInText("5" + std::string(60000, ' ') + "x%"));
}
