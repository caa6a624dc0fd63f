// What stays in memory behind a measurement so that further sections can be cut at once.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/anatomy/blood_pool.h"
#include "core/geometry/polyline.h"

namespace gauge::core {

struct AppendageTrace {
    BloodPool pool;
    BoxMask appendage;
    Polyline axis;            ///< from the atrium's side through the ostium to the tip
    double ostiumAtMm = 0.0;  ///< where the ostium lies on it
    Plane ostium;             ///< through its section's centre
    PlacementSpread spread;

    PatientPoint pointAt(double sMm) const { return axis.pointAt(ostiumAtMm + sMm); }
    /// Over 5 mm: a section's plane must not turn with every undulation.
    PatientVector directionAt(double sMm) const { return axis.tangentAt(ostiumAtMm + sMm, 2.5); }
    double lengthMm() const { return axis.lengthMm() - ostiumAtMm; }
};

/// Frame perpendicular to the axis at `sMm`.
SectionFrame frameAt(const AppendageTrace& trace, double sMm);

/// Section perpendicular to the axis at `sMm`, with uncertainties.
Result<Section> sectionAt(const Volume& volume, const AppendageTrace& trace, double sMm);

} // namespace gauge::core
