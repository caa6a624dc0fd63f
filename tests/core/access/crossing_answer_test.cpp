#include "core/access/crossing_answer.h"

#include "tests/core/access/upright_septum.h"

#include <algorithm>
#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;
using testing::Not;

namespace {

CrossingAnswer answerOf(const CrossingScene& scene, const CrossingLimits& limits) {
    return need(crossingAnswer(scene, need(crossingMap(scene, limits.steering, 1.0)), limits));
}

bool has(const CrossingAnswer& answer, const std::string& code) {
    return std::any_of(answer.notices.begin(), answer.notices.end(), [&](const Notice& n) { return n.code == code; });
}

/// The axis points up by atan(1/2), so that a straight sheath arrives within 30 degrees from 2.4 mm above the middle downwards:
/// the line from the height h rises by atan(-h / 40), and 26.565 + atan(h / 40) = 30 at h = 2.4.
CrossingScene slanted() {
    return uprightScene(26.565);
}

CrossingLimits band(double low, double high) {
    CrossingLimits limits;
    limits.lowestMm = low;
    limits.highestMm = high;
    return limits;
}

} // namespace

TEST(CrossingAnswer, SameCrossingWhereOnePlaceMeetsBoth) {
    const auto answer = answerOf(slanted(), {}); // 35 … 45 mm: from the middle up; closure: up to 2.4 mm above it
    EXPECT_EQ(answer.advice, CrossingAdvice::SameCrossing);
    EXPECT_THAT(answer.sentence, HasSubstr("One crossing can serve both"));
    EXPECT_THAT(answer.sentence, HasSubstr("35 to 45 mm over the plane of the mitral annulus"));
    EXPECT_THAT(answer.sentence, HasSubstr("within 30 degrees"));
    EXPECT_THAT(answer.sentence, HasSubstr("24 points of the fossa's rim"));
    EXPECT_THAT(answer.sentence, HasSubstr("12 of the mitral annulus"));
    EXPECT_THAT(answer.sentence, HasSubstr("the local protocol and the operator decide"));
    ASSERT_TRUE(answer.place);
    EXPECT_TRUE(has(answer, "crossing-little-room")); // a strip of 2.4 mm
    EXPECT_TRUE(has(answer, "crossing-level-tethered"));
    EXPECT_FALSE(has(answer, "septum-sides-by-axes"));
}

TEST(CrossingAnswer, SteerableWhereOnlyABendArrives) {
    const auto answer = answerOf(slanted(), band(39, 45));
    EXPECT_EQ(answer.advice, CrossingAdvice::SameWithSteerable);
    EXPECT_THAT(answer.sentence, HasSubstr("if the closure uses a steerable sheath"));
    EXPECT_THAT(answer.sentence, HasSubstr("bend of radius 25 mm"));
    ASSERT_TRUE(answer.place);
    EXPECT_GT(answer.place->y(), 4.0);
}

TEST(CrossingAnswer, SecondLowerCrossingWithoutASteerableSheath) {
    auto limits = band(39, 45);
    limits.steerableAtHand = false;
    const auto answer = answerOf(slanted(), limits);
    EXPECT_EQ(answer.advice, CrossingAdvice::SecondLowerCrossing);
    EXPECT_THAT(answer.sentence, HasSubstr("No single crossing serves both with a straight sheath."));
    EXPECT_THAT(answer.sentence, HasSubstr("second, lower crossing"));
    EXPECT_THAT(answer.sentence, HasSubstr("39 to 45 mm"));
    ASSERT_TRUE(answer.place);
    EXPECT_LT(answer.place->y(), 2.4);
    EXPECT_TRUE(has(answer, "steerable-would-serve"));
}

TEST(CrossingAnswer, SecondLowerCrossingWhereNoBendFits) {
    auto limits = band(39, 45);
    limits.steering = {90.0, 5.0}; // stiff, and it leaves the septum almost square
    const auto answer = answerOf(slanted(), limits);
    EXPECT_EQ(answer.advice, CrossingAdvice::SecondLowerCrossing);
    EXPECT_THAT(answer.sentence, HasSubstr("also not with a steerable sheath"));
}

TEST(CrossingAnswer, ClosureLastWhereNothingServesTheClosure) {
    CrossingLimits limits;
    limits.steerableAtHand = false;
    const auto answer = answerOf(uprightScene(70.0), limits);
    EXPECT_EQ(answer.advice, CrossingAdvice::ClosureLast);
    EXPECT_THAT(answer.sentence, HasSubstr("Cross for the repair and close last"));
    EXPECT_THAT(answer.sentence, HasSubstr("the least is 56 degrees")); // 70 - atan(10/40) = 55.96
    EXPECT_FALSE(answer.place);
}

