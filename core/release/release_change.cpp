#include "core/release/release_change.h"

#include "core/number_text.h"

#include <cmath>

namespace gauge::core {
namespace {

using Q = ReleaseQuantity;
constexpr double kLeastChange = 0.05; // what is shown has one decimal

/// +1 when more is worse, -1 when less is worse, 0 when neither can be said.
int worseWhenMore(Q q) {
    switch (q) {
    case Q::GapBeforePull:
    case Q::GapAfterPull:
    case Q::LobeToNeckAngle:
    case Q::UncoveredLobes:
    case Q::JetWidth:
    case Q::Effusion:
    case Q::MitralGradient:
    case Q::RegurgitationGrade:
    case Q::DeviceThrombus: return 1;
    case Q::ShareBeyondCircumflex:
    case Q::ClearanceCircumflex:
    case Q::ClearancePulmonaryArtery:
    case Q::ClearanceMitralAnnulus:
    case Q::ClearanceRidge:
    case Q::VeinFlowFree: return -1;
    default: return 0;
    }
}

std::string shown(Q q, double value) {
    if (q == Q::VeinFlowFree || q == Q::DeviceThrombus) return value > 0.5 ? "yes" : "no";
    const std::string_view unit = unitOf(q);
    return fixed(value, unit.empty() && value == std::floor(value) ? 0 : 1) + (unit.empty() ? "" : " ") + std::string(unit);
}

const ReleaseFinding* lastLike(const ReleaseState& state, const ReleaseFinding& f) {
    const ReleaseFinding* found = nullptr;
    for (const auto& other : state.findings)
        if (other.quantity == f.quantity && other.view == f.view && other.side == f.side) found = &other;
    return found;
}

ReleaseChange changeOf(const ReleaseFinding& a, const ReleaseFinding& b, Stage from, Stage to) {
    ReleaseChange c{a.quantity, a.view, a.side, a.value, b.value, false, true, {}};
    const double u = std::hypot(a.standardUncertainty.value_or(0.0), b.standardUncertainty.value_or(0.0));
    c.certain = std::abs(b.value - a.value) > 2.0 * u;
    c.worse = worseWhenMore(a.quantity) * (b.value - a.value) > 0.0;
    c.sentence = (a.view.empty() ? "" : a.view + ": ") + std::string(words(a.quantity)) +
                 (a.side.empty() ? "" : ", " + a.side) + " " + shown(a.quantity, a.value) + " (" + std::string(name(from)) +
                 ", " + a.seenBy + ") became " + shown(b.quantity, b.value) + " (" + std::string(name(to)) + ", " +
                 b.seenBy + ")" + (c.certain ? "." : "; within the uncertainty of the two readings.");
    return c;
}

const char* codeOf(Q q) {
    switch (q) {
    case Q::Effusion: return "effusion-grows";
    case Q::RegurgitationGrade: return "regurgitation-grows";
    case Q::MitralGradient: return "gradient-rises";
    case Q::JetWidth: return "jet-grows";
    case Q::VeinFlowFree: return "vein-flow-impeded";
    case Q::DeviceThrombus: return "device-thrombus";
    case Q::ClearanceCircumflex:
    case Q::ClearancePulmonaryArtery:
    case Q::ClearanceMitralAnnulus:
    case Q::ClearanceRidge: return "clearance-falls";
    default: return "implant-moves";
    }
}

} // namespace

Result<std::vector<ReleaseChange>> compareReleases(const ReleaseState& before, const ReleaseState& after) {
    for (const auto* state : {&before, &after})
        if (const auto ok = validate(*state); !ok) return tl::make_unexpected(ok.error());
    std::vector<ReleaseChange> changes;
    for (const auto& f : before.findings) {
        if (lastLike(before, f) != &f) continue;
        const ReleaseFinding* later = lastLike(after, f);
        if (later && std::abs(later->value - f.value) >= kLeastChange)
            changes.push_back(changeOf(f, *later, before.stage, after.stage));
    }
    return changes;
}

std::vector<Notice> changeNotices(const std::vector<ReleaseChange>& changes) {
    std::vector<Notice> notices;
    for (const auto& c : changes)
        if (c.worse) notices.push_back({codeOf(c.quantity), c.sentence, {}});
    return notices;
}

} // namespace gauge::core
