// One reading carried to other pressures by itself: what the same caliper would have read there. The modality's bias is
// left as it is, so that columns of a table stay what their modality reads; all readings of a patient together, with
// their biases: posterior.h.
#pragma once

#include "core/pressure/posterior.h"

#include <span>
#include <vector>

namespace gauge::core {

/// A reading at another pressure than its own, mm and mmHg.
struct CarriedValue {
    double pressureMmHg = 0.0; ///< to which it was carried
    double valueMm = 0.0;
    double standardUncertaintyMm = 0.0; ///< of the reading, of its pressure and of the slope together
    double changeMm = 0.0;              ///< valueMm less what was read
    double changeSdMm = 0.0;            ///< of the pressure and of the slope, without the reading's own
    double fromMmHg = 0.0;              ///< mean pressure of the reading's state, measured or assumed
    bool pressureMeasured = false;
    bool extrapolated = false; ///< `pressureMmHg` lies outside the valid range of the law
};

/// Carries a reading to each of the pressures, in their order. Slope, unmeasured pressure and v wave: as in posterior.h, from
/// `priors`; a slope learnt from the patient may stand there in place of the prior (withSlope).
/// @errors as core::posterior; InvalidArgument for a depth or diameter that is not above 0.
/// Accuracy: quantities are means and SDs of a mixture over 4096 points; within 1 % of the SD.
Result<std::vector<CarriedValue>> carriedTo(const Observation& reading, std::span<const double> pressuresMmHg,
                                            PressureLaw law, const Priors& priors);

/// The priors with the slope of diameters replaced by what all readings of the patient say of it.
Priors withSlope(Priors priors, const SlopeEstimate& slope);

} // namespace gauge::core
