#include "core/sizing/sizing.h"

#include "core/release/stasis.h"
#include "core/sizing/judged.h"
#include "core/sizing/size_warnings.h"
#include "core/sizing/wording.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

constexpr double kMostMmHg = 60.0; // beyond, it is another unit

Result<void> checkPressure(const char* what, double mmHg) {
    if (std::isfinite(mmHg) && mmHg >= kLeastPressureMmHg && mmHg <= kMostMmHg) return {};
    return failure(ErrorCode::InvalidArgument, "Cannot size at a " + std::string(what) + " of " +
                                                   pressureText(mmHg) + "; from 3 to 60 mmHg is possible.");
}

Result<double> decisionPressure(const SizingQuestion& q) {
    const auto mmHg = q.decisionPressureMmHg ? q.decisionPressureMmHg : q.chart.reading.decisionPressureMmHg;
    if (!mmHg)
        return failure(ErrorCode::InvalidArgument,
                       "No decision pressure: the chart \"" + q.chart.name +
                           "\" states none, so say at which left atrial pressure the reading counts.");
    if (const auto ok = checkPressure("decision pressure", *mmHg); !ok)
        return tl::make_unexpected(ok.error());
    return *mmHg;
}

Result<LivingRange> livingRange(const SizingQuestion& q) {
    LivingRange range;
    range.lowestMmHg = q.lowestMmHg.value_or(range.lowestMmHg);
    range.highestMmHg = q.highestMmHg.value_or(range.highestMmHg);
    if (const auto ok = checkPressure("lowest pressure", range.lowestMmHg); !ok)
        return tl::make_unexpected(ok.error());
    if (const auto ok = checkPressure("highest pressure", range.highestMmHg); !ok)
        return tl::make_unexpected(ok.error());
    if (range.lowestMmHg >= range.highestMmHg)
        return failure(ErrorCode::InvalidArgument,
                       "The lowest living pressure (" + pressureText(range.lowestMmHg) +
                           ") must lie below the highest (" + pressureText(range.highestMmHg) + ").");
    return range;
}

/// Median of another quantity at a pressure, from its own readings; none where there are none.
std::optional<double> medianOf(const SizingQuestion& q, Quantity quantity, double decisionMmHg,
                               double atMmHg) {
    const auto p =
        posterior(q.observations, quantity, Pressure::fromMmHg(decisionMmHg), q.law, q.priors, q.posterior);
    if (!p) return std::nullopt;
    return p->at(atMmHg).medianMm;
}

DepthKnown depthOf(const SizingQuestion& q, double decisionMmHg, const LivingRange& living) {
    DepthKnown depth{q.facts.depthMm, q.facts.depthFromLandingZoneMm, q.facts.depthIsLowerBound,
                     "as measured"};
    if (depth.fromOstiumMm || depth.fromLandingZoneMm) return depth;
    depth.fromOstiumMm = medianOf(q, Quantity::Depth, decisionMmHg, living.lowestMmHg);
    depth.basis = "readings of depth carried to " + pressureText(living.lowestMmHg);
    return depth;
}

std::optional<double> ostiumOf(const SizingQuestion& q, double decisionMmHg, const LivingRange& living) {
    if (q.facts.ostiumLongestMm) return q.facts.ostiumLongestMm;
    return medianOf(q, Quantity::OstiumLongestDiameter, decisionMmHg, living.highestMmHg);
}

/// The newest pressure measured after the repair, else the decision pressure.
double newPressure(const SizingQuestion& q, const Posterior& posterior, double decisionMmHg) {
    std::optional<Stage> newest;
    double mmHg = decisionMmHg;
    for (const Observation& o : q.observations)
        for (const StatePressure& s : posterior.states()) {
            const bool takes = s.measured && s.state == o.state && o.stage >= Stage::AfterRepair;
            if (!takes || (newest && o.stage < *newest)) continue;
            newest = o.stage;
            mmHg = s.meanMmHg;
        }
    return mmHg;
}

LivingWidths widths(PressureChange cause, LivingRange range, const Posterior& posterior) {
    if (range.lowestMmHg > range.highestMmHg) std::swap(range.lowestMmHg, range.highestMmHg);
    return {
        cause, range, {posterior.at(range.lowestMmHg).lower95Mm, posterior.at(range.highestMmHg).upper95Mm}};
}

