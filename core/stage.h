// Stages of the patient's course, shared by the images that were taken, the readings made on them and the
// observations that a size rests on.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace gauge::core {

/// In the order of time. The repair is that of the mitral valve, which may precede the closure in one
/// session; without a repair, what comes before the sheath is BeforeRepair.
enum class Stage {
    BeforeProcedure,
    BeforeRepair,
    AfterRepair,
    SheathInAppendage,
    PartlyDeployed,
    DeployedAttached,
    AfterRelease,
    FollowUp
};

inline constexpr std::array kStages{Stage::BeforeProcedure,   Stage::BeforeRepair,   Stage::AfterRepair,
                                    Stage::SheathInAppendage, Stage::PartlyDeployed, Stage::DeployedAttached,
                                    Stage::AfterRelease,      Stage::FollowUp};

/// The word of files and of the command line: "before-procedure", "before-repair", "after-repair",
/// "sheath-in-appendage", "partly-deployed", "deployed-attached", "after-release", "follow-up".
std::string_view name(Stage stage);

/// The stage of such a word; nothing for any other word.
std::optional<Stage> stageFrom(std::string_view name);

} // namespace gauge::core
