#include "core/fluoro/mask_subtraction.h"

#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

/// Two by one pixels; the values of each frame as given.
class Frames : public FrameSource {
public:
    explicit Frames(std::vector<std::vector<std::int32_t>> values) : m_values(std::move(values)) {}
    int columns() const override { return 2; }
    int rows() const override { return 1; }
    int count() const override { return static_cast<int>(m_values.size()); }
    bool isColour() const override { return false; }
    Result<RgbFrame> rgb(int) const override { return failure(ErrorCode::ObjectUnsupported, "grey"); }
    Result<GreyFrame> grey(int frame) const override {
        return GreyFrame{2, 1, m_values[static_cast<std::size_t>(frame)]};
    }

private:
    std::vector<std::vector<std::int32_t>> m_values;
};

const Frames kRun({{100, 50}, {104, 50}, {60, 50}, {40, 50}});

MaskSubtraction average(std::vector<int> frames) {
    MaskSubtraction mask;
    mask.maskFrames = std::move(frames);
    return mask;
}

} // namespace

TEST(SubtractMask, TakesTheMeanOfTheMaskFramesAway) {
    const auto seen = valueOf(subtractMask(kRun, 2, average({0, 1}), IntensityRelation::Logarithmic));
    EXPECT_EQ(seen.values, (std::vector<std::int32_t>{60 - 102, 0}));
}

TEST(SubtractMask, AveragesContrastFramesWhereAsked) {
    auto mask = average({0});
    mask.contrastFrames = 2;
    EXPECT_EQ(valueOf(subtractMask(kRun, 2, mask, IntensityRelation::Displayed)).values[0], 50 - 100);
    EXPECT_EQ(valueOf(subtractMask(kRun, 3, mask, IntensityRelation::Displayed)).values[0],
              40 - 100); // the last alone
}

TEST(SubtractMask, UsesLogarithmsForLinearValues) {
    const auto seen = valueOf(subtractMask(kRun, 3, average({0}), IntensityRelation::Linear));
    EXPECT_EQ(seen.values[0], std::lround(1000.0 * std::log(41.0 / 101.0)));
    EXPECT_EQ(seen.values[1], 0);
}

TEST(SubtractMask, TakesAnEarlierFrameForTimeDifferences) {
    MaskSubtraction mask;
    mask.operation = MaskOperation::TimeDifference;
    mask.timeOffset = 2;
    EXPECT_EQ(valueOf(subtractMask(kRun, 3, mask, IntensityRelation::Displayed)).values[0], 40 - 104);
    EXPECT_THAT(errorOf(subtractMask(kRun, 1, mask, IntensityRelation::Displayed)).message,
                HasSubstr("mask frame 0"));
}

TEST(SubtractMask, AppliesOnlyWithinItsRanges) {
    auto mask = average({0});
    mask.ranges = {{2, 3}};
    EXPECT_TRUE(mask.appliesTo(3));
    EXPECT_FALSE(mask.appliesTo(1));
    EXPECT_THAT(errorOf(subtractMask(kRun, 1, mask, IntensityRelation::Displayed)).message,
                HasSubstr("does not apply to frame 2"));
}

TEST(SubtractMask, RefusesFramesThatDoNotExist) {
    EXPECT_THAT(errorOf(subtractMask(kRun, 4, average({0}), IntensityRelation::Displayed)).message,
                HasSubstr("frame 5 of 4 does not exist"));
    EXPECT_THAT(errorOf(subtractMask(kRun, 1, average({7}), IntensityRelation::Displayed)).message,
                HasSubstr("mask frame 8 is not among the 4"));
    EXPECT_THAT(errorOf(subtractMask(kRun, 1, average({}), IntensityRelation::Displayed)).message,
                HasSubstr("names no mask frame"));
}
