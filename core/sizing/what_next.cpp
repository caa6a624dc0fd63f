#include "core/sizing/what_next.h"

#include "core/parallel/parallel_for.h"
#include "core/sizing/wording.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace gauge::core {
namespace {

constexpr std::uint32_t kSeed = 20261125;         // any: the same input gives the same chance
constexpr double kLeastMeasuredMmHg = 0.5;        // a simulated pressure below is cut here, as a person would
constexpr const char* kNewState = "next reading"; // a state of its own

/// Standard normal numbers, the same on every machine.
class Normals {
public:
    double next() {
        const double u = (static_cast<double>(m_engine() >> 11) + 0.5) / 9007199254740992.0; // 2^53
        return normalQuantile(u);
    }

private:
    std::mt19937_64 m_engine{kSeed};
};

std::optional<std::size_t> latestReading(const ChartAnswer& answer, const std::vector<Observation>& readings,
                                         bool echoOnly) {
    std::optional<std::size_t> latest;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (!answer.weights[i].reason.empty()) continue;
        const Modality m = readings[i].modality;
        if (echoOnly && m != Modality::Echo2d && m != Modality::Echo3d) continue;
        if (!latest || readings[i].stage >= readings[*latest].stage) latest = i;
    }
    return latest;
}

const StatePressure* stateOf(const Posterior& posterior, const std::string& state) {
    for (const StatePressure& s : posterior.states())
        if (s.state == state) return &s;
    return nullptr;
}

/// Fills in where a further reading takes place.
void place(PlannedAct& act, const Observation& latest, double todayMmHg) {
    Observation o;
    o.quantity = latest.quantity;
    o.modality = act.reading->modality;
    o.derivation = act.reading->derivation;
    if (latest.stage > Stage::BeforeProcedure) {
        o.stage = latest.stage;
        o.state = latest.state;
        o.condition = latest.condition;
        o.phase = latest.phase;
        act.reading->state = latest.state;
        act.reading->phase = latest.phase;
    } else {
        o.state = kNewState;
        o.phase = Phase::Other;
        o.pressureMmHg = todayMmHg;
        o.pressureSource = PressureSource::Direct;
        o.pressureUncertaintyMmHg = 0.0;
        act.reading->pressureMmHg = todayMmHg;
    }
    act.observation = std::move(o);
}

std::string whereWords(const PlannedAct& act, double todayMmHg) {
    return act.reading->state.empty() ? "at " + pressureText(todayMmHg)
                                      : "in the state \"" + act.reading->state + "\"";
}

PlannedAct pressureAct(const ChartAnswer& answer, const Observation& latest) {
    PlannedAct act;
    act.act = Act::MeasurePressure;
    act.state = latest.state;
    const bool otherDay = latest.stage == Stage::BeforeProcedure;
    act.source = otherDay ? PressureSource::ProcedureStart : PressureSource::Direct;
    const StatePressure* state = stateOf(answer.posterior, latest.state);
    const bool known = state && state->measured && latest.pressureSource == PressureSource::Direct;
    act.possible = !known;
    act.text = known ? "The left atrial pressure of the state \"" + latest.state +
                           "\" was measured directly already; once more would tell little."
                     : "Left atrial pressure measured directly" +
                           std::string(otherDay ? " today, and taken for the state \"" : " in the state \"") +
                           latest.state + "\".";
    return act;
}

PlannedAct readingAct(Act which, Modality modality, Derivation derivation) {
    PlannedAct act;
    act.act = which;
    act.reading = FurtherReading{};
    act.reading->modality = modality;
    act.reading->derivation = derivation;
    return act;
}

} // namespace

const char* name(Act act) {
    switch (act) {
    case Act::MeasurePressure:
        return "measure-la-pressure";
    case Act::OneMoreAngle:
        return "one-more-angle";
    case Act::Echo3d:
        return "3d-echo";
    case Act::RemeasureAfterFilling:
        return "re-measure-after-filling";
    }
    return "";
}

