// The neck: where the appendage still has a wall of its own all around, just before it opens into the atrium. Near
// the opening cross-sections say nothing about the axis, so its course there is continued from the neck.
//
//            wall of the neck      rim    wall of the atrium
//   tip   ____________________________.      rays across the continued axis keep the neck's width (a straight
//   ----------- axis ------------------ - -  line each, fitted in the neck) until they pass the rim and leave
//         ____________________________       it: the flare
//               clean ^         mouth ^`-.
#pragma once

#include "core/anatomy/axis.h"

#include <array>
#include <vector>

namespace gauge::core {

/// Where one ray leaves the width that the neck predicts for it.
struct Flare {
    bool found = false;
    double sMm = 0.0;     ///< along the neck's axis, from the tip end
    PatientPoint rim;     ///< on the neck's continued wall
};

struct Neck {
    double mouthMm = 0.0;  ///< distance from the tip end of the axis to where slices open into the atrium
    double cleanMm = 0.0;  ///< the same to the last slice free of any flare
    double radiusMm = 0.0; ///< area-derived, typical of the neck
    /// From the tip through the clean part, then along a parabola fitted to the neck, some way beyond the mouth.
    std::vector<PatientPoint> axis;
    std::array<Flare, AxisSlice::kRays> flares;
};

/// @param line  centre line from the tip end to the atrium.
/// @errors NoNeckBetweenSeeds when nothing between the ends is a tube.
Result<Neck> findNeck(const BloodPool& pool, const Polyline& line);

} // namespace gauge::core
