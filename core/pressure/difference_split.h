// Why two readings of one quantity differ: the difference, taken apart into what the pressures, the modalities and
// (from outside) the plane and the phase explain, and the remainder.
#pragma once

#include "core/pressure/observation.h"
#include "core/pressure/pressure_law.h"
#include "core/pressure/priors.h"
#include "core/result.h"

#include <optional>
#include <vector>

namespace gauge::core {

/// A part of a difference, mm, with its standard uncertainty.
struct DifferencePart {
    double valueMm = 0.0;
    double standardUncertaintyMm = 0.0;
};

/// first - second = plane + phase + pressure + modality + remainder, exactly.
struct DifferenceSplit {
    DifferencePart difference; ///< its uncertainty: both readings' own
    std::optional<DifferencePart> plane;
    std::optional<DifferencePart> phase;
    DifferencePart pressure;
    DifferencePart modality;
    /// What nothing explains; its uncertainty is that of all other parts and of the readings together, so that
    /// remainder / uncertainty tells whether anything is left to explain.
    DifferencePart remainder;
    std::vector<Notice> notices;
};

/// Splits `first` - `second`, for example CT minus echo. Pressure and modality are what was to be expected before
/// either width was read: slope, v wave share, unmeasured pressures and biases from `priors`; the pressure carries the v
/// wave of an end-systolic reading. Departures of the law outside the valid range widen the pressure part as
/// wideningFactor says, at the outer of the two pressures. The part of the readings' phase that no pressure explains, and the part that
/// cutting CT in the echo's own plane explains, come from outside.
/// @errors InvalidArgument for different quantities or a view's width without `contourPerView`; as core::posterior for
/// readings that cannot be used.
Result<DifferenceSplit> splitDifference(const Observation& first, const Observation& second, PressureLaw,
                                        const Priors& = {}, std::optional<DifferencePart> plane = {},
                                        std::optional<DifferencePart> phase = {});

} // namespace gauge::core