std::vector<PlannedAct> plannedActs(const DeviceChart& chart, const ChartAnswer& answer,
                                    const std::vector<Observation>& readings) {
    std::vector<PlannedAct> acts;
    const auto latestIndex = latestReading(answer, readings, false);
    if (!latestIndex) return acts;
    const Observation& latest = readings[*latestIndex];
    const double decision = answer.question.decisionPressure.mmHg();
    const bool views = answer.question.derivation == Derivation::LargestOfViews;
    acts.push_back(pressureAct(answer, latest));

    auto angle = readingAct(Act::OneMoreAngle, Modality::Echo2d,
                            views ? Derivation::LargestOfViews : Derivation::EllipseFromAngles);
    place(angle, latest, decision);
    angle.text = std::string("One more reading by 2D echo, ") +
                 std::string(plainName(angle.reading->derivation)) + ", " + whereWords(angle, decision) + ".";
    acts.push_back(std::move(angle));

    if (!views) {
        auto contour = readingAct(Act::Echo3d, Modality::Echo3d, Derivation::Contour);
        place(contour, latest, decision);
        contour.text = "A contour by 3D echo " + whereWords(contour, decision) + ".";
        acts.push_back(std::move(contour));
    }
    const auto echo = latestReading(answer, readings, true);
    auto filled = readingAct(Act::RemeasureAfterFilling, echo ? readings[*echo].modality : Modality::Echo2d,
                             echo    ? readings[*echo].derivation
                             : views ? Derivation::LargestOfViews
                                     : Derivation::EllipseFromAngles);
    const double fillTo = std::max(decision, chart.reading.leastPressureMmHg.value_or(decision));
    Observation today = latest;
    today.stage = Stage::BeforeProcedure;
    place(filled, today, fillTo);
    filled.text = std::string(plainName(filled.reading->modality)) + " (" +
                  std::string(plainName(filled.reading->derivation)) + ") after filling to " +
                  pressureText(fillTo) + ", if the treating team judges filling safe.";
    acts.push_back(std::move(filled));
    return acts;
}

std::vector<Observation> after(const PlannedAct& act, const std::vector<Observation>& readings,
                               double value) {
    std::vector<Observation> next = readings;
    if (act.observation) {
        next.push_back(*act.observation);
        next.back().valueMm = value;
        return next;
    }
    for (Observation& o : next) {
        if (o.state != act.state) continue;
        o.pressureMmHg = std::max(value, kLeastMeasuredMmHg);
        o.pressureSource = act.source;
        o.pressureUncertaintyMmHg.reset();
    }
    return next;
}

std::size_t leadingSize(const DeviceChart& chart, const Posterior& posterior) {
    const GaussianMixture diameter = posterior.diameter(posterior.decisionPressureMmHg());
    std::size_t best = 0;
    double bestChance = -1.0;
    for (std::size_t i = 0; i < chart.sizes.size(); ++i) {
        const Band& band = chart.sizes[i].acceptsMm;
        const double chance = diameter.probabilityWithin(band.lo, band.hi);
        if (chance <= bestChance) continue;
        best = i;
        bestChance = chance;
    }
    return best;
}

namespace {

/// What the act may give, in equally likely values.
Result<std::vector<double>> outcomes(const PlannedAct& act, const ChartAnswer& answer, int count) {
    std::vector<FurtherReading> further;
    if (act.reading) further.push_back(*act.reading);
    const auto draws = answer.posterior.draws({}, further, count, kSeed);
    if (!draws) return tl::make_unexpected(draws.error());
    std::vector<double> values;
    if (act.reading) {
        for (const PatientDraw& draw : *draws)
            values.push_back(draw.readingsMm.front());
        return values;
    }
    const auto& states = answer.posterior.states();
    const auto state = std::find_if(states.begin(), states.end(),
                                    [&](const StatePressure& s) { return s.state == act.state; }) -
                       states.begin();
    const double u = pressureUncertaintyMmHg(answer.question.priors, act.source);
    Normals normals;
    for (const PatientDraw& draw : *draws)
        values.push_back(draw.meanPressuresMmHg[static_cast<std::size_t>(state)] + u * normals.next());
    return values;
}

Result<double> chanceOf(const PlannedAct& act, const DeviceChart& chart, const ChartAnswer& answer,
                        const std::vector<Observation>& readings, std::size_t leading,
                        const WhatNextOptions& options) {
    const auto values = outcomes(act, answer, options.draws);
    if (!values) return tl::make_unexpected(values.error());
    std::vector<char> changes(values->size(), 0);
    std::vector<std::optional<Error>> errors(values->size());
    parallelFor(values->size(), 4, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i) {
            const double value = (*values)[i];
            if (act.observation && value <= 0.0) continue; // no width: the person would read again
            const auto next =
                answerAgain(answer.question, after(act, readings, value), PosteriorOptions{options.points});
            if (next)
                changes[i] = leadingSize(chart, *next) != leading;
            else
                errors[i] = next.error();
        }
    });
    for (const auto& error : errors)
        if (error) return tl::make_unexpected(*error);
    const auto changed = std::count(changes.begin(), changes.end(), 1);
    return static_cast<double>(changed) / static_cast<double>(values->size());
}

} // namespace

Result<std::vector<NextAct>> whatNext(const DeviceChart& chart, const ChartAnswer& answer,
                                      const std::vector<Observation>& readings, std::size_t leading,
                                      const WhatNextOptions& options) {
    std::vector<NextAct> acts;
    if (options.draws <= 0) return acts;
    for (PlannedAct& act : plannedActs(chart, answer, readings)) {
        double chance = 0.0;
        if (act.possible) {
            const auto stated = chanceOf(act, chart, answer, readings, leading, options);
            if (!stated) return tl::make_unexpected(stated.error());
            chance = *stated;
        }
        acts.push_back({act.act, chance, std::move(act.text)});
    }
    return acts;
}

} // namespace gauge::core
