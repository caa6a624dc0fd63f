#include "core/pressure/posterior.h"

#include "core/pressure/posterior_content.h"
#include "core/pressure/truncated_normal.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace gauge::core {

namespace {

constexpr std::size_t kMostReadings = 500;

Result<void> checkCall(std::span<const Observation> all, Pressure decision, const PosteriorOptions& options) {
    const double p = decision.mmHg();
    if (!std::isfinite(p))
        return failure(ErrorCode::NonFinite,
                       "Cannot carry the readings to the decision pressure: it is no finite number.");
    if (p < kLeastPressureMmHg)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot carry the readings to a decision pressure of " + numberText(p) +
                           " mmHg: the law holds for " + numberText(kLeastPressureMmHg) +
                           " mmHg and more. Give the pressure at which the size is to be decided.",
                       {{"pressure_mmHg", numberText(p, 3)}});
    if (all.size() > kMostReadings)
        return failure(ErrorCode::InvalidArgument, "Cannot combine " + std::to_string(all.size()) +
                                                       " readings of one patient; at most " +
                                                       std::to_string(kMostReadings) + " are taken.");
    if (options.points < 64 || options.points > (1 << 18))
        return failure(ErrorCode::InvalidArgument, "Cannot integrate with " + std::to_string(options.points) +
                                                       " points: 64 to 262144 are possible.");
    return {};
}

/// Where the pressure term counts from: the decision pressure, or the readings' mean pressure where that lies outside the
/// valid range.
double referencePressure(const Priors& priors, const PreparedReadings& readings, double decisionMmHg) {
    const double low = priors.lowestValidMmHg.value, high = priors.highestValidMmHg.value;
    if (decisionMmHg >= low && decisionMmHg <= high) return decisionMmHg;
    double sum = 0.0;
    for (const auto& r : readings.counted)
        sum += readings.states[r.state].meanMmHg;
    return std::clamp(sum / static_cast<double>(readings.counted.size()), low, high);
}

double meanValue(const std::vector<CountedReading>& readings) {
    double sum = 0.0;
    for (const auto& r : readings)
        sum += r.valueMm;
    return sum / static_cast<double>(readings.size());
}

} // namespace

LinearVector Posterior::Content::row(double mmHg, int kind) const {
    LinearVector out = LinearVector::Zero(linearCount());
    out(0) = 1.0;
    out(mmHg < priors.lowestValidMmHg.value ? 1 : 2) = departureSd(mmHg);
    if (kind >= 0) out(3 + kind) = 1.0;
    return out;
}

double Posterior::Content::departureSd(double mmHg) const {
    const double factor = wideningFactor(priors, std::max(mmHg, kLeastPressureMmHg));
    if (factor <= 1.0) return 0.0;
    return slopeSdBefore * std::abs(term(mmHg)) * std::sqrt(factor * factor - 1.0);
}

NodeNormal Posterior::Content::normalAt(const PosteriorNode& node, double mmHg, int kind) const {
    const LinearVector at = row(mmHg, kind);
    return {centreMm + at.dot(node.without), term(mmHg) - at.dot(node.pull), at.dot(*node.covariance * at)};
}

double Posterior::Content::pressureOf(const PosteriorNode& node, std::size_t state, bool endSystole) const {
    const auto& vWave = readings.states[state].vWaveMmHg;
    const double mean = node.meanPressures[state];
    return distendingPressure(mean, vWave.value_or(mean), endSystole ? node.share : 0.0);
}

double Posterior::Content::pressureOf(const PosteriorNode& node, const CountedReading& r) const {
    const bool endSystole =
        r.phase == Phase::EndSystole || (r.phase == Phase::Unknown && node.endSystole[r.state]);
    return pressureOf(node, r.state, endSystole);
}

Result<Posterior> posterior(std::span<const Observation> all, Quantity quantity, Pressure decision,
                            PressureLaw law, const Priors& priors, const PosteriorOptions& options) {
    if (auto valid = validate(priors); !valid) return tl::make_unexpected(valid.error());
    if (auto checked = checkCall(all, decision, options); !checked) return tl::make_unexpected(checked.error());
    auto prepared = prepareReadings(all, quantity, priors);
    if (!prepared) return tl::make_unexpected(prepared.error());

    auto content = std::make_shared<Posterior::Content>();
    content->quantity = quantity;
    content->decisionMmHg = decision.mmHg();
    content->law = law;
    content->priors = priors;
    content->readings = std::move(*prepared);
    content->referenceMmHg = referencePressure(priors, content->readings, decision.mmHg());
    content->centreMm = meanValue(content->readings.counted);
    const SpreadPrior& slope = slopePrior(priors, quantity);
    const auto before = truncated_normal::moments(slope.mean, slope.sd);
    content->slopeMeanBefore = before.mean;
    content->slopeSdBefore = std::sqrt(before.variance);
    integrate(*content, static_cast<int>(std::bit_ceil(static_cast<unsigned>(options.points))));
    summarise(*content, all);
    return Posterior(std::move(content));
}

Posterior::Posterior(std::shared_ptr<const Content> content) : m_content(std::move(content)) {}

Quantity Posterior::quantity() const { return m_content->quantity; }
double Posterior::decisionPressureMmHg() const { return m_content->decisionMmHg; }
PressureLaw Posterior::law() const { return m_content->law; }
SlopeEstimate Posterior::slope() const { return m_content->slope; }
const std::vector<ReadingWeight>& Posterior::weights() const { return m_content->weights; }
const std::vector<StatePressure>& Posterior::states() const { return m_content->states; }
const std::vector<Notice>& Posterior::notices() const { return m_content->notices; }
double Posterior::effectivePoints() const { return m_content->effectivePoints; }

GaussianMixture Posterior::diameter(double pressureMmHg) const {
    std::vector<GaussianMixture::Component> parts;
    parts.reserve(m_content->nodes.size() * kSlopesPerPoint);
    for (const auto& node : m_content->nodes) {
        const NodeNormal d = m_content->normalAt(node, pressureMmHg);
        for (const double k : node.slopes)
            parts.push_back({node.weight, d.offset + k * d.gain, std::sqrt(d.variance)});
    }
    return GaussianMixture::binned(parts);
}

DiameterAt Posterior::at(double pressureMmHg) const {
    const GaussianMixture d = diameter(pressureMmHg);
    return {pressureMmHg,      d.quantile(0.5),   d.mean(), d.sd(),
            d.quantile(0.025), d.quantile(0.975), wideningFactor(m_content->priors, pressureMmHg) > 1.0};
}

double Posterior::probabilityWithin(double pressureMmHg, double lowestMm, double highestMm) const {
    return diameter(pressureMmHg).probabilityWithin(lowestMm, highestMm);
}

} // namespace gauge::core
