#include "dicomio/angiography/positioner.h"

#include "tests/dicomio/angiography/header.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

Header arm(const std::string& motion, const std::string& primary = "-32.0",
           const std::string& secondary = "2.0") {
    return Header()
        .text(tags::PositionerMotion, motion, "CS")
        .text(tags::PositionerPrimaryAngle, primary)
        .text(tags::PositionerSecondaryAngle, secondary);
}

std::vector<double> primaries(const XrayFacts& facts) {
    std::vector<double> deg;
    for (const auto& frame : facts.frames)
        deg.push_back(frame.angles ? frame.angles->primaryDeg : -999.0);
    return deg;
}

} // namespace

TEST(PositionerAngles, OfAStaticArmHoldForEveryFrame) {
    const auto facts = arm("STATIC").facts(3);
    EXPECT_EQ(primaries(facts), (std::vector<double>{-32.0, -32.0, -32.0}));
    EXPECT_EQ(facts.frames[2].angles->secondaryDeg, 2.0);
    EXPECT_FALSE(facts.moving);
    EXPECT_TRUE(facts.notices.empty());
}

TEST(PositionerAngles, OfAMovingArmAddItsIncrementsFrameByFrame) {
    // Hand values: the first of as many values as frames is no step.
    const auto facts = arm("DYNAMIC")
                           .text(tags::PositionerPrimaryAngleIncrement, "0\\1\\2\\2\\1")
                           .text(tags::PositionerSecondaryAngleIncrement, "0\\0\\0.5\\0\\0")
                           .facts(5);
    EXPECT_EQ(primaries(facts), (std::vector<double>{-32.0, -31.0, -29.0, -27.0, -26.0}));
    EXPECT_EQ(facts.frames[4].angles->secondaryDeg, 2.5);
    EXPECT_TRUE(facts.moving);
}

TEST(PositionerAngles, TakeOneIncrementForAllSteps) {
    EXPECT_EQ(primaries(arm("DYNAMIC").text(tags::PositionerPrimaryAngleIncrement, "-1.5").facts(3)),
              (std::vector<double>{-32.0, -33.5, -35.0}));
}

TEST(PositionerAngles, OfAMovingArmWithoutIncrementsAreKnownForTheFirstFrameOnly) {
    const auto facts = arm("DYNAMIC").facts(2);
    EXPECT_TRUE(facts.frames[0].angles);
    EXPECT_FALSE(facts.frames[1].angles);
    EXPECT_THAT(noticeText(facts.notices, "positioner-increments-unusable"), HasSubstr("is absent"));
}

TEST(PositionerAngles, AreNotGuessedWhereStaticContradictsIncrements) {
    const auto facts = arm("STATIC").text(tags::PositionerPrimaryAngleIncrement, "0\\1").facts(2);
    EXPECT_TRUE(facts.frames[0].angles);
    EXPECT_FALSE(facts.frames[1].angles);
    EXPECT_THAT(noticeText(facts.notices, "positioner-contradictory"), HasSubstr("is STATIC"));
}

TEST(PositionerAngles, AreNotGuessedWhereIncrementsMayBeOffsets) {
    const auto facts = arm("DYNAMIC").text(tags::PositionerPrimaryAngleIncrement, "0\\1\\2\\3\\4").facts(5);
    EXPECT_FALSE(facts.frames[1].angles);
    EXPECT_THAT(noticeText(facts.notices, "positioner-increments-unusable"), HasSubstr("steps or offsets"));
}

TEST(PositionerAngles, NeedAsManyIncrementsAsFrames) {
    const auto facts = arm("DYNAMIC").text(tags::PositionerPrimaryAngleIncrement, "0\\1\\1").facts(5);
    EXPECT_FALSE(facts.frames[1].angles);
    EXPECT_THAT(noticeText(facts.notices, "positioner-increments-unusable"),
                HasSubstr("3 values for 5 frames"));
}

TEST(PositionerAngles, DoNotTurnFasterThanAnArmCan) {
    auto header = arm("DYNAMIC")
                      .text(tags::PositionerPrimaryAngleIncrement, "0\\1\\9\\9\\1")
                      .text(tags::FrameTime, "33");
    const auto facts = header.facts(5);
    EXPECT_FALSE(facts.frames[2].angles);
    EXPECT_THAT(noticeText(facts.notices, "positioner-increments-unusable"),
                HasSubstr("faster than any arm"));
}

TEST(PositionerAngles, OutOfRangeOrHalfToldAreUnknown) {
    const auto beyond = arm("STATIC", "210").facts();
    EXPECT_FALSE(beyond.frames[0].angles);
    EXPECT_THAT(noticeText(beyond.notices, "positioner-angle-unusable"),
                HasSubstr("210 degrees, outside -180"));
    EXPECT_FALSE(arm("STATIC", "-32", "95").facts().frames[0].angles);
    const auto half = Header().text(tags::PositionerPrimaryAngle, "10").facts();
    EXPECT_FALSE(half.frames[0].angles);
    EXPECT_THAT(noticeText(half.notices, "positioner-angle-unusable"), HasSubstr("is told without"));
    const auto wrong = arm("STATIC", "left").facts();
    EXPECT_THAT(noticeText(wrong.notices, "positioner-angle-unusable"), HasSubstr("holds \"left\""));
}

TEST(PositionerAngles, AboutTheTableAreNotTakenForThoseAboutThePatient) {
    const auto groups = [](const std::string& primary) {
        return Header().sequence(tags::IsocenterReferenceSystemSequence,
                                 {Header()
                                      .text(tags::PositionerIsocenterPrimaryAngle, primary)
                                      .text(tags::PositionerIsocenterSecondaryAngle, "5")});
    };
    const auto facts =
        Header().sequence(tags::PerFrameFunctionalGroupsSequence, {groups("10"), groups("11")}).facts(2);
    EXPECT_FALSE(facts.frames[1].angles);
    ASSERT_TRUE(facts.frames[1].isocentreAngles);
    EXPECT_EQ(facts.frames[1].isocentreAngles->primaryDeg, 11.0);
    EXPECT_THAT(noticeText(facts.notices, "positioner-isocentre-only"), HasSubstr("about the table only"));
}
