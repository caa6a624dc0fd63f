#include "core/pressure/carried_value.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

constexpr int kPosteriorPoints = 4096;

/// The reading as a CT contour, which has no bias: only the pressure is left to change it.
Observation withoutBias(const Observation& reading, double standardUncertaintyMm) {
    Observation plain = reading;
    plain.modality = Modality::Ct;
    plain.derivation = Derivation::Contour;
    plain.contourPerView.reset();
    plain.standardUncertaintyMm = standardUncertaintyMm;
    if (hasImplant(plain.stage)) plain.stage = Stage::AfterRepair; // the caliper is carried, not the appendage judged
    return plain;
}

} // namespace

Result<std::vector<CarriedValue>> carriedTo(const Observation& reading, std::span<const double> pressuresMmHg,
                                            PressureLaw law, const Priors& priors) {
    std::vector<CarriedValue> carried;
    const double own = readingUncertaintyMm(priors, reading);
    const Observation plain = withoutBias(reading, own);
    for (const double mmHg : pressuresMmHg) {
        const auto p = posterior(std::span(&plain, 1), reading.quantity, Pressure::fromMmHg(mmHg), law, priors, {kPosteriorPoints});
        if (!p) return tl::make_unexpected(p.error());
        const DiameterAt at = p->at(mmHg);
        CarriedValue c;
        c.pressureMmHg = mmHg;
        c.valueMm = at.meanMm;
        c.standardUncertaintyMm = at.sdMm;
        c.changeMm = at.meanMm - reading.valueMm;
        c.changeSdMm = std::sqrt(std::max(0.0, at.sdMm * at.sdMm - own * own));
        c.fromMmHg = p->states().front().meanMmHg;
        c.pressureMeasured = p->states().front().measured;
        c.extrapolated = at.extrapolated;
        carried.push_back(c);
    }
    return carried;
}

Priors withSlope(Priors priors, const SlopeEstimate& slope) {
    priors.diameterSlope.mean = slope.meanMmPerMmHg;
    priors.diameterSlope.sd = slope.sdMmPerMmHg;
    priors.diameterSlope.words = "learnt from the readings of this patient";
    return priors;
}

} // namespace gauge::core
