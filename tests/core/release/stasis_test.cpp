#include "core/release/stasis.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

namespace {

StasisFinding at(Stage stage) {
    StasisFinding f;
    f.stage = stage;
    return f;
}

std::vector<std::string> codes(const std::vector<Notice>& notices) {
    std::vector<std::string> all;
    for (const Notice& n : notices)
        all.push_back(n.code);
    return all;
}

std::string text(const std::vector<Notice>& notices, const std::string& code) {
    for (const Notice& n : notices)
        if (n.code == code) return n.text;
    return "";
}

} // namespace

TEST(JudgeStasis, HasNothingToSayWhereNothingIsWrong) {
    const auto j = judgeStasis({}, false);
    EXPECT_THAT(j.warnings, IsEmpty());
    EXPECT_TRUE(j.sizeMayBeSigned);
    EXPECT_FALSE(j.planStopped);
}

TEST(JudgeStasis, ThrombusStopsThePlanUntilALaterLookExcludesIt) {
    auto seen = at(Stage::BeforeRepair);
    seen.thrombus = true;
    seen.seenBy = "reader 2";
    const StasisFinding one[] = {seen};
    auto j = judgeStasis(one, false);
    EXPECT_TRUE(j.planStopped);
    EXPECT_FALSE(j.sizeMayBeSigned);
    EXPECT_THAT(text(j.warnings, "thrombus-stops-plan"), HasSubstr("the plan stops here"));
    EXPECT_THAT(text(j.warnings, "thrombus-stops-plan"), HasSubstr("reader 2"));

    auto gone = at(Stage::AfterRepair);
    gone.thrombus = false;
    const StasisFinding both[] = {gone, seen}; // order of the list does not matter
    j = judgeStasis(both, true);
    EXPECT_FALSE(j.planStopped);
    EXPECT_TRUE(j.sizeMayBeSigned);
    EXPECT_THAT(codes(j.warnings), Contains("thrombus-seen-earlier"));
}

TEST(JudgeStasis, AsksForAnotherLookAfterARepair) {
    auto before = at(Stage::BeforeRepair);
    before.thrombus = false;
    const StasisFinding one[] = {before};
    auto j = judgeStasis(one, true);
    EXPECT_FALSE(j.sizeMayBeSigned);
    EXPECT_THAT(codes(j.warnings), Contains("appendage-not-looked-at-again"));
    EXPECT_THAT(codes(j.notices), Contains("scores-do-not-know-the-repair"));
    EXPECT_THAT(codes(judgeStasis(one, false).warnings), Not(Contains("appendage-not-looked-at-again")));

    auto again = at(Stage::AfterRepair);
    again.lookedAtAgain = true;
    const StasisFinding both[] = {before, again};
    EXPECT_TRUE(judgeStasis(both, true).sizeMayBeSigned);
}

TEST(JudgeStasis, SaysWhenSmokeIsNewOrDenser) {
    auto before = at(Stage::BeforeRepair), after = at(Stage::AfterRepair);
    before.echoContrastGrade = 0;
    after.echoContrastGrade = 2;
    after.lookedAtAgain = true;
    const StasisFinding fresh[] = {before, after};
    EXPECT_THAT(text(judgeStasis(fresh, true).warnings, "smoke-new-or-denser"),
                HasSubstr("New echo contrast"));
    before.echoContrastGrade = 1;
    const StasisFinding denser[] = {before, after};
    EXPECT_THAT(text(judgeStasis(denser, true).warnings, "smoke-new-or-denser"),
                HasSubstr("Denser echo contrast"));
    before.echoContrastGrade = 2;
    const StasisFinding same[] = {before, after};
    EXPECT_THAT(codes(judgeStasis(same, true).warnings), Not(Contains("smoke-new-or-denser")));
}

TEST(JudgeStasis, SludgeDenseSmokeAndSlowEmptyingAskToExcludeThrombus) {
    auto f = at(Stage::AfterRepair);
    f.lookedAtAgain = true;
    f.sludge = true;
    f.echoContrastGrade = 3;
    f.emptyingVelocityCmPerS = 14.0;
    const StasisFinding one[] = {f};
    const std::string sentence = text(judgeStasis(one, true).warnings, "stasis-exclude-thrombus");
    EXPECT_THAT(sentence, HasSubstr("sludge, echo contrast grade 3, emptying velocity 14 cm/s"));
    EXPECT_THAT(sentence, HasSubstr("Exclude thrombus"));
}

// references section 4: late-phase cut-off 0.5 (PMID 20920660); no verdict in an early phase.
TEST(JudgeStasis, JudgesTheEnhancementRatioInADelayedPhaseOnly) {
    auto f = at(Stage::BeforeProcedure);
    f.enhancementRatio = 0.4;
    f.enhancementPhase = EnhancementPhase::Delayed;
    const StasisFinding delayed[] = {f};
    EXPECT_THAT(codes(judgeStasis(delayed, false).warnings), Contains("enhancement-exclude-thrombus"));
    f.enhancementRatio = 0.5;
    const StasisFinding enough[] = {f};
    EXPECT_THAT(judgeStasis(enough, false).warnings, IsEmpty());
    f.enhancementRatio = 0.2;
    f.enhancementPhase = EnhancementPhase::Early;
    const StasisFinding early[] = {f};
    EXPECT_THAT(judgeStasis(early, false).warnings, IsEmpty());
    EXPECT_THAT(text(judgeStasis(early, false).notices, "enhancement-no-verdict"), HasSubstr("early phase"));
}
