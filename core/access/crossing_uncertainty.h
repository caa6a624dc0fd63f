// The values of a chosen crossing with their uncertainties, from how well a hand marks points and how well the ostium is known.
#pragma once

#include "core/access/crossing.h"
#include "core/measure/estimate.h"
#include "core/measure/section.h"

#include <optional>

namespace gauge::core {

/// Standard uncertainty of a marked point in each direction, mm: that of placing things by hand on CT, as for planes
/// (PlacementSpread); an assumption.
inline constexpr double kMarkUncertaintyMm = 1.0;

struct CrossingEstimates {
    std::optional<Estimate> overCoaptationMm, overAnnulusMm, distanceMm, angleDeg, steeredAngleDeg;
};

/// Every marked point is moved by its uncertainty in each direction, one after another, and so are the ostium's centre and the
/// axis by their spread; the changes are added in quadrature. To first order, so a value that is held at an end (a steerable
/// sheath that arrives exactly along the axis) comes out with 0. `observer`: the marks; `plane`: ostium and axis.
/// @param crossing  where the person wants to cross; its foot in the septum's plane counts, and the place itself is a plan and
/// has no uncertainty.
/// @param spread    of the ostium and its axis: confirmed or proposed.
/// @errors those of crossingScene(); OutsideFossa, naming the side.
Result<CrossingEstimates> crossingEstimates(const SeptumMarks& marks, const std::optional<AppendageTarget>& target,
                                            const PatientPoint& leftAtrium, const PatientPoint& crossing, const Steering& steering,
                                            const PlacementSpread& spread);

} // namespace gauge::core