void addLivingWidths(const SizingQuestion& q, const Posterior& posterior, double decisionMmHg,
                     SizingAnswer& a) {
    if (q.cause != PressureChange::Lasting)
        a.livingWidths.push_back(widths(PressureChange::Passing,
                                        {decisionMmHg, std::max(decisionMmHg, a.living.highestMmHg)},
                                        posterior));
    if (q.cause != PressureChange::Passing) {
        const double top =
            q.facts.regurgitationMayRecur ? a.living.highestMmHg : newPressure(q, posterior, decisionMmHg);
        a.livingWidths.push_back(
            widths(PressureChange::Lasting, {std::min(a.living.lowestMmHg, top), top}, posterior));
    }
    a.livingInterval95Mm = a.livingWidths.front().interval95Mm;
    for (const LivingWidths& w : a.livingWidths) {
        a.livingInterval95Mm.lo = std::min(a.livingInterval95Mm.lo, w.interval95Mm.lo);
        a.livingInterval95Mm.hi = std::max(a.livingInterval95Mm.hi, w.interval95Mm.hi);
    }
}

void addSizes(const SizingQuestion& q, const ChartAnswer& answer, double decisionMmHg, const WidthsAt& widths,
              SizingAnswer& a) {
    const DepthKnown depth = depthOf(q, decisionMmHg, a.living);
    const auto ostium = ostiumOf(q, decisionMmHg, a.living);
    for (const ChartSize& size : q.chart.sizes) {
        SizeFit fit = fitOf(size, q.chart, answer.posterior, widths, q.facts, depth, ostium);
        fit.warnings = sizeWarnings(fit, size, q.chart, widths, q.facts, depth);
        a.sizes.push_back(std::move(fit));
    }
    a.leading = greatestFit(a.sizes);
}

/// The sheath's stages alone tell nothing: without a repair, what comes before them counts as before it.
bool repaired(const SizingQuestion& q) {
    const auto afterRepair = [](const auto& item) { return item.stage == Stage::AfterRepair; };
    return q.cause == PressureChange::Lasting ||
           std::any_of(q.observations.begin(), q.observations.end(), afterRepair) ||
           std::any_of(q.facts.stasis.begin(), q.facts.stasis.end(), afterRepair);
}

void addStasis(const SizingQuestion& q, SizingAnswer& a) {
    const StasisJudgement stasis = judgeStasis(q.facts.stasis, repaired(q));
    a.warnings.insert(a.warnings.end(), stasis.warnings.begin(), stasis.warnings.end());
    a.notices.insert(a.notices.end(), stasis.notices.begin(), stasis.notices.end());
    a.planStopped = stasis.planStopped;
    a.sizeMayBeSigned = stasis.sizeMayBeSigned;
}

} // namespace

const char* name(PressureChange cause) {
    switch (cause) {
    case PressureChange::Passing:
        return "passing";
    case PressureChange::Lasting:
        return "lasting";
    case PressureChange::Unknown:
        break;
    }
    return "unknown";
}

Result<SizingAnswer> sizeImplant(const SizingQuestion& q) {
    const auto decision = decisionPressure(q);
    if (!decision) return tl::make_unexpected(decision.error());
    const auto living = livingRange(q);
    if (!living) return tl::make_unexpected(living.error());
    const auto answer =
        answerChart(q.chart, q.observations, q.law, Pressure::fromMmHg(*decision), q.priors, q.posterior);
    if (!answer) return tl::make_unexpected(answer.error());

    SizingAnswer a;
    a.question = answer->question;
    const WidthsAt widths = widthsAt(answer->posterior, *living);
    a.diameter = widths.decision;
    a.slope = answer->posterior.slope();
    a.weights = answer->weights;
    a.states = answer->posterior.states();
    a.living = *living;
    addLivingWidths(q, answer->posterior, *decision, a);
    addSizes(q, *answer, *decision, widths, a);

    const Judged judged{q, *answer, *living, widths, a.sizes, a.leading};
    addStasis(q, a);
    addSituations(judged, a.warnings);
    addChoice(judged, a.warnings);
    addReadings(judged, a.warnings);
    addAssumptions(judged, a.notices);
    const auto& modelled = answer->posterior.notices();
    a.notices.insert(a.notices.end(), modelled.begin(), modelled.end());
    if (!a.leading) return a;

    auto next = whatNext(q.chart, *answer, q.observations, *a.leading, q.whatNext);
    if (!next) return tl::make_unexpected(next.error());
    a.whatNext = std::move(*next);
    auto card = roomCard(q.chart, *answer, q.observations, q.facts, *a.leading);
    if (!card) return tl::make_unexpected(card.error());
    a.card = std::move(*card);
    return a;
}

} // namespace gauge::core
