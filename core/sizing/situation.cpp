#include "core/sizing/judged.h"
#include "core/sizing/percent.h"
#include "core/sizing/size_warnings.h"
#include "core/sizing/wording.h"

#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

/// A reading as somebody would take it who has that one alone, and the size that they would choose from it.
struct Bare {
    const Observation* reading = nullptr;
    const StatePressure* state = nullptr;
    std::size_t size = 0;
    bool inBand = true; ///< otherwise the size with the nearest band
};

double distanceTo(const Band& band, double value) {
    return std::max({band.lo - value, value - band.hi, 0.0});
}

Bare bare(const Judged& j, const Observation& reading, const StatePressure& state) {
    Bare b{&reading, &state, 0, true};
    if (const auto size = sizeForReading(j.question.chart, reading.valueMm)) {
        b.size = *size;
        return b;
    }
    b.inBand = false;
    const auto& sizes = j.question.chart.sizes;
    for (std::size_t i = 1; i < sizes.size(); ++i)
        if (distanceTo(sizes[i].acceptsMm, reading.valueMm) <
            distanceTo(sizes[b.size].acceptsMm, reading.valueMm))
            b.size = i;
    return b;
}

bool isEcho(Modality m) {
    return m == Modality::Echo2d || m == Modality::Echo3d;
}

/// The counted reading at the lowest pressure; an echo before others at the same pressure.
std::optional<Bare> lowest(const Judged& j) {
    std::optional<Bare> found;
    for (std::size_t i = 0; i < j.question.observations.size(); ++i) {
        const Observation& o = j.question.observations[i];
        const StatePressure* state = j.counts(i) ? j.state(o.state) : nullptr;
        if (!state) continue;
        const bool better =
            !found || state->meanMmHg < found->state->meanMmHg ||
            (state == found->state && isEcho(o.modality) && !isEcho(found->reading->modality));
        if (better) found = bare(j, o, *state);
    }
    return found;
}

/// The reading before the repair at the highest pressure; a CT before others.
std::optional<Bare> highestBefore(const Judged& j) {
    std::optional<Bare> found;
    for (std::size_t i = 0; i < j.question.observations.size(); ++i) {
        const Observation& o = j.question.observations[i];
        const StatePressure* state =
            j.counts(i) && o.stage <= Stage::BeforeRepair ? j.state(o.state) : nullptr;
        if (!state) continue;
        const bool ct = o.modality == Modality::Ct,
                   foundCt = found && found->reading->modality == Modality::Ct;
        if (!found || (ct && !foundCt) || (ct == foundCt && state->meanMmHg > found->state->meanMmHg))
            found = bare(j, o, *state);
    }
    return found;
}

std::string readingWords(const Judged& j, const Bare& b) {
    const auto recorded = j.recordedMmHg(b.reading->state);
    const std::string pressure = recorded ? "at " + pressureText(*recorded)
                                          : "at a pressure that was not measured (the readings leave it at " +
                                                pressureText(b.state->meanMmHg) + ", give or take " +
                                                pressureText(b.state->sdMmHg) + ")";
    return std::string(plainName(b.reading->modality)) + " " + std::string(plainName(b.reading->stage)) +
           " (state \"" + b.reading->state + "\") read " + mmText(b.reading->valueMm) + " " + pressure;
}

std::string sizeWords(const Judged& j, const Bare& b) {
    const std::string& size = j.question.chart.sizes[b.size].name;
    return b.inBand ? "; from that reading alone size " + size + " would be chosen. "
                    : "; no size accepts that reading alone, the nearest is " + size + ". ";
}

std::string widthWords(const DiameterAt& d) {
    return "At " + pressureText(d.pressureMmHg) + " the appendage is expected to be " + mmText(d.medianMm) +
           " wide (95 % " + mmRange(d.lower95Mm, d.upper95Mm) + ")";
}

std::string leadingWords(const Judged& j, const Bare& b) {
    const SizeFit& fit = j.fits[*j.leading];
    const std::string at = pressureText(j.answer.question.decisionPressure.mmHg());
    if (*j.leading == b.size)
        return "It is also the size with the greatest fit chance at " + at + " (" +
               chanceText(fit.fitChance) + ").";
    return "All readings together give size " + fit.name + " the greatest fit chance at " + at + " (" +
           chanceText(fit.fitChance) + ", against " + chanceText(j.fits[b.size].fitChance) + " for size " +
           j.fits[b.size].name + ").";
}

std::vector<Fact> facts(const Judged& j, const Bare& b, double chance) {
    return {{"size", j.question.chart.sizes[b.size].name},
            {"reading_mm", std::to_string(b.reading->valueMm)},
            {"pressure_mmHg", std::to_string(b.state->meanMmHg)},
            {"state", b.reading->state},
            {"chance", std::to_string(chance)},
            {"leading_size", j.fits[*j.leading].name}};
}

void addUndersized(const Judged& j, std::vector<Notice>& warnings) {
    const auto b = lowest(j);
    const double decision = j.answer.question.decisionPressure.mmHg();
    if (!b || b->state->meanMmHg >= std::max(decision, j.living.highestMmHg)) return;
    const SizeFit& fit = j.fits[b->size];
    if (b->size >= *j.leading && fit.undersizeChance < kWarningChance) return;
    const DiameterAt& high = j.widths.highest;
    warnings.push_back({"undersized-if-pressure-returns",
                        "Undersized if the pressure returns (cause: passing): " + readingWords(j, *b) +
                            sizeWords(j, *b) + widthWords(high) + ": size " + fit.name +
                            " would then be " +
                            compressionText(fit.nominalMm, high.medianMm) +
                            " and be too small with a chance of " + chanceText(fit.undersizeChance) + ". " +
                            leadingWords(j, *b),
                        facts(j, *b, fit.undersizeChance)});
}

void addTooLarge(const Judged& j, std::vector<Notice>& warnings) {
    const auto b = highestBefore(j);
    if (!b) return;
    const double decision = j.answer.question.decisionPressure.mmHg();
    if (b->state->meanMmHg <= std::min(decision, j.living.lowestMmHg)) return;
    const SizeFit& fit = j.fits[b->size];
    if (b->size <= *j.leading && fit.overcompressionChance < kWarningChance) return;
    const DiameterAt& low = j.widths.lowest;
    warnings.push_back(
        {"too-large-after-lasting-fall",
         "Too large after a lasting fall (cause: lasting): " + readingWords(j, *b) + sizeWords(j, *b) +
             widthWords(low) + ": size " + fit.name + " would then be " +
             compressionText(fit.nominalMm, low.medianMm) +
             ", more than its band allows with a chance of " + chanceText(fit.overcompressionChance) +
             ", and the atrium may shrink further. " + leadingWords(j, *b),
         facts(j, *b, fit.overcompressionChance)});
}

} // namespace

void addSituations(const Judged& j, std::vector<Notice>& warnings) {
    if (!j.leading) return;
    if (j.question.cause != PressureChange::Lasting || j.question.facts.regurgitationMayRecur)
        addUndersized(j, warnings);
    if (j.question.cause != PressureChange::Passing) addTooLarge(j, warnings);
}

} // namespace gauge::core
