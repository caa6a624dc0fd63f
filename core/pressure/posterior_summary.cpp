#include "core/pressure/posterior_content.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {

namespace {

using Content = Posterior::Content;

constexpr double kContradictionChance = 0.01; // below, the readings are said to contradict each other
constexpr double kOwnSlopeShare = 0.1;        // below, the slope is said to be assumed

struct WeightedMoments {
    double weight = 0.0, mean = 0.0, squares = 0.0;
    void add(double w, double x) {
        weight += w;
        const double step = x - mean;
        mean += step * w / weight;
        squares += w * step * (x - mean);
    }
    double variance() const { return squares / weight; }
};

/// D at the decision pressure and the error-free reading, over the nodes: their covariance and the reading's mean.
struct ReadingMoments {
    double covariance = 0.0;
    double mean = 0.0;
};

ReadingMoments momentsOf(const Content& c, const CountedReading& r) {
    const LinearVector answer = c.row(c.decisionMmHg);
    double meanAnswer = 0.0, meanReading = 0.0, meanProduct = 0.0, within = 0.0;
    for (const auto& node : c.nodes) {
        const double p = c.pressureOf(node, r);
        const NodeNormal a = c.normalAt(node, c.decisionMmHg), b = c.normalAt(node, p, r.kind);
        const double k = node.slopeMean;
        meanAnswer += node.weight * (a.offset + k * a.gain);
        meanReading += node.weight * (b.offset + k * b.gain);
        meanProduct += node.weight * (a.offset + k * a.gain - c.centreMm) * (b.offset + k * b.gain - c.centreMm);
        within += node.weight * (answer.dot(*node.covariance * c.row(p, r.kind)) + node.slopeVariance * a.gain * b.gain);
    }
    return {within + meanProduct - (meanAnswer - c.centreMm) * (meanReading - c.centreMm), meanReading};
}

// For normal errors the derivative of a posterior mean by a reading is cov(answer, error-free reading) / u^2.
void fillWeights(Content& c, std::span<const Observation> all) {
    c.weights.assign(all.size(), {});
    for (std::size_t i = 0; i < all.size(); ++i)
        c.weights[i].reason = c.readings.reasons[i];
    double sum = 0.0;
    for (const auto& r : c.readings.counted) {
        const ReadingMoments m = momentsOf(c, r);
        ReadingWeight& w = c.weights[r.index];
        w.sensitivity = m.covariance / (r.standardUncertaintyMm * r.standardUncertaintyMm);
        w.residualMm = r.valueMm - m.mean;
        sum += w.sensitivity;
    }
    // They add to 1 (moving all readings moves the answer as much); what is off is the integration's error.
    double absolute = 0.0;
    for (auto& w : c.weights) {
        w.sensitivity /= sum;
        absolute += std::abs(w.sensitivity);
    }
    for (auto& w : c.weights)
        w.weight = std::abs(w.sensitivity) / absolute;
}

void fillStates(Content& c) {
    for (std::size_t s = 0; s < c.readings.states.size(); ++s) {
        WeightedMoments m;
        for (const auto& node : c.nodes)
            m.add(node.weight, std::max(kLeastPressureMmHg, node.meanPressures[s]));
        const PressureState& state = c.readings.states[s];
        c.states.push_back({state.name, m.mean, std::sqrt(m.variance()), state.measured});
    }
}

void fillSlope(Content& c) {
    WeightedMoments m;
    double within = 0.0;
    for (const auto& node : c.nodes) {
        m.add(node.weight, node.slopeMean);
        within += node.weight * node.slopeVariance;
    }
    const double variance = m.variance() + within;
    c.slope.meanMmPerMmHg = m.mean;
    c.slope.sdMmPerMmHg = std::sqrt(variance);
    c.slope.patientShare = std::clamp(1.0 - variance / (c.slopeSdBefore * c.slopeSdBefore), 0.0, 1.0);
}

std::string rangeText(const Content& c) {
    return numberText(c.priors.lowestValidMmHg.value) + " to " + numberText(c.priors.highestValidMmHg.value) +
           " mmHg";
}

double meanDistendingPressure(const Content& c, const CountedReading& r) {
    double sum = 0.0;
    for (const auto& node : c.nodes)
        sum += node.weight * c.pressureOf(node, r);
    return sum;
}

void noteExtrapolation(Content& c, std::span<const Observation> all) {
    const auto note = [&](const std::string& what, double p) {
        if (wideningFactor(c.priors, p) <= 1.0) return;
        c.notices.push_back({"extrapolated",
                             what + " " + numberText(p) + " mmHg, outside the " + rangeText(c) +
                                 " that the loading studies span: the uncertainty of the pressure's effect is multiplied by " +
                                 numberText(wideningFactor(c.priors, p), 2) + " (assumption).",
                             {{"pressure_mmHg", numberText(p)}}});
    };
    note("The decision pressure is", c.decisionMmHg);
    for (const auto& r : c.readings.counted)
        note("The pressure of " + describe(all[r.index]) + " is about", meanDistendingPressure(c, r));
}

void noteContradiction(Content& c, std::span<const Observation> all) {
    if (c.contradictionChance >= kContradictionChance) return;
    std::size_t high = c.readings.counted.front().index, low = high;
    for (const auto& r : c.readings.counted) {
        if (*c.weights[r.index].residualMm > *c.weights[high].residualMm) high = r.index;
        if (*c.weights[r.index].residualMm < *c.weights[low].residualMm) low = r.index;
    }
    c.notices.push_back(
        {"readings-contradict",
         "The readings differ by more than their uncertainties, the biases and the pressures explain (such a difference has a "
         "chance of " +
             numberText(100.0 * c.contradictionChance, 2) + " %). Furthest above the rest: " + describe(all[high]) +
             "; furthest below: " + describe(all[low]) +
             ". Look at quantity, plane, calibration and pressure of both before a size is taken.",
         {{"chance", numberText(c.contradictionChance, 5)}}});
}

void noteScale(Content& c) {
    for (const auto& r : c.readings.counted)
        if (r.kind < 0) return;
    c.notices.push_back({"no-ct-contour",
                         "No CT contour is among the readings: the answer on the CT's scale rests on the assumed bias of "
                         "the other kinds.",
                         {}});
}

void noteSlope(Content& c) {
    if (c.slope.patientShare >= kOwnSlopeShare) return;
    const SpreadPrior& prior = slopePrior(c.priors, c.quantity);
    c.notices.push_back({"slope-assumed",
                         "How much the appendage widens with pressure, " + numberText(c.slope.meanMmPerMmHg, 2) +
                             " mm per mmHg, is assumed and hardly this patient's own (share " +
                             numberText(100.0 * c.slope.patientShare, 0) + " %); " + std::string(word(prior.basis)) +
                             ": " + prior.words + ".",
                         {{"patient_share", numberText(c.slope.patientShare, 3)}}});
}

} // namespace

void summarise(Content& c, std::span<const Observation> all) {
    fillWeights(c, all);
    fillStates(c);
    fillSlope(c);
    c.notices = c.readings.notices;
    noteExtrapolation(c, all);
    noteScale(c);
    noteSlope(c);
    noteContradiction(c, all);
}

} // namespace gauge::core
