#include "core/pressure/observation.h"

#include <array>

namespace gauge::core {

namespace {

using namespace std::string_view_literals;

// In the order of the enums.
constexpr std::array kQuantities = {
    "landing_zone_perimeter_derived_diameter"sv, "landing_zone_area_derived_diameter"sv,
    "landing_zone_longest_diameter"sv,           "ostium_perimeter_derived_diameter"sv,
    "ostium_longest_diameter"sv,                 "depth"sv,
};
constexpr std::array kModalities = {"CT"sv, "echo-2d"sv, "echo-3d"sv, "fluoroscopy"sv};
constexpr std::array kDerivations = {"contour"sv, "ellipse-from-angles"sv, "largest-of-views"sv,
                                     "single-view"sv};
constexpr std::array kStageWords = {
    "before-procedure"sv, "before-repair"sv,     "after-repair"sv,  "sheath-in-appendage"sv,
    "partly-deployed"sv,  "deployed-attached"sv, "after-release"sv, "follow-up"sv,
};
constexpr std::array kConditions = {"mitral-regurgitation"sv, "hydrated"sv, "other"sv};
constexpr std::array kPhases = {"end-systole"sv, "other"sv, "unknown"sv};
constexpr std::array kSources = {"direct"sv, "wedge"sv, "echo"sv, "procedure-start"sv};

constexpr std::array kPlainQuantities = {
    "perimeter-derived diameter of the landing zone"sv,
    "area-derived diameter of the landing zone"sv,
    "longest diameter of the landing zone"sv,
    "perimeter-derived diameter of the ostium"sv,
    "longest diameter of the ostium"sv,
    "depth"sv,
};
constexpr std::array kPlainModalities = {"CT"sv, "2D echo"sv, "3D echo"sv, "fluoroscopy"sv};
constexpr std::array kPlainDerivations = {"contour"sv, "ellipse from probe angles"sv,
                                          "largest of the views"sv, "single view"sv};
constexpr std::array kPlainStages = {
    "before the procedure"sv,  "before the repair"sv,     "after the repair"sv, "sheath in the appendage"sv,
    "device partly deployed"sv, "deployed and attached"sv, "after release"sv,    "follow-up"sv,
};

template <class Enum, std::size_t n>
std::optional<Enum> find(const std::array<std::string_view, n>& words, std::string_view word) {
    for (std::size_t i = 0; i < n; ++i)
        if (words[i] == word) return static_cast<Enum>(i);
    return std::nullopt;
}

template <std::size_t n> std::string joined(const std::array<std::string_view, n>& words) {
    std::string out;
    for (const auto word : words)
        out.append(out.empty() ? "" : ", ").append(word);
    return out;
}

template <class Enum, std::size_t n>
std::string_view at(const std::array<std::string_view, n>& words, Enum value) {
    return words[static_cast<std::size_t>(value)];
}

} // namespace

std::string_view word(Quantity v) { return at(kQuantities, v); }
std::string_view word(Modality v) { return at(kModalities, v); }
std::string_view word(Derivation v) { return at(kDerivations, v); }
std::string_view word(Stage v) { return at(kStageWords, v); }
std::string_view word(Condition v) { return at(kConditions, v); }
std::string_view word(Phase v) { return at(kPhases, v); }
std::string_view word(PressureSource v) { return at(kSources, v); }

template <> std::optional<Quantity> fromWord(std::string_view w) { return find<Quantity>(kQuantities, w); }
template <> std::optional<Modality> fromWord(std::string_view w) { return find<Modality>(kModalities, w); }
template <> std::optional<Derivation> fromWord(std::string_view w) {
    return find<Derivation>(kDerivations, w);
}
template <> std::optional<Stage> fromWord(std::string_view w) { return find<Stage>(kStageWords, w); }
template <> std::optional<Condition> fromWord(std::string_view w) { return find<Condition>(kConditions, w); }
template <> std::optional<Phase> fromWord(std::string_view w) { return find<Phase>(kPhases, w); }
template <> std::optional<PressureSource> fromWord(std::string_view w) {
    return find<PressureSource>(kSources, w);
}

template <> std::string allWords<Quantity>() { return joined(kQuantities); }
template <> std::string allWords<Modality>() { return joined(kModalities); }
template <> std::string allWords<Derivation>() { return joined(kDerivations); }
template <> std::string allWords<Stage>() { return joined(kStageWords); }
template <> std::string allWords<Condition>() { return joined(kConditions); }
template <> std::string allWords<Phase>() { return joined(kPhases); }
template <> std::string allWords<PressureSource>() { return joined(kSources); }

std::string_view plainName(Quantity v) { return at(kPlainQuantities, v); }
std::string_view plainName(Modality v) { return at(kPlainModalities, v); }
std::string_view plainName(Derivation v) { return at(kPlainDerivations, v); }
std::string_view plainName(Stage v) { return at(kPlainStages, v); }

bool isView(Derivation d) { return d == Derivation::LargestOfViews || d == Derivation::SingleView; }

bool hasImplant(Stage s) {
    return s == Stage::PartlyDeployed || s == Stage::DeployedAttached || s == Stage::AfterRelease ||
           s == Stage::FollowUp;
}

} // namespace gauge::core
