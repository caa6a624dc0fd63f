#include "core/release/release_check.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

using Q = ReleaseQuantity;

std::string withUnit(double value, std::string_view unit) {
    return fixed(value, unit.empty() ? 0 : 1) + (unit.empty() ? "" : " ") + std::string(unit);
}

std::optional<ReleaseRange> rangeOf(Q quantity, const ReleaseLimits& l) {
    const ReleaseRange none{std::nullopt, 0.0, RangeBasis::CommonPractice};
    const ReleaseRange yes{1.0, std::nullopt, RangeBasis::Published};
    switch (quantity) {
    case Q::SheathTipDepth: return l.sheathTipDepthMm;
    case Q::ShareBeyondCircumflex: return l.hasDisc ? std::optional(l.shareBeyondCircumflex) : std::nullopt;
    case Q::LobeToNeckAngle: return l.lobeToNeckDeg;
    case Q::DiscSeparation: return l.hasDisc ? std::optional(l.discSeparationMm) : std::nullopt;
    case Q::UncoveredLobes:
    case Q::DeviceThrombus: return none;
    case Q::JetWidth: return l.jetMm;
    case Q::ClearanceCircumflex: return l.circumflexMm;
    case Q::ClearancePulmonaryArtery: return l.pulmonaryArteryMm;
    case Q::ClearanceMitralAnnulus: return l.mitralAnnulusMm;
    case Q::ClearanceRidge: return l.ridgeMm;
    case Q::MitralGradient: return l.mitralGradientMmHg;
    case Q::VeinFlowFree: return yes;
    case Q::ImplantWidth:
    case Q::GapBeforePull:
    case Q::GapAfterPull:
    case Q::Effusion:
    case Q::RegurgitationGrade:
    case Q::SeptalHole: break;
    }
    return std::nullopt;
}

struct Saying {
    const char* code;
    const char* then; ///< what it means, after the numbers
};

Saying sayingFor(Q quantity) {
    switch (quantity) {
    case Q::SheathTipDepth:
        return {"sheath-too-shallow", "Bring the sheath deeper before the inner catheter is withdrawn."};
    case Q::ShareBeyondCircumflex: return {"lobe-short-of-circumflex", "The lobe sits too near the ostium."};
    case Q::LobeToNeckAngle: return {"lobe-off-axis", "The lobe does not lie in line with the neck."};
    case Q::DiscSeparation: return {"disc-not-separated", "Disc and lobe are not apart: the lobe may be too shallow or the disc under no tension."};
    case Q::UncoveredLobes: return {"lobe-uncovered", "A lobe stays open to the atrium."};
    case Q::DeviceThrombus: return {"device-thrombus", "Thrombus lies on the implant: the treating team decides on treatment and another look."};
    case Q::JetWidth: return {"jet-wide", "The seal is not adequate."};
    case Q::MitralGradient: return {"mitral-gradient-high", "The implant or the repair narrows the inflow."};
    case Q::VeinFlowFree: return {"vein-flow-impeded", "Pulmonary-vein flow is not free."};
    default: return {"clearance-small", "The implant lies too near a neighbour."};
    }
}

RangeVerdict verdictOf(double value, const std::optional<ReleaseRange>& range) {
    if (!range || (!range->least && !range->greatest)) return RangeVerdict::NoRange;
    const bool outside = (range->least && value < *range->least) || (range->greatest && value > *range->greatest);
    return outside ? RangeVerdict::Outside : RangeVerdict::Within;
}

bool nearLimit(double value, std::optional<double> u, const std::optional<ReleaseRange>& range) {
    if (!range || !u) return false;
    return (range->least && std::abs(value - *range->least) <= 2.0 * *u) ||
           (range->greatest && std::abs(value - *range->greatest) <= 2.0 * *u);
}

std::string rangeWords(const ReleaseRange& r, std::string_view unit) {
    std::string text = r.least && r.greatest ? withUnit(*r.least, unit) + " to " + withUnit(*r.greatest, unit)
                       : r.least             ? "at least " + withUnit(*r.least, unit)
                                             : "at most " + withUnit(*r.greatest, unit);
    return text + " (" + std::string(words(r.basis)) + ")";
}

