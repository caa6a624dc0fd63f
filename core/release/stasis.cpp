#include "core/release/stasis.h"

#include "core/number_text.h"

#include <algorithm>

namespace gauge::core {
namespace {

constexpr double kDelayedRatioLimit = 0.5;   // PMID 20920660, 23821020: all thrombi below it
constexpr double kSlowEmptyingCmPerS = 20.0; // common practice, no source
constexpr int kDenseSmoke = 3;               // common practice, no source

std::string at(const StasisFinding& finding) {
    return std::string(plainName(finding.stage)) +
           (finding.seenBy.empty() ? "" : " (seen by " + finding.seenBy + ")");
}

bool isAfterRepair(Stage stage) {
    return stage >= Stage::AfterRepair;
}

/// Somebody looked: said so, or said whether there is a thrombus.
bool lookedAtAgain(std::span<const StasisFinding> findings) {
    return std::any_of(findings.begin(), findings.end(), [](const StasisFinding& f) {
        return isAfterRepair(f.stage) && (f.lookedAtAgain || f.thrombus.has_value());
    });
}

void judgeThrombus(std::span<const StasisFinding> findings, StasisJudgement& j) {
    const StasisFinding* last = nullptr;
    const StasisFinding* seen = nullptr;
    for (const StasisFinding& f : findings) {
        if (!f.thrombus) continue;
        last = &f;
        if (*f.thrombus) seen = &f;
    }
    if (!seen) return;
    if (*last->thrombus) {
        j.planStopped = true;
        j.warnings.push_back(
            {"thrombus-stops-plan",
             "Thrombus in the appendage, " + at(*seen) +
                 ": the plan stops here. Nothing enters the appendage; no size can be signed until a "
                 "later look excludes thrombus.",
             {{"stage", std::string(word(seen->stage))}}});
        return;
    }
    j.warnings.push_back({"thrombus-seen-earlier",
                          "Thrombus was seen " + at(*seen) + " and no longer " + at(*last) +
                              ": make sure that it dissolved and did not leave.",
                          {{"stage", std::string(word(seen->stage))}}});
}

std::string signsOfStasis(const StasisFinding& f) {
    std::string signs;
    const auto add = [&](const std::string& sign) { signs += (signs.empty() ? "" : ", ") + sign; };
    if (f.sludge.value_or(false)) add("sludge");
    if (f.echoContrastGrade.value_or(0) >= kDenseSmoke)
        add("echo contrast grade " + std::to_string(*f.echoContrastGrade));
    if (f.emptyingVelocityCmPerS && *f.emptyingVelocityCmPerS < kSlowEmptyingCmPerS)
        add("emptying velocity " + fixed(*f.emptyingVelocityCmPerS, 0) + " cm/s");
    return signs;
}

void judgeStasisSigns(const StasisFinding& f, StasisJudgement& j) {
    const std::string signs = signsOfStasis(f);
    if (signs.empty() || f.thrombus.value_or(false)) return;
    j.warnings.push_back(
        {"stasis-exclude-thrombus",
         "Stasis in the appendage " + at(f) + ": " + signs + ". Exclude thrombus before anything enters it.",
         {{"stage", std::string(word(f.stage))}}});
}

void judgeEnhancement(const StasisFinding& f, StasisJudgement& j) {
    if (!f.enhancementRatio) return;
    const std::string ratio = fixed(*f.enhancementRatio, 2);
    if (f.enhancementPhase == EnhancementPhase::Delayed) {
        if (*f.enhancementRatio >= kDelayedRatioLimit) return;
        j.warnings.push_back({"enhancement-exclude-thrombus",
                              "The tip of the appendage enhances to " + ratio +
                                  " of the ascending aorta in a delayed phase " + at(f) +
                                  ", below 0.5: exclude thrombus before anything enters it.",
                              {{"ratio", ratio}}});
        return;
    }
    const bool early = f.enhancementPhase == EnhancementPhase::Early;
    j.notices.push_back({"enhancement-no-verdict",
                         "The enhancement ratio " + ratio + " " + at(f) + " was read in " +
                             (early ? "an early phase" : "a phase that nobody stated") +
                             ": it gives no verdict on thrombus; only a delayed phase does.",
                         {{"ratio", ratio}}});
}

void judgeChange(std::span<const StasisFinding> findings, StasisJudgement& j) {
    const StasisFinding* before = nullptr;
    const StasisFinding* after = nullptr;
    for (const StasisFinding& f : findings) {
        if (!f.echoContrastGrade) continue;
        (isAfterRepair(f.stage) ? after : before) = &f;
    }
    if (!before || !after || *after->echoContrastGrade <= *before->echoContrastGrade) return;
    const bool isNew = *before->echoContrastGrade == 0;
    j.warnings.push_back(
        {"smoke-new-or-denser",
         std::string(isNew ? "New" : "Denser") + " echo contrast since the repair: grade " +
             std::to_string(*before->echoContrastGrade) + " " + at(*before) + ", grade " +
             std::to_string(*after->echoContrastGrade) + " " + at(*after) +
             ". Flow in the appendage is slower; exclude thrombus before anything enters it.",
         {{"before", std::to_string(*before->echoContrastGrade)},
          {"after", std::to_string(*after->echoContrastGrade)}}});
}

} // namespace

StasisJudgement judgeStasis(std::span<const StasisFinding> findings, bool repaired) {
    std::vector<StasisFinding> ordered(findings.begin(), findings.end());
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const StasisFinding& a, const StasisFinding& b) { return a.stage < b.stage; });
    StasisJudgement j;
    judgeThrombus(ordered, j);
    for (const StasisFinding& f : ordered) {
        judgeStasisSigns(f, j);
        judgeEnhancement(f, j);
    }
    judgeChange(ordered, j);
    const bool looked = !repaired || lookedAtAgain(ordered);
    if (!looked)
        j.warnings.push_back(
            {"appendage-not-looked-at-again",
             "The appendage was not looked at again since the repair. Flow changes with a repair: look "
             "for smoke, sludge and thrombus, and record it, before a size can be signed.",
             {}});
    if (repaired)
        j.notices.push_back(
            {"scores-do-not-know-the-repair",
             "The stroke and bleeding scores do not know about the repair; their rates are shown as "
             "published, not adjusted.",
             {}});
    j.sizeMayBeSigned = looked && !j.planStopped;
    return j;
}

} // namespace gauge::core
