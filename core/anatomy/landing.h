// Landing planes.
#pragma once

#include "core/anatomy/appendage_trace.h"

namespace gauge::core {

/// Whether axisLanding may cut there. @errors LandingOutsideAppendage, InvalidArgument (tilted too far).
Result<void> checkAxisLanding(const AppendageTrace& trace, double depthMm, const std::optional<PatientVector>& normal);

/// Through the axis `depthMm` beyond the ostium, square to it or with another unit `normal`.
/// @errors LandingOutsideAppendage, InvalidArgument (tilted too far), SectionNotFound, SectionOpen.
Result<LandingZone> axisLanding(const Volume& volume, const AppendageTrace& trace, double depthMm,
                                const std::optional<PatientVector>& normal = std::nullopt);

/// Oblique: through the circumflex point and the wall point that lies `beyondRidgeMm` (straight, as a caliper reads)
/// beyond the ridge tip, on the ridge's side; turned about the line between them as the ostium is.
/// @errors LandingOutsideAppendage when there is no such wall point; SectionNotFound, SectionOpen.
Result<LandingZone> plugLanding(const Volume& volume, const AppendageTrace& trace, const PatientPoint& circumflex,
                                const PatientPoint& ridge, double beyondRidgeMm);

} // namespace gauge::core
