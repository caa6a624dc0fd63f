// The two levels from which the height of a septal crossing is counted: the plane of the mitral annulus, and the level at which
// the leaflets meet in systole. Heights themselves: crossing.h.
#pragma once

#include "core/geometry/plane_fit.h"
#include "core/result.h"

#include <cstddef>
#include <optional>
#include <span>

namespace gauge::core {

/// Less extent of the annulus points to either side of their line leaves the tilt to chance: with points marked to 1 mm it is
/// then known to no better than about 20 degrees.
inline constexpr double kLeastAnnulusSpreadMm = 3.0;

struct Coaptation {
    PatientPoint middle;       ///< mean of the marked points
    std::size_t count = 0;
    double spreadMm = 0.0;     ///< root mean square of the points' heights about their mean, square to the annulus
    double belowAnnulusMm = 0.0; ///< positive on the ventricle's side: tethered leaflets
};

struct MitralDatum {
    PlaneFit annulus;          ///< its normal points into the atrium
    std::size_t count = 0;     ///< points it rests on
    std::optional<Coaptation> coaptation;
};

/// @param atriumSide  a place well inside the atrium or on its wall above the annulus, for example the middle of the fossa.
/// @param coaptation  may be empty: then there is no level of coaptation.
/// @errors those of fitPlane() about "the mitral annulus"; NonFinite for a coaptation point; Degenerate when `atriumSide` lies
/// within 1 mm of the plane.
Result<MitralDatum> mitralDatum(std::span<const PatientPoint> annulus, std::span<const PatientPoint> coaptation,
                                const PatientPoint& atriumSide);

} // namespace gauge::core
