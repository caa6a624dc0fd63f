// What a seat takes over from the septum's marks: the direction in which the sheath arrives, and the mitral annulus as a neighbour.
#pragma once

#include "core/access/septum_marks.h"
#include "core/sizing/seat.h"

#include <span>

namespace gauge::core {

struct SheathArrival {
    PatientVector direction; ///< unit, in at the ostium
    SheathBasis basis = SheathBasis::Crossing;
};

/// The arrival of a sheath through the crossing: that of a straight one where it serves the closure (its angle to the proximal axis is
/// within `limits.mostAngleDeg`) or no steerable sheath is at hand or can make the way, else that of a steerable one.
/// @param leaving  unit: the septum's normal into the left atrium.
/// @errors those of straightCourse().
Result<SheathArrival> sheathArrival(const PatientPoint& crossing, const AppendageTarget& target, const PatientVector& leaving,
                                    const CrossingLimits& limits);

/// The annulus as a ring through its marks, in the order of their angles about their middle; each mark for itself where fewer than 3
/// are marked or they span no plane. Nothing without marks.
std::optional<SeatNeighbour> annulusNeighbour(std::span<const PatientPoint> annulus);

} // namespace gauge::core