ReleaseRow rowOf(const ReleaseFinding& f, const ReleaseLimits& l) {
    ReleaseRow row;
    row.view = f.view;
    row.what = std::string(words(f.quantity)) + (f.side.empty() ? "" : ", " + f.side);
    row.value = f.value;
    row.unit = unitOf(f.quantity);
    row.range = rangeOf(f.quantity, l);
    row.verdict = verdictOf(f.value, row.range);
    row.nearLimit = nearLimit(f.value, f.standardUncertainty, row.range);
    row.seenBy = f.seenBy;
    return row;
}

/// "45 degrees: share of the lobe beyond the circumflex artery 50.0 %; at least 66.7 % (…) is wanted. …"
std::string sentence(const ReleaseRow& row, const char* then) {
    return (row.view.empty() ? "" : row.view + ": ") + row.what + " " + withUnit(row.value, row.unit) + "; " +
           rangeWords(*row.range, row.unit) + " is wanted. " + then +
           (row.nearLimit ? " The reading is uncertain enough for either side of the limit." : "");
}

void addCompression(ReleaseReport& report, const ReleaseFinding& f, const ReleaseLimits& l) {
    if (!l.nominalMm) return;
    ReleaseRow row;
    row.view = f.view;
    row.what = "compression";
    row.value = 100.0 * (*l.nominalMm - f.value) / *l.nominalMm;
    row.unit = "%";
    row.range = l.compressionPercent;
    row.verdict = verdictOf(row.value, row.range);
    if (f.standardUncertainty)
        row.nearLimit = nearLimit(row.value, 100.0 * *f.standardUncertainty / *l.nominalMm, row.range);
    row.seenBy = f.seenBy;
    if (row.verdict == RangeVerdict::Outside) {
        const bool low = l.compressionPercent.least && row.value < *l.compressionPercent.least;
        report.notices.push_back({low ? "compression-low" : "compression-high",
                                  sentence(row, low ? "Too little hold: the implant may move or leak, the more so when "
                                                      "the atrium fills."
                                                    : "The implant is squeezed beyond its band."),
                                  {}});
    }
    report.rows.push_back(std::move(row));
}

void addFinding(ReleaseReport& report, const ReleaseFinding& f, const ReleaseState& state, const ReleaseLimits& l) {
    ReleaseRow row = rowOf(f, l);
    if (row.verdict == RangeVerdict::Outside) {
        const Saying saying = sayingFor(f.quantity);
        const bool late = f.quantity == Q::SheathTipDepth && state.innerCatheterWithdrawn;
        report.notices.push_back(
            {saying.code,
             sentence(row, late ? "The inner catheter is out already: do not push the bare sheath; bring a catheter back "
                                  "first."
                                : saying.then),
             {}});
    }
    if (f.quantity == Q::JetWidth) row.what += " (" + std::string(words(jetClass(f.value))) + ")";
    if (f.quantity == Q::Effusion && f.value > 0.0)
        report.notices.push_back({"effusion-present",
                                  "A pericardial effusion of " + withUnit(f.value, "mm") + " was seen by " + f.seenBy +
                                      ": compare it with the view before the puncture.",
                                  {}});
    if (f.quantity == Q::SeptalHole && f.value > 0.0 && state.stage == Stage::FollowUp)
        report.notices.push_back(
            {"septal-hole", "The crossing left a hole of " + withUnit(f.value, "mm") + " in the septum.", {}});
    report.rows.push_back(std::move(row));
    if (f.quantity == Q::ImplantWidth) addCompression(report, f, l);
}

