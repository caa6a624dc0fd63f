// Where the wall of the measured blood lies, between the nodes of its box: what a body that slides into the appendage
// meets. Rays from a line to that wall. Neighbours: sheath_walls.h (rings of rays along a line), seat.h.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/volume/box_field.h"

#include <optional>
#include <vector>

namespace gauge::core {

/// Blood against wall on a box around the appendage. At the nodes the blood pool's mask decides which is which (so that a
/// dark sheet between two lumens, and bright voxels that are not connected with the seeds, are wall); between the nodes
/// the wall is where the trilinear value crosses 0, which is halfway between the local blood and wall levels.
struct SeatWall {
    BoxField<float> blood; ///< above 0 in blood; share of the height of blood over wall, or mm: only its sign and zero matter
    /// Standard uncertainty of one single place of the wall, mm: the image's noise over the slope of the edge.
    double placeSdMm = 0.0;

    bool holds(const PatientPoint& p) const { return blood.grid.contains(p); }
    /// True where the box holds `p` and there is blood.
    bool isBlood(const PatientPoint& p) const;
};

/// The wall around the appendage of a measurement: a copy of its part of the pool's box, `kSeatMarginMm` around the blood
/// beyond the ostium.
/// @errors InvalidArgument without the measurement's working data.
Result<SeatWall> seatWallOf(const AppendageMeasurement& measurement);
inline constexpr double kSeatMarginMm = 14.0;

/// Where a ray from blood meets the wall.
struct WallRay {
    double mm = 0.0;   ///< to the wall; 0 when it begins in the wall; `reachMm`, or the box's face, when open
    bool open = false; ///< no wall within the reach or the box
};

/// @param direction  unit vector. @param reachMm > 0.
/// Accuracy: a wall thinner than 0.25 mm may be passed; the place on a smooth wall to about 0.01 mm of the trilinear field.
WallRay rayToWall(const SeatWall& wall, const PatientPoint& from, const PatientVector& direction, double reachMm);

} // namespace gauge::core
