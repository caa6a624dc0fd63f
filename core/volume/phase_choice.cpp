#include "core/volume/phase_choice.h"

#include "core/number_text.h"

#include <cmath>

namespace gauge::core {
namespace {

/// Differences below this are no difference: what decimal strings lose.
constexpr double kSame = 1e-6;

/// Where a phase lies on the scale that was asked for, and whether it had to be computed.
struct Place {
    double value = 0.0;
    bool computed = false;
};

std::optional<Place> percentOf(const PhaseInfo& phase) {
    if (phase.percent) return Place{*phase.percent, false};
    if (phase.delayMs && phase.beatMs && *phase.beatMs > 0.0)
        return Place{100.0 * *phase.delayMs / *phase.beatMs, true};
    return std::nullopt;
}

std::optional<Place> delayOf(const PhaseInfo& phase) {
    if (phase.delayMs) return Place{*phase.delayMs, false};
    if (phase.percent && phase.beatMs && *phase.beatMs > 0.0)
        return Place{*phase.percent / 100.0 * *phase.beatMs, true};
    return std::nullopt;
}

double aroundTheBeat(double a, double b) {
    const double apart = std::fmod(std::abs(a - b), 100.0);
    return std::min(apart, 100.0 - apart);
}

double alongTime(double a, double b) {
    return std::abs(a - b);
}

struct Scale {
    std::optional<Place> (*of)(const PhaseInfo&);
    double (*apart)(double, double);
    const char* unit;
};

std::string told(const PhaseInfo& phase, const Place& place, double asked, double apart, const Scale& scale) {
    std::string words;
    if (apart > kSame)
        words = "Asked for " + general(asked, 4) + " " + scale.unit + ", taken: " + phase.label +
                ", the nearest there is.";
    if (place.computed)
        words += (words.empty() ? "" : " ") + std::string("Phase ") + phase.label + " lies at " +
                 general(place.value, 4) + " " + scale.unit + " by its R-R interval of " + general(*phase.beatMs, 4) +
                 " ms; the images do not say so themselves.";
    return words;
}

Result<PhaseChoice> nearest(std::span<const PhaseInfo> phases, double asked, const Scale& scale) {
    std::optional<std::size_t> best;
    Place bestPlace;
    double bestApart = 0.0;
    for (std::size_t i = 0; i < phases.size(); ++i) {
        const auto place = scale.of(phases[i]);
        if (!place) continue;
        const double apart = scale.apart(place->value, asked);
        const bool nearer = !best || apart < bestApart - kSame;
        const bool larger = best && apart < bestApart + kSame && phases[i].bytes > phases[*best].bytes;
        if (!nearer && !larger) continue;
        best = i;
        bestPlace = *place;
        bestApart = apart;
    }
    if (!best)
        return failure(ErrorCode::NotFound,
                       "Cannot choose a phase at " + general(asked, 4) + " " + scale.unit +
                           ": no phase of the series says where in the heart beat it lies.");
    return PhaseChoice{*best, told(phases[*best], bestPlace, asked, bestApart, scale)};
}

} // namespace

Result<PhaseChoice> nearestByPercent(std::span<const PhaseInfo> phases, double percent) {
    if (!(percent >= 0.0 && percent <= 100.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot choose a phase at " + general(percent, 4) + " %: 0 to 100 is needed.");
    return nearest(phases, percent, {percentOf, aroundTheBeat, "%"});
}

Result<PhaseChoice> nearestByDelay(std::span<const PhaseInfo> phases, double delayMs) {
    if (!(delayMs >= 0.0 && std::isfinite(delayMs)))
        return failure(ErrorCode::InvalidArgument, "Cannot choose a phase " + general(delayMs, 4) +
                                                       " ms after the R wave: 0 or more is needed.");
    return nearest(phases, delayMs, {delayOf, alongTime, "ms"});
}

} // namespace gauge::core