// The other way round: an axis that points down is reached from above, where the repair's band no longer is.
TEST(CrossingAnswer, ClosureLastWhereOnlyHigherPlacesServeIt) {
    auto limits = band(26, 33);
    limits.steerableAtHand = false;
    const auto answer = answerOf(uprightScene(-35.0), limits);
    EXPECT_EQ(answer.advice, CrossingAdvice::ClosureLast);
    EXPECT_GT(answer.closure.areaMm2, kLeastRegionMm2);
}

TEST(CrossingAnswer, WithoutARepairOnlyTheClosureCounts) {
    CrossingLimits limits;
    limits.repairPlanned = false;
    const auto straight = answerOf(slanted(), limits);
    EXPECT_EQ(straight.advice, CrossingAdvice::ClosureOnly);
    EXPECT_THAT(straight.sentence, HasSubstr("only the closure counts"));
    EXPECT_THAT(straight.sentence, HasSubstr("a straight sheath arrives within 30 degrees"));
    const auto bent = answerOf(uprightScene(60.0), limits);
    EXPECT_THAT(bent.sentence, HasSubstr("a steerable one does so over"));
    limits.steerableAtHand = false;
    EXPECT_THAT(answerOf(uprightScene(70.0), limits).sentence, HasSubstr("No crossing of this fossa lets the sheath arrive"));
}

TEST(CrossingAnswer, SaysWhatIsMissing) {
    auto marks = uprightMarks();
    const auto noTarget = answerOf(need(crossingScene(marks, std::nullopt, {{0, 0, 0}})), {});
    EXPECT_EQ(noTarget.advice, CrossingAdvice::Unanswered);
    EXPECT_THAT(noTarget.sentence, HasSubstr("the appendage is not measured"));
    marks.coaptation.clear();
    CrossingLimits limits;
    limits.datum = HeightDatum::Coaptation;
    EXPECT_THAT(answerOf(need(crossingScene(marks, uprightTarget(20), {{0, 0, 0}})), limits).sentence, HasSubstr("no point of coaptation is marked"));
    marks.annulus.clear();
    EXPECT_THAT(answerOf(need(crossingScene(marks, uprightTarget(20), {{0, 0, 0}})), limits).sentence, HasSubstr("the mitral annulus is not marked"));
    const auto high = answerOf(slanted(), band(60, 70));
    EXPECT_EQ(high.advice, CrossingAdvice::Unanswered);
    EXPECT_THAT(high.sentence, HasSubstr("No place of this fossa lies 60 to 70 mm over the plane of the mitral annulus"));
}

TEST(CrossingAnswer, TellsWeakMarks) {
    auto marks = uprightMarks();
    marks.fossa = ring({-20, 5, 0}, {0, 10, 0}, {0, 0, 10}, 5);
    marks.annulus = ring({0, -10, -35}, {15, 0, 0}, {0, 15, 0}, 4);
    for (std::size_t i = 0; i < 4; ++i)
        marks.annulus[i].mm.z() += i % 2 ? 3.0 : -3.0;
    marks.aorticRoot.reset();
    const auto answer = answerOf(need(crossingScene(marks, uprightTarget(20), {{0, 0, 0}})), {});
    EXPECT_TRUE(has(answer, "septum-few-points"));
    EXPECT_TRUE(has(answer, "septum-rough"));
    EXPECT_TRUE(has(answer, "septum-sides-by-axes"));
}

TEST(CrossingAnswer, RefusesLimitsThatContradict) {
    const auto scene = slanted();
    const auto map = need(crossingMap(scene, {}, 1.0));
    EXPECT_EQ(refused(crossingAnswer(scene, map, band(45, 35))).code, ErrorCode::InvalidArgument);
}

TEST(DescribeCrossing, SaysWhereHowHighAndWhomItServes) {
    const auto scene = slanted();
    const auto at = [&](double back, double up) { return describeCrossing(scene, crossingAt(scene, {back, up}, {}), {}); };
    EXPECT_THAT(at(0, 1), HasSubstr("The crossing is central."));
    EXPECT_THAT(at(0, 1), HasSubstr("36.0 mm over the plane of the mitral annulus"));
    EXPECT_THAT(at(0, 1), HasSubstr("44.0 mm over the level of coaptation, parallel to the septum"));
    EXPECT_THAT(at(0, 1), HasSubstr("It serves repair and closure."));
    EXPECT_THAT(at(0, 7), HasSubstr("It serves the repair, and the closure with a steerable sheath only."));
    EXPECT_THAT(at(5, -5), HasSubstr("inferior-posterior"));
    EXPECT_THAT(at(5, -5), HasSubstr("It serves the closure, not the repair."));
    EXPECT_THAT(at(20, 0), HasSubstr("posterior wall"));
    EXPECT_THAT(at(20, 0), Not(HasSubstr("It serves")));
}
