#include "core/sizing/judged.h"
#include "core/sizing/wording.h"

#include <set>

namespace gauge::core {
namespace {

constexpr double kOwnShare = 0.5; // below it the slope is the prior's more than the patient's

void addLiving(const Judged& j, std::vector<Notice>& notices) {
    const SizingQuestion& q = j.question;
    if (!q.lowestMmHg || !q.highestMmHg)
        notices.push_back({"living-range-assumed",
                           "The pressures that the implant will live with were not " +
                               std::string(q.lowestMmHg || q.highestMmHg ? "both " : "") + "given; " +
                               pressureText(j.living.lowestMmHg) + " to " +
                               pressureText(j.living.highestMmHg) + " are assumed.",
                           {}});
    std::set<std::string> told;
    for (std::size_t i = 0; i < q.observations.size(); ++i) {
        const Observation& o = q.observations[i];
        const StatePressure* state = j.counts(i) ? j.state(o.state) : nullptr;
        if (!state || !state->measured || state->meanMmHg <= j.living.highestMmHg) continue;
        // After a lasting fall the pressures before the repair are past, unless regurgitation may recur.
        const bool past = q.cause == PressureChange::Lasting && o.stage <= Stage::BeforeRepair &&
                          !q.facts.regurgitationMayRecur;
        if (past || !told.insert(o.state).second) continue;
        notices.push_back(
            {"pressure-outside-living-range",
             "The pressure of the state \"" + o.state + "\" (" + pressureText(state->meanMmHg) +
                 ") lies above the living range; raise its highest pressure if that may come back.",
             {{"state", o.state}}});
    }
}

void addReadingsAssumed(const Judged& j, std::vector<Notice>& notices) {
    if (j.answer.question.by2d)
        notices.push_back({"sized-by-2d",
                           "No reading is the chart's number by three-dimensional imaging; its number by "
                           "two-dimensional imaging is used: " +
                               std::string(plainName(j.answer.question.quantity)) + " as " +
                               std::string(plainName(j.answer.question.derivation)) + ".",
                           {}});
    for (std::size_t i = 0; i < j.question.observations.size(); ++i) {
        const Observation& o = j.question.observations[i];
        if (!j.counts(i))
            notices.push_back({"reading-without-weight",
                               std::string(plainName(o.modality)) + " of the state \"" + o.state + "\" (" +
                                   std::string(plainName(o.quantity)) + ", " +
                                   std::string(plainName(o.derivation)) + ", " + mmText(o.valueMm) +
                                   ") is shown with weight 0: " + j.answer.weights[i].reason,
                               {{"reading", std::to_string(i)}}});
        else if (o.phase == Phase::Unknown)
            notices.push_back({"phase-unknown",
                               "The phase of the reading by " + std::string(plainName(o.modality)) +
                                   " in the state \"" + o.state + "\" is not known.",
                               {{"reading", std::to_string(i)}}});
    }
}

void addDepth(const Judged& j, std::vector<Notice>& notices) {
    if (j.fits.empty()) return;
    const SizeFit& fit = j.fits.front();
    if (!fit.depthMm) {
        notices.push_back({"depth-unknown", "The depth is not known; no size is judged on it.", {}});
        return;
    }
    if (j.question.chart.depthFrom == DepthFrom::LandingZone && !j.question.facts.depthFromLandingZoneMm)
        notices.push_back(
            {"depth-less-landing-offset",
             "The chart counts depth from the landing plane; the depth from the ostium less each size's "
             "landing offset is used.",
             {}});
}

void addSlope(const Judged& j, std::vector<Notice>& notices) {
    const SlopeEstimate slope = j.answer.posterior.slope();
    if (slope.patientShare >= kOwnShare) return;
    notices.push_back(
        {"slope-mostly-prior",
         "How much this appendage widens with pressure rests mostly on loading studies and an assumption "
         "(share of this patient's own readings: " +
             chanceText(slope.patientShare) +
             "). Two readings by one method at two measured pressures would make it the patient's own.",
         {}});
}

void addCause(const Judged& j, std::vector<Notice>& notices) {
    if (j.question.cause != PressureChange::Unknown) return;
    notices.push_back(
        {"cause-unknown",
         "Why the pressures differ was not said: both a passing and a lasting change are shown, so the range "
         "of widths is wider than for either.",
         {}});
}

} // namespace

void addAssumptions(const Judged& j, std::vector<Notice>& notices) {
    addLiving(j, notices);
    addCause(j, notices);
    addReadingsAssumed(j, notices);
    addDepth(j, notices);
    addSlope(j, notices);
}

} // namespace gauge::core
