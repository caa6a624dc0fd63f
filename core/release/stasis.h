// Stasis and thrombus in the appendage, stage by stage, and what they mean for the plan. Knows no sizes:
// core/sizing joins its sentences to the answer, the checks before release use it as it is.
#pragma once

#include "core/pressure/observation.h"
#include "core/result.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace gauge::core {

/// When after the contrast agent an enhancement ratio was read.
enum class EnhancementPhase { Early, Delayed, Unknown };

/// What was seen of flow and thrombus at one stage. What nobody stated is absent, which is not the same as
/// "none".
struct StasisFinding {
    Stage stage = Stage::BeforeProcedure;
    std::optional<int> echoContrastGrade; ///< spontaneous echo contrast ("smoke"), 0 none to 4 severe
    std::optional<bool> sludge;
    std::optional<bool> thrombus;
    std::optional<double> emptyingVelocityCmPerS;
    std::optional<double> enhancementRatio; ///< appendage tip over ascending aorta, HU/HU
    EnhancementPhase enhancementPhase = EnhancementPhase::Unknown;
    bool lookedAtAgain = false; ///< the appendage was looked at on purpose, whatever was found
    std::string seenBy;

    bool operator==(const StasisFinding&) const = default;
};

struct StasisJudgement {
    /// thrombus-stops-plan, thrombus-seen-earlier, stasis-exclude-thrombus, enhancement-exclude-thrombus,
    /// smoke-new-or-denser, appendage-not-looked-at-again.
    std::vector<Notice> warnings;
    /// enhancement-no-verdict, scores-do-not-know-the-repair.
    std::vector<Notice> notices;
    bool planStopped = false; ///< nothing may enter the appendage
    bool sizeMayBeSigned =
        true; ///< false while the appendage was not looked at again since the repair, or stopped
};

/// Judges all findings together, in the order of their stages.
/// @param repaired  whether the mitral valve was repaired before the size is to be signed.
/// Limits: a delayed-phase enhancement ratio below 0.5 asks to exclude thrombus; an early-phase one gives no
/// verdict (two-phase CT, Am J Cardiol 2010, PMID 20920660; Eur Radiol 2013, PMID 23821020). Dense smoke
/// (grade 3 and more) and an emptying velocity below 20 cm/s count as stasis (common practice, no source). A
/// repair changes no score: no adjusted rate is made up.
StasisJudgement judgeStasis(std::span<const StasisFinding> findings, bool repaired);

} // namespace gauge::core
