#include "core/sizing/judged.h"
#include "core/sizing/wording.h"

#include <cmath>
#include <set>

namespace gauge::core {
namespace {

// Differences echo minus CT that are published, mean and SD, mm [computed from orifice areas of Nucifora et
// al. 2011].
struct Published {
    Modality modality;
    double meanMm, sdMm;
};
constexpr Published kPublished[] = {{Modality::Echo3d, -0.2, 1.3}, {Modality::Echo2d, -2.3, 2.1}};
constexpr double kOvalIndex = 0.20; // eccentricity index of a leak study with 137 patients [read]

bool repairSeen(const Judged& j) {
    for (const Observation& o : j.question.observations)
        if (o.stage >= Stage::AfterRepair) return true;
    return false;
}

void addUnknownPressures(const Judged& j, std::vector<Notice>& warnings) {
    std::set<std::string> told;
    for (std::size_t i = 0; i < j.question.observations.size(); ++i) {
        const Observation& o = j.question.observations[i];
        const StatePressure* state = j.counts(i) ? j.state(o.state) : nullptr;
        if (!state || state->measured || !told.insert(o.state).second) continue;
        const bool after = o.stage >= Stage::AfterRepair;
        const std::string assumed =
            pressureText(state->meanMmHg) + ", give or take " + pressureText(state->sdMmHg);
        warnings.push_back(
            {after ? "pressure-after-repair-unknown" : "pressure-unknown",
             "The left atrial pressure of the state \"" + o.state + "\" (" + std::string(plainName(o.stage)) +
                 ") was not measured; the readings leave it at " + assumed + "." +
                 (after ? " A repair does not always lower it: in a registry of 2,629 patients the mean fell "
                          "in 59 %. Measure it."
                        : ""),
             {{"state", o.state}}});
    }
    if (j.question.cause == PressureChange::Lasting && !repairSeen(j))
        warnings.push_back(
            {"no-reading-after-repair",
             "The fall is said to last, but no reading was taken after the repair: the fall itself is an "
             "assumption. In a registry of 2,629 patients the mean pressure fell in 59 %.",
             {}});
}

void addBelowAdvised(const Judged& j, std::vector<Notice>& warnings) {
    const auto least = j.question.chart.reading.leastPressureMmHg;
    if (!least) return;
    std::set<std::string> told;
    for (std::size_t i = 0; i < j.question.observations.size(); ++i) {
        const Observation& o = j.question.observations[i];
        const auto mmHg = j.counts(i) ? j.recordedMmHg(o.state) : std::nullopt;
        if (!mmHg || *mmHg >= *least || !told.insert(o.state).second) continue;
        warnings.push_back({"read-below-advised-pressure",
                            "The state \"" + o.state + "\" was read at " + pressureText(*mmHg) +
                                "; the chart wants at least " + pressureText(*least) +
                                ". Measure again after filling, if the treating team judges filling safe.",
                            {{"state", o.state}, {"pressure_mmHg", std::to_string(*mmHg)}}});
    }
}

void addPhases(const Judged& j, std::vector<Notice>& warnings) {
    if (j.question.chart.reading.phase != Phase::EndSystole) return;
    for (std::size_t i = 0; i < j.question.observations.size(); ++i) {
        const Observation& o = j.question.observations[i];
        if (!j.counts(i) || o.phase != Phase::Other) continue;
        warnings.push_back(
            {"not-largest-phase",
             std::string(plainName(o.modality)) + " of the state \"" + o.state + "\" (" + mmText(o.valueMm) +
                 ") was not read at end-systole, when the appendage is largest and the chart wants it.",
             {{"reading", std::to_string(i)}}});
    }
}

void addMixedBeats(const Judged& j, std::vector<Notice>& warnings) {
    for (const std::size_t i : j.question.facts.mixedBeats) {
        const Observation& o = j.question.observations[i];
        warnings.push_back(
            {"mixed-beats",
             std::string(plainName(o.modality)) + " of the state \"" + o.state + "\" (" + mmText(o.valueMm) +
                 ") comes from beats of different length; its widths may belong to different fillings.",
             {{"reading", std::to_string(i)}}});
    }
}

/// A reading carried to the decision pressure with the slope before any reading, so that readings which
/// contradict each other cannot explain it away, and with the recorded pressure where there is one.
std::optional<double> carried(const Judged& j, const Observation& o) {
    const StatePressure* state = j.state(o.state);
    if (!state) return std::nullopt;
    const auto& q = j.answer.question;
    const double mmHg = j.recordedMmHg(o.state).value_or(state->meanMmHg);
    return o.valueMm * o.contourPerView.value_or(1.0) -
           slopePrior(q.priors, q.quantity).mean * pressureTerm(q.law, mmHg, q.decisionPressure.mmHg());
}

void compare(const Judged& j, const Observation& ct, const Observation& other,
             std::vector<Notice>& warnings) {
    for (const Published& p : kPublished) {
        if (p.modality != other.modality) continue;
        const auto a = carried(j, ct), b = carried(j, other);
        if (!a || !b) continue;
        const double lo = p.meanMm - 1.96 * p.sdMm, hi = p.meanMm + 1.96 * p.sdMm, difference = *b - *a;
        if (difference >= lo && difference <= hi) continue;
        warnings.push_back({"modalities-disagree",
                            std::string(plainName(other.modality)) + " (state \"" + other.state +
                                "\") and CT (state \"" + ct.state + "\") differ by " + mmText(difference) +
                                ", both carried to " +
                                pressureText(j.answer.question.decisionPressure.mmHg()) +
                                "; published differences lie from " + mmRange(lo, hi) +
                                ". Look at plane, phase and scale of both before choosing.",
                            {{"difference_mm", std::to_string(difference)}}});
    }
}

void addDisagreement(const Judged& j, std::vector<Notice>& warnings) {
    const auto& all = j.question.observations;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t k = 0; k < all.size(); ++k)
            if (j.counts(i) && j.counts(k) && all[i].modality == Modality::Ct &&
                all[k].modality != Modality::Ct)
                compare(j, all[i], all[k], warnings);
}

void addExtrapolated(const Judged& j, std::vector<Notice>& warnings) {
    std::string where;
    const auto add = [&](const DiameterAt& width, const std::string& what) {
        if (width.extrapolated)
            where += (where.empty() ? "" : ", ") + what + " " + pressureText(width.pressureMmHg);
    };
    add(j.widths.decision, "decision pressure");
    add(j.widths.lowest, "lowest living pressure");
    add(j.widths.highest, "highest living pressure");
    if (where.empty()) return;
    const Priors& p = j.answer.question.priors;
    warnings.push_back({"extrapolated",
                        "Outside the pressures that loading studies span (" +
                            pressureText(p.lowestValidMmHg.value) + " to " +
                            pressureText(p.highestValidMmHg.value) + "): " + where +
                            ". The width there is an extrapolation, stated with a larger uncertainty.",
                        {}});
}

void addShape(const Judged& j, std::vector<Notice>& warnings) {
    if (const auto& s = j.question.facts.section) {
        const double index = 1.0 - s->shortestMm / s->longestMm;
        if (index > kOvalIndex)
            warnings.push_back(
                {"oval-landing-zone",
                 "Strongly oval landing zone: " + mmText(s->longestMm) + " by " + mmText(s->shortestMm) +
                     " (eccentricity index " + std::to_string(index).substr(0, 4) +
                     "). A round implant is pressed more along the shortest diameter and less along the "
                     "longest than the percentages say.",
                 {{"eccentricity_index", std::to_string(index)}}});
    }
    const auto& bend = j.question.facts.bend;
    if (!bend || !isSharp(*bend)) return;
    warnings.push_back({"sharp-early-bend",
                        "Sharp bend: the axis turns by " + std::to_string(std::lround(bend->turnDeg)) +
                            " degrees after " + mmText(bend->neckLengthMm) + " of neck" +
                            (bend->widthMm ? ", " + mmText(*bend->widthMm) + " wide there" : "") +
                            (bend->depthMm ? ", with " + mmText(*bend->depthMm) + " of depth beyond" : "") +
                            ". See each size for whether a folded placement can be reached.",
                        {{"turn_deg", std::to_string(bend->turnDeg)}}});
}

} // namespace

void addReadings(const Judged& j, std::vector<Notice>& warnings) {
    addUnknownPressures(j, warnings);
    addBelowAdvised(j, warnings);
    addPhases(j, warnings);
    addMixedBeats(j, warnings);
    addDisagreement(j, warnings);
    addExtrapolated(j, warnings);
    addShape(j, warnings);
}

} // namespace gauge::core
