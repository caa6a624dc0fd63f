#include "core/sizing/bend.h"

#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

ChartSize size() {
    ChartSize s;
    s.name = "22.5";
    s.nominalMm = 22.5;
    s.acceptsMm = {18.0, 21.0};
    s.compressionPercent = {3.0, 30.0}; // narrowest 15.75 mm
    return s;
}

Bend bend(double neck, std::optional<double> width, std::optional<double> depth) {
    return {95.0, neck, width, depth};
}

} // namespace

TEST(FoldedReach, FollowsFromNeckWidthAndDepthAtTheBend) {
    const double needed = 14.0;
    EXPECT_EQ(foldedReach(bend(14.0, {}, {}), size(), needed), FoldedReach::NotNeeded);
    EXPECT_EQ(foldedReach(bend(8.0, {}, 10.0), size(), needed), FoldedReach::Unknown);
    EXPECT_EQ(foldedReach(bend(8.0, 18.0, {}), size(), needed), FoldedReach::Unknown);
    EXPECT_EQ(foldedReach(bend(8.0, 18.0, 6.0), size(), needed), FoldedReach::Full);
    EXPECT_EQ(foldedReach(bend(8.0, 17.9, 6.0), size(), needed),
              FoldedReach::Partial); // narrower than it accepts
    EXPECT_EQ(foldedReach(bend(8.0, 15.7, 6.0), size(), needed),
              FoldedReach::None); // pressed beyond its band
    EXPECT_EQ(foldedReach(bend(8.0, 18.0, 1.4), size(), needed), FoldedReach::Partial); // 9.4 of 14 mm
    EXPECT_EQ(foldedReach(bend(8.0, 18.0, 1.0), size(), needed), FoldedReach::None);
    EXPECT_EQ(foldedReach(bend(8.0, 16.0, 1.4), size(), needed), FoldedReach::None);
}

// references section 0: "interior angle below 100 degrees, that is a turn of more than 80".
TEST(IsSharp, BeginsBeyondATurnOf80Degrees) {
    EXPECT_FALSE(isSharp(Bend{80.0, 10.0, {}, {}}));
    EXPECT_TRUE(isSharp(Bend{80.1, 10.0, {}, {}}));
}
