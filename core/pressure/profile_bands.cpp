#include "core/pressure/profile_bands.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {

Result<PressureBand> carriedProfile(std::span<const ProfileWidth> profile, const CarriedValue& landing) {
    constexpr double kNormal95 = 1.959964; // half-width of the central 95 % of a normal distribution, in SDs
    const double readMm = landing.valueMm - landing.changeMm;
    if (!(readMm > 0.0) || !std::isfinite(landing.valueMm))
        return failure(ErrorCode::Degenerate,
                       "Cannot carry the profile over pressure: the landing zone's width was read as " +
                           std::to_string(readMm) + " mm, but must be above 0.");
    PressureBand band{landing.pressureMmHg, landing.extrapolated, {}};
    band.widths.reserve(profile.size());
    const double stretch = landing.valueMm / readMm;
    for (const ProfileWidth& at : profile) {
        if (!std::isfinite(at.widthMm) || !std::isfinite(at.standardUncertaintyMm))
            return failure(ErrorCode::NonFinite, "Cannot carry the profile over pressure: the width at depth " +
                                                     std::to_string(at.depthMm) + " mm is not a finite number.");
        const double median = std::max(0.0, at.widthMm * stretch);
        const double sd = std::hypot(at.standardUncertaintyMm * stretch, at.widthMm / readMm * landing.changeSdMm);
        band.widths.push_back({median, std::max(0.0, median - kNormal95 * sd), median + kNormal95 * sd});
    }
    return band;
}

} // namespace gauge::core
