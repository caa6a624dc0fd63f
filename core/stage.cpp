#include "core/stage.h"

namespace gauge::core {

std::string_view name(Stage stage) {
    switch (stage) {
    case Stage::BeforeProcedure: return "before-procedure";
    case Stage::BeforeRepair: return "before-repair";
    case Stage::AfterRepair: return "after-repair";
    case Stage::SheathInAppendage: return "sheath-in-appendage";
    case Stage::PartlyDeployed: return "partly-deployed";
    case Stage::DeployedAttached: return "deployed-attached";
    case Stage::AfterRelease: return "after-release";
    case Stage::FollowUp: return "follow-up";
    }
    return "before-procedure";
}

std::optional<Stage> stageFrom(std::string_view word) {
    for (const Stage stage : kStages)
        if (name(stage) == word)
            return stage;
    return std::nullopt;
}

} // namespace gauge::core
