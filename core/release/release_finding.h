// What is looked at before an implant is let go, and again at follow-up: one number seen in one view by one person.
// What the numbers mean: release_check.h. How they changed: release_change.h. As JSON: release_json.h.
#pragma once

#include "core/result.h"
#include "core/stage.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Values in the unit of `unitOf`. Yes is 1, no is 0.
enum class ReleaseQuantity {
    SheathTipDepth,           ///< mm, tip of the sheath beyond the landing plane; negative = short of it
    ShareBeyondCircumflex,    ///< %, part of the lobe's length beyond the circumflex artery
    ImplantWidth,             ///< mm, at the shoulder; gives the compression
    GapBeforePull,            ///< mm, between implant and wall, one a side
    GapAfterPull,             ///< mm, the same after a gentle pull
    LobeToNeckAngle,          ///< degrees, lobe axis against neck axis
    DiscSeparation,           ///< mm, between disc and lobe
    UncoveredLobes,           ///< count of lobes on the atrial side of the implant
    JetWidth,                 ///< mm, colour jet past the implant; 0 = none
    ClearanceCircumflex,      ///< mm, implant to circumflex artery
    ClearancePulmonaryArtery, ///< mm
    ClearanceMitralAnnulus,   ///< mm
    ClearanceRidge,           ///< mm, to the ridge or the pulmonary vein's mouth
    Effusion,                 ///< mm, greatest depth of pericardial fluid
    MitralGradient,           ///< mmHg, mean
    RegurgitationGrade,       ///< 0 to 4
    VeinFlowFree,             ///< yes / no, pulmonary-vein flow
    DeviceThrombus,           ///< yes / no
    SeptalHole,               ///< mm, what the crossing left
};
inline constexpr std::size_t kReleaseQuantityCount = 19;

/// The word of files: "sheath-tip-depth", "share-beyond-circumflex", …
std::string_view name(ReleaseQuantity quantity);
std::optional<ReleaseQuantity> releaseQuantityFrom(std::string_view name);
/// For people: "sheath tip beyond the landing plane".
std::string_view words(ReleaseQuantity quantity);
/// "mm", "%", "degrees", "mmHg" or "".
std::string_view unitOf(ReleaseQuantity quantity);

/// One thing seen.
struct ReleaseFinding {
    ReleaseQuantity quantity = ReleaseQuantity::JetWidth;
    double value = 0.0;
    std::optional<double> standardUncertainty{};
    std::string view{};   ///< "45 degrees", "RAO 30 CAU 20"; empty where no view applies
    std::string side{};   ///< of a gap: "circumflex side", "ridge side"
    std::string seenBy{}; ///< never empty: who saw it
    std::string source{}; ///< image (SOP Instance UID and frame), or empty

    bool operator==(const ReleaseFinding&) const = default;
};

/// All that was seen at one moment.
struct ReleaseState {
    Stage stage = Stage::DeployedAttached;
    std::string time; ///< ISO 8601
    /// The inner catheter has been taken out: from then on the sheath must not be too shallow.
    bool innerCatheterWithdrawn = false;
    std::vector<ReleaseFinding> findings;

    bool operator==(const ReleaseState&) const = default;
};

/// Says whether a state can be judged: finite values in range (shares 0 to 100 %, grades 0 to 4, yes or no, no negative
/// length but the sheath's), every finding with who saw it, a stage from the sheath on.
/// @errors InvalidArgument, NonFinite; the message names the finding.
Result<void> validate(const ReleaseState& state);

enum class JetClass { None, UpTo3, From3To5, Over5 };
/// none / up to 3 / over 3 to 5 / over 5 mm. Source: leak classes in published series (none, up to 5, over 5 mm; 3 mm
/// also used), DEVELOPERS.md.
JetClass jetClass(double widthMm);
/// "no jet", "jet up to 3 mm", "jet of 3 to 5 mm", "jet over 5 mm".
std::string_view words(JetClass jet);

} // namespace gauge::core