void gapsOnPull(ReleaseReport& report, const ReleaseState& state, const ReleaseLimits& l) {
    for (const auto& before : state.findings) {
        if (before.quantity != Q::GapBeforePull) continue;
        for (const auto& after : state.findings)
            if (after.quantity == Q::GapAfterPull && after.view == before.view && after.side == before.side &&
                after.value - before.value >= l.gapGrowthMm)
                report.notices.push_back(
                    {"gap-grows-on-pull",
                     (before.view.empty() ? "" : before.view + ": ") + std::string("the gap") +
                         (before.side.empty() ? "" : " on the " + before.side) + " grows from " + withUnit(before.value, "mm") +
                         " to " + withUnit(after.value, "mm") + " on the pull: the implant is not stable.",
                     {}});
    }
}

void groupByView(std::vector<ReleaseRow>& rows) {
    std::vector<std::string> order;
    for (const auto& r : rows)
        if (!r.view.empty() && std::find(order.begin(), order.end(), r.view) == order.end()) order.push_back(r.view);
    const auto place = [&](const ReleaseRow& r) { return std::find(order.begin(), order.end(), r.view) - order.begin(); };
    std::stable_sort(rows.begin(), rows.end(), [&](const auto& a, const auto& b) { return place(a) < place(b); });
}

void missing(ReleaseReport& report, const ReleaseState& state, const ReleaseLimits& l) {
    std::string list;
    for (const Q q : askedAt(state.stage, l.hasDisc)) {
        const bool seen = std::any_of(state.findings.begin(), state.findings.end(),
                                      [&](const ReleaseFinding& f) { return f.quantity == q; });
        if (seen) continue;
        report.notSeen.push_back(q);
        list += (list.empty() ? "" : ", ") + std::string(words(q));
    }
    if (!list.empty())
        report.notices.push_back({"release-checks-missing", "Not looked at yet at this stage: " + list + ".", {}});
}

} // namespace

std::string_view words(RangeBasis basis) {
    switch (basis) {
    case RangeBasis::Chart: return "the chart";
    case RangeBasis::Published: return "published";
    case RangeBasis::CommonPractice: return "common practice, no source";
    case RangeBasis::Assumption: break;
    }
    return "an assumption";
}

std::vector<ReleaseQuantity> askedAt(Stage stage, bool hasDisc) {
    std::vector<Q> asked;
    switch (stage) {
    case Stage::SheathInAppendage: return {Q::SheathTipDepth, Q::Effusion};
    case Stage::PartlyDeployed:
        asked = {Q::ImplantWidth, Q::Effusion};
        if (hasDisc) asked.insert(asked.begin(), {Q::ShareBeyondCircumflex, Q::LobeToNeckAngle});
        return asked;
    case Stage::DeployedAttached:
        asked = {Q::ImplantWidth, Q::GapBeforePull, Q::GapAfterPull, Q::LobeToNeckAngle, Q::UncoveredLobes, Q::JetWidth,
                 Q::ClearancePulmonaryArtery, Q::ClearanceMitralAnnulus, Q::Effusion, Q::MitralGradient,
                 Q::RegurgitationGrade, Q::VeinFlowFree};
        if (hasDisc) asked.insert(asked.begin(), {Q::ShareBeyondCircumflex, Q::DiscSeparation});
        return asked;
    case Stage::AfterRelease:
        return {Q::ImplantWidth, Q::JetWidth, Q::Effusion, Q::MitralGradient, Q::RegurgitationGrade, Q::VeinFlowFree};
    case Stage::FollowUp: return {Q::ImplantWidth, Q::JetWidth, Q::DeviceThrombus, Q::SeptalHole, Q::Effusion};
    default: break;
    }
    return asked;
}

Result<ReleaseReport> checkRelease(const ReleaseState& state, const ReleaseLimits& limits) {
    if (const auto ok = validate(state); !ok) return tl::make_unexpected(ok.error());
    if (limits.nominalMm && !(*limits.nominalMm > 0.0 && std::isfinite(*limits.nominalMm)))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot check the release: the implant's nominal diameter must be above 0 mm.");
    ReleaseReport report;
    for (const auto& f : state.findings)
        addFinding(report, f, state, limits);
    gapsOnPull(report, state, limits);
    groupByView(report.rows);
    missing(report, state, limits);
    return report;
}

} // namespace gauge::core
