#include "core/volume/phase_choice.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

std::vector<PhaseInfo> percents(std::initializer_list<double> values) {
    std::vector<PhaseInfo> phases;
    for (const double v : values)
        phases.push_back({v, {}, {}, std::to_string(static_cast<int>(v)) + " %", 100});
    return phases;
}

std::size_t byPercent(std::span<const PhaseInfo> phases, double percent) {
    return nearestByPercent(phases, percent)->phase;
}

} // namespace

TEST(NearestByPercent, TakesTheNearestAndSaysWhatWasTaken) {
    const auto phases = percents({5, 40, 55, 75});
    const auto exact = nearestByPercent(phases, 40);
    EXPECT_EQ(exact->phase, 1u);
    EXPECT_EQ(exact->words, "");
    const auto near = nearestByPercent(phases, 70);
    EXPECT_EQ(near->phase, 3u);
    EXPECT_EQ(near->words, "Asked for 70 %, taken: 75 %, the nearest there is.");
}

TEST(NearestByPercent, GoesAroundTheBeat) {
    const auto phases = percents({2, 40, 90});
    EXPECT_EQ(byPercent(phases, 98), 0u); // 4 away across the R wave; 90 is 8 away
    EXPECT_EQ(byPercent(phases, 100), 0u);
    EXPECT_EQ(byPercent(percents({10, 100}), 0), 1u);
}

TEST(NearestByPercent, PrefersTheLargerOfEquallyNearOnes) {
    auto phases = percents({40, 50, 50});
    EXPECT_EQ(byPercent(phases, 45), 0u);
    phases[2].bytes = 200;
    EXPECT_EQ(byPercent(phases, 45), 2u);
}

TEST(NearestByPercent, ComputesFromDelayAndBeatAndSaysSo) {
    const std::vector<PhaseInfo> phases{{{}, 200.0, 800.0, "200 ms", 1}, {{}, 400.0, 800.0, "400 ms", 1}};
    const auto choice = nearestByPercent(phases, 50);
    EXPECT_EQ(choice->phase, 1u);
    EXPECT_THAT(choice->words, HasSubstr("Phase 400 ms lies at 50 % by its R-R interval of 800 ms"));
}

TEST(NearestByDelay, TakesTheNearestAndComputesWhereThereIsNoDelay) {
    const std::vector<PhaseInfo> known{{{}, 100.0, {}, "100 ms", 1}, {{}, 300.0, {}, "300 ms", 1}};
    const auto choice = nearestByDelay(known, 220);
    EXPECT_EQ(choice->phase, 1u);
    EXPECT_EQ(choice->words, "Asked for 220 ms, taken: 300 ms, the nearest there is.");
    const std::vector<PhaseInfo> computed{{40.0, {}, 1000.0, "40 %", 1}, {75.0, {}, 1000.0, "75 %", 1}};
    const auto second = nearestByDelay(computed, 750);
    EXPECT_EQ(second->phase, 1u);
    EXPECT_EQ(second->words,
              "Phase 75 % lies at 750 ms by its R-R interval of 1000 ms; the images do not say so "
              "themselves.");
}

TEST(NearestByDelay, RefusesWhatCannotBeChosen) {
    const auto phases = percents({40});
    const auto none = nearestByDelay(phases, 300);
    EXPECT_EQ(none.error().code, ErrorCode::NotFound);
    EXPECT_THAT(none.error().message,
                HasSubstr("Cannot choose a phase at 300 ms: no phase of the series says where"));
    const auto negative = nearestByDelay(phases, -1);
    EXPECT_EQ(negative.error().code, ErrorCode::InvalidArgument);
    EXPECT_THAT(negative.error().message, HasSubstr("-1 ms after the R wave: 0 or more is needed"));
    EXPECT_THAT(nearestByPercent(phases, 101).error().message, HasSubstr("101 %: 0 to 100 is needed"));
    EXPECT_EQ(nearestByPercent(phases, std::nan("")).error().code, ErrorCode::InvalidArgument);
    EXPECT_EQ(nearestByPercent({}, 45).error().code, ErrorCode::NotFound);
}
