// Answers about several things at once: two pressures, a reading not yet made, simulated patients.
#include "core/pressure/posterior_content.h"

#include "core/pressure/point_set.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gauge::core {

namespace {

using Content = Posterior::Content;

// Gauss-Legendre nodes and weights of ten points on [-1, 1] (Abramowitz and Stegun, table 25.4), the positive half.
constexpr std::array<double, 5> kNodes = {0.1488743389816312, 0.4333953941292472, 0.6794095682990244,
                                          0.8650633666889845, 0.9739065285171717};
constexpr std::array<double, 5> kWeights = {0.2955242247147529, 0.2692667193099964, 0.2190863625159820,
                                            0.1494513491505806, 0.0666713443086881};
constexpr double kFarSds = 8.0;        // beyond, a normal distribution holds nothing
constexpr double kSameMm = 1e-9;       // two diameters tied more closely than this are one

struct Bounds {
    double lowest, highest;
};

double within(double mean, double sd, Bounds b) {
    if (!(b.highest >= b.lowest)) return 0.0;
    return std::max(0.0, normalCdf((b.highest - mean) / sd) - normalCdf((b.lowest - mean) / sd));
}

/// P(first in b1 and second in b2) of two normal variables.
double bothWithin(double mean1, double variance1, Bounds b1, double mean2, double variance2, Bounds b2,
                  double covariance) {
    const double sd1 = std::sqrt(variance1);
    const double slope = covariance / variance1;
    const double rest = std::sqrt(std::max(0.0, variance2 - slope * covariance));
    if (rest < kSameMm && std::abs(slope - 1.0) < 1e-6) {
        const double shift = mean2 - mean1; // the second is the first, moved
        return within(mean1, sd1, {std::max(b1.lowest, b2.lowest - shift), std::min(b1.highest, b2.highest - shift)});
    }
    const double low = std::max(b1.lowest, mean1 - kFarSds * sd1), high = std::min(b1.highest, mean1 + kFarSds * sd1);
    if (!(high > low)) return 0.0;
    const double middle = 0.5 * (low + high), half = 0.5 * (high - low);
    const auto density = [&](double x) {
        const double z = (x - mean1) / sd1;
        return std::exp(-0.5 * z * z) / (sd1 * std::sqrt(2.0 * std::numbers::pi)) *
               within(mean2 + slope * (x - mean1), std::max(rest, kSameMm), b2);
    };
    double sum = 0.0;
    for (std::size_t i = 0; i < kNodes.size(); ++i)
        sum += kWeights[i] * (density(middle + half * kNodes[i]) + density(middle - half * kNodes[i]));
    return sum * half;
}

/// A further reading as the model sees it.
struct PlannedReading {
    int state = -1;
    bool endSystole = false;
    double pressureMmHg = 0.0; ///< where there is no state
    int kind = -1;             ///< of the readings at hand; -1: none of them
    SpreadPrior newBias;       ///< of a kind not yet read; SD 0 else
    std::size_t biasAxis = 0;  ///< the planned reading whose coordinate moves the new bias: the first of its kind
    double standardUncertaintyMm = 0.0;
};

Result<PlannedReading> plan(const Content& c, const FurtherReading& f) {
    PlannedReading out;
    if (!f.state.empty()) {
        const auto& states = c.readings.states;
        const auto found = std::find_if(states.begin(), states.end(), [&](const auto& s) { return s.name == f.state; });
        if (found == states.end())
            return failure(ErrorCode::NotFound,
                           "Cannot predict a reading in state \"" + f.state + "\": no reading belongs to that state.",
                           {{"state", f.state}});
        out.state = static_cast<int>(found - states.begin());
        out.endSystole = f.phase == Phase::EndSystole;
    } else if (!f.pressureMmHg || !std::isfinite(*f.pressureMmHg)) {
        return failure(ErrorCode::InvalidArgument,
                       "Cannot predict a reading without a state or a pressure; give one of them.");
    } else {
        out.pressureMmHg = *f.pressureMmHg;
    }
    out.standardUncertaintyMm = std::max(
        f.standardUncertaintyMm.value_or(defaultReadingUncertaintyMm(c.priors, f.modality)), kLeastReadingUncertaintyMm);
    const auto& kinds = c.readings.kinds;
    const auto kind = std::find_if(kinds.begin(), kinds.end(), [&](const ReadingKind& k) {
        return k.modality == f.modality && k.derivation == f.derivation;
    });
    if (kind != kinds.end())
        out.kind = static_cast<int>(kind - kinds.begin());
    else
        out.newBias = biasPrior(c.priors, f.modality, f.derivation);
    return out;
}

double pressureAt(const Content& c, const PosteriorNode& node, const PlannedReading& r) {
    if (r.state < 0) return r.pressureMmHg;
    return c.pressureOf(node, static_cast<std::size_t>(r.state), r.endSystole);
}

/// A node with one of its slopes.
struct Place {
    const PosteriorNode* node;
    double slope;
    double weight;
};

/// All places in ascending order of D at the decision pressure, so that evenly spaced draws are spread over it.
std::vector<Place> ordered(const Content& c) {
    std::vector<std::pair<double, Place>> keyed;
    keyed.reserve(c.nodes.size() * kSlopesPerPoint);
    for (const auto& node : c.nodes) {
        const NodeNormal d = c.normalAt(node, c.decisionMmHg);
        for (const double k : node.slopes)
            keyed.push_back({d.offset + k * d.gain, {&node, k, node.weight / kSlopesPerPoint}});
    }
    std::stable_sort(keyed.begin(), keyed.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Place> out;
    out.reserve(keyed.size());
    for (const auto& [key, place] : keyed)
        out.push_back(place);
    return out;
}

PatientDraw drawAt(const Content& c, const Place& place, std::span<const double> pressures,
                   const std::vector<PlannedReading>& planned, std::span<const double> u) {
    const PosteriorNode& node = *place.node;
    PatientDraw draw;
    draw.slopeMmPerMmHg = place.slope;
    draw.vWaveShare = node.share;
    for (const double mean : node.meanPressures)
        draw.meanPressuresMmHg.push_back(std::max(kLeastPressureMmHg, mean));
    const int n = c.linearCount();
    LinearVector z(n);
    for (int i = 0; i < n; ++i)
        z(i) = normalQuantile(u[i]);
    const LinearMatrix factor = Eigen::LLT<LinearMatrix>(*node.covariance).matrixL();
    const LinearVector x = node.without - place.slope * node.pull + factor * z;
    for (const double p : pressures)
        draw.diametersMm.push_back(c.centreMm + c.row(p).dot(x) + place.slope * c.term(p));
    for (std::size_t i = 0; i < planned.size(); ++i) {
        const PlannedReading& r = planned[i];
        const double p = pressureAt(c, node, r);
        const double bias = r.newBias.mean + r.newBias.sd * normalQuantile(u[n + 2 * r.biasAxis]);
        const double error = r.standardUncertaintyMm * normalQuantile(u[n + 2 * i + 1]);
        draw.readingsMm.push_back(c.centreMm + c.row(p, r.kind).dot(x) + place.slope * c.term(p) + bias + error);
    }
    return draw;
}

} // namespace

double Posterior::probabilityBothWithin(double p1, double lowest1, double highest1, double p2, double lowest2,
                                        double highest2) const {
    const Content& c = *m_content;
    if (!(highest1 >= lowest1) || !(highest2 >= lowest2)) return 0.0;
    const LinearVector row1 = c.row(p1), row2 = c.row(p2);
    double sum = 0.0;
    for (const auto& node : c.nodes) {
        const NodeNormal d1 = c.normalAt(node, p1), d2 = c.normalAt(node, p2);
        const double covariance = row1.dot(*node.covariance * row2);
        for (const double k : node.slopes)
            sum += node.weight / kSlopesPerPoint *
                   bothWithin(d1.offset + k * d1.gain, d1.variance, {lowest1, highest1}, d2.offset + k * d2.gain,
                              d2.variance, {lowest2, highest2}, covariance);
    }
    return std::clamp(sum, 0.0, 1.0);
}

Result<GaussianMixture> Posterior::predictive(const FurtherReading& further) const {
    const Content& c = *m_content;
    const auto planned = plan(c, further);
    if (!planned) return tl::make_unexpected(planned.error());
    const double own = planned->standardUncertaintyMm * planned->standardUncertaintyMm +
                       planned->newBias.sd * planned->newBias.sd;
    std::vector<GaussianMixture::Component> parts;
    parts.reserve(c.nodes.size() * kSlopesPerPoint);
    for (const auto& node : c.nodes) {
        const double p = pressureAt(c, node, *planned);
        const NodeNormal y = c.normalAt(node, p, planned->kind);
        for (const double k : node.slopes)
            parts.push_back({node.weight, y.offset + k * y.gain + planned->newBias.mean, std::sqrt(y.variance + own)});
    }
    return GaussianMixture::binned(parts);
}

Result<std::vector<PatientDraw>> Posterior::draws(std::span<const double> pressures,
                                                  std::span<const FurtherReading> further, int count,
                                                  std::uint32_t seed) const {
    const Content& c = *m_content;
    std::vector<PlannedReading> planned;
    for (const auto& f : further) {
        auto one = plan(c, f);
        if (!one) return tl::make_unexpected(one.error());
        const auto first = std::find_if(further.begin(), further.end(), [&](const FurtherReading& other) {
            return other.modality == f.modality && other.derivation == f.derivation;
        });
        one->biasAxis = static_cast<std::size_t>(first - further.begin());
        planned.push_back(std::move(*one));
    }
    if (count < 1)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot draw " + std::to_string(count) + " patients: at least one is needed.");
    const auto places = ordered(c);
    PointSet set(c.linearCount() + 2 * static_cast<int>(planned.size()) + 1, seed);
    std::vector<PatientDraw> out;
    out.reserve(count);
    double passed = places.front().weight;
    std::size_t at = 0;
    for (int i = 0; i < count; ++i) {
        const auto u = set.next();
        const double target = (i + u.back()) / count;
        while (passed < target && at + 1 < places.size())
            passed += places[++at].weight;
        out.push_back(drawAt(c, places[at], pressures, planned, u));
    }
    return out;
}

} // namespace gauge::core
