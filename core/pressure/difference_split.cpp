#include "core/pressure/difference_split.h"

#include "core/pressure/point_set.h"
#include "core/pressure/gaussian_mixture.h"
#include "core/pressure/prepared_readings.h"
#include "core/pressure/truncated_normal.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::core {

namespace {

constexpr int kPlacements = 4096;

double squared(double x) { return x * x; }

/// Distending pressure of a reading at one point; u: share, then one mean pressure and one phase per state.
double pressureAt(const PreparedReadings& readings, const CountedReading& r, std::span<const double> u) {
    const PressureState& state = readings.states[r.state];
    const double mean = state.meanMmHg + state.sdMmHg * normalQuantile(u[2 + 2 * r.state]);
    const bool endSystole =
        r.phase == Phase::EndSystole || (r.phase == Phase::Unknown && u[3 + 2 * r.state] < 0.5);
    return distendingPressure(mean, state.vWaveMmHg.value_or(mean), endSystole ? u[1] : 0.0);
}

DifferencePart pressurePart(const PreparedReadings& readings, Quantity quantity, PressureLaw law, const Priors& priors) {
    const SpreadPrior& slope = slopePrior(priors, quantity);
    PointSet set(2 + 2 * static_cast<int>(readings.states.size()), 1);
    double sum = 0.0, squares = 0.0, departure = 0.0;
    const double slopeVariance = truncated_normal::moments(slope.mean, slope.sd).variance;
    for (int i = 0; i < kPlacements; ++i) {
        const auto u = set.next();
        const double k = truncated_normal::quantile(slope.mean, slope.sd, u[0]);
        const double p1 = pressureAt(readings, readings.counted[0], u), p2 = pressureAt(readings, readings.counted[1], u);
        const double term = pressureTerm(law, p1, p2);
        const double factor = std::max(wideningFactor(priors, p1), wideningFactor(priors, p2));
        sum += k * term;
        squares += squared(k * term);
        departure += slopeVariance * squared(term) * (squared(factor) - 1.0);
    }
    const double mean = sum / kPlacements;
    return {mean, std::sqrt(std::max(0.0, squares / kPlacements - squared(mean)) + departure / kPlacements)};
}

DifferencePart modalityPart(const PreparedReadings& readings) {
    const auto bias = [&](int i) {
        const int kind = readings.counted[i].kind;
        return kind < 0 ? SpreadPrior{} : readings.kinds[kind].bias;
    };
    if (readings.counted[0].kind == readings.counted[1].kind) return {}; // one bias, which falls out
    return {bias(0).mean - bias(1).mean, std::hypot(bias(0).sd, bias(1).sd)};
}

} // namespace

Result<DifferenceSplit> splitDifference(const Observation& first, const Observation& second, PressureLaw law,
                                        const Priors& priors, std::optional<DifferencePart> plane,
                                        std::optional<DifferencePart> phase) {
    if (auto valid = validate(priors); !valid) return tl::make_unexpected(valid.error());
    if (first.quantity != second.quantity)
        return failure(ErrorCode::InvalidArgument, "Cannot compare the " + std::string(plainName(first.quantity)) +
                                                       " with the " + std::string(plainName(second.quantity)) +
                                                       ": two different quantities. Compare like with like.");
    const std::array both = {first, second};
    auto readings = prepareReadings(both, first.quantity, priors);
    if (!readings) return tl::make_unexpected(readings.error());
    for (std::size_t i = 0; i < both.size(); ++i)
        if (!readings->reasons[i].empty())
            return failure(ErrorCode::InvalidArgument, "Cannot compare " + describe(first) + " with " +
                                                           describe(second) + ". " + readings->reasons[i]);
    const CountedReading &a = readings->counted[0], &b = readings->counted[1];
    DifferenceSplit out;
    out.difference = {a.valueMm - b.valueMm, std::hypot(a.standardUncertaintyMm, b.standardUncertaintyMm)};
    out.plane = plane;
    out.phase = phase;
    out.pressure = pressurePart(*readings, first.quantity, law, priors);
    out.modality = modalityPart(*readings);
    out.remainder = out.difference;
    for (const DifferencePart& part : {plane.value_or(DifferencePart{}), phase.value_or(DifferencePart{}), out.pressure,
                                       out.modality}) {
        out.remainder.valueMm -= part.valueMm;
        out.remainder.standardUncertaintyMm = std::hypot(out.remainder.standardUncertaintyMm, part.standardUncertaintyMm);
    }
    out.notices = readings->notices;
    return out;
}

} // namespace gauge::core
