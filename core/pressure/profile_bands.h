// The widths of a whole profile carried over pressure, from what is known of the landing zone alone.
//
// Assumption: the appendage widens in the same proportion at every depth, so a width w at some depth becomes
// w (1 + c / L) where the landing zone of width L changes by c. At the landing zone itself this is the carried reading. No
// source: no measured profile at two pressures was at hand; the ostium, held by the atrium's wall, may well widen less.
#pragma once

#include "core/pressure/carried_value.h"
#include "core/result.h"

#include <span>
#include <vector>

namespace gauge::core {

/// One width of the profile as it was read, mm.
struct ProfileWidth {
    double depthMm = 0.0; ///< along the axis from the ostium
    double widthMm = 0.0;
    double standardUncertaintyMm = 0.0; ///< of the reading; 0 where not evaluated
};

/// A width at a pressure: median, and the interval that holds it with a chance of 95 %, mm; never below 0.
struct BandWidth {
    double medianMm = 0.0;
    double lower95Mm = 0.0;
    double upper95Mm = 0.0;
};

struct PressureBand {
    double pressureMmHg = 0.0;
    bool extrapolated = false;     ///< outside the valid range of the law
    std::vector<BandWidth> widths; ///< one per width of the profile
};

/// Carries each width to the pressure of `landing`, the landing zone's reading of the same quantity carried there. The
/// reading's own uncertainty and that of the change are independent and normal.
/// @errors Degenerate when the landing zone's reading (value less change) is not above 0; NonFinite for NaN or infinity in
/// the profile.
Result<PressureBand> carriedProfile(std::span<const ProfileWidth> profile, const CarriedValue& landing);

} // namespace gauge::core
