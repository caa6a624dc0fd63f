#include "core/release/release_finding.h"

#include "core/number_text.h"

#include <cmath>

namespace gauge::core {
namespace {

struct Entry {
    std::string_view name, words, unit;
    double least, greatest;
};

constexpr double kLongestMm = 100.0;
constexpr std::array<Entry, kReleaseQuantityCount> kEntries{{
    {"sheath-tip-depth", "sheath tip beyond the landing plane", "mm", -kLongestMm, kLongestMm},
    {"share-beyond-circumflex", "share of the lobe beyond the circumflex artery", "%", 0, 100},
    {"implant-width", "width of the implant", "mm", 1, kLongestMm},
    {"gap-before-pull", "gap before the pull", "mm", 0, kLongestMm},
    {"gap-after-pull", "gap after the pull", "mm", 0, kLongestMm},
    {"lobe-to-neck-angle", "lobe axis to neck axis", "degrees", 0, 180},
    {"disc-separation", "disc apart from the lobe", "mm", 0, kLongestMm},
    {"uncovered-lobes", "uncovered lobes", "", 0, 20},
    {"jet-width", "jet past the implant", "mm", 0, kLongestMm},
    {"clearance-circumflex", "clearance to the circumflex artery", "mm", 0, kLongestMm},
    {"clearance-pulmonary-artery", "clearance to the pulmonary artery", "mm", 0, kLongestMm},
    {"clearance-mitral-annulus", "clearance to the mitral annulus", "mm", 0, kLongestMm},
    {"clearance-ridge", "clearance to the ridge", "mm", 0, kLongestMm},
    {"effusion", "pericardial effusion", "mm", 0, kLongestMm},
    {"mitral-gradient", "mean mitral gradient", "mmHg", 0, 60},
    {"regurgitation-grade", "mitral regurgitation grade", "", 0, 4},
    {"vein-flow-free", "pulmonary-vein flow free", "", 0, 1},
    {"device-thrombus", "thrombus on the implant", "", 0, 1},
    {"septal-hole", "hole in the septum", "mm", 0, kLongestMm},
}};

const Entry& entry(ReleaseQuantity q) { return kEntries[static_cast<std::size_t>(q)]; }

bool isWhole(ReleaseQuantity q) {
    return q == ReleaseQuantity::UncoveredLobes || q == ReleaseQuantity::VeinFlowFree ||
           q == ReleaseQuantity::DeviceThrombus;
}

Result<void> check(const ReleaseFinding& f) {
    const Entry& e = entry(f.quantity);
    const std::string what = "Cannot use the finding \"" + std::string(e.words) + "\"" +
                             (f.view.empty() ? "" : " (" + f.view + ")") + ": ";
    if (!std::isfinite(f.value) || (f.standardUncertainty && !std::isfinite(*f.standardUncertainty)))
        return failure(ErrorCode::NonFinite, what + "it is no number.");
    if (f.value < e.least || f.value > e.greatest || (isWhole(f.quantity) && f.value != std::floor(f.value)))
        return failure(ErrorCode::InvalidArgument,
                       what + "it is " + general(f.value) + "; " + (isWhole(f.quantity) ? "a whole number from " : "") +
                           general(e.least) + " to " + general(e.greatest) + " is possible.");
    if (f.standardUncertainty && *f.standardUncertainty < 0.0)
        return failure(ErrorCode::InvalidArgument, what + "its uncertainty is below 0.");
    if (f.seenBy.empty()) return failure(ErrorCode::InvalidArgument, what + "say who saw it.");
    return {};
}

} // namespace

std::string_view name(ReleaseQuantity q) { return entry(q).name; }
std::string_view words(ReleaseQuantity q) { return entry(q).words; }
std::string_view unitOf(ReleaseQuantity q) { return entry(q).unit; }

std::optional<ReleaseQuantity> releaseQuantityFrom(std::string_view word) {
    for (std::size_t i = 0; i < kEntries.size(); ++i)
        if (kEntries[i].name == word) return static_cast<ReleaseQuantity>(i);
    return std::nullopt;
}

Result<void> validate(const ReleaseState& state) {
    if (state.stage < Stage::SheathInAppendage)
        return failure(ErrorCode::InvalidArgument, "Cannot check a release at the stage \"" + std::string(name(state.stage)) +
                                                       "\": nothing is in the appendage yet.");
    for (const auto& f : state.findings)
        if (auto ok = check(f); !ok) return ok;
    return {};
}

JetClass jetClass(double widthMm) {
    if (widthMm <= 0.0) return JetClass::None;
    if (widthMm <= 3.0) return JetClass::UpTo3;
    return widthMm <= 5.0 ? JetClass::From3To5 : JetClass::Over5;
}

std::string_view words(JetClass jet) {
    switch (jet) {
    case JetClass::None: return "no jet";
    case JetClass::UpTo3: return "jet up to 3 mm";
    case JetClass::From3To5: return "jet of 3 to 5 mm";
    case JetClass::Over5: break;
    }
    return "jet over 5 mm";
}

} // namespace gauge::core
