// The wall as seen from a straight line through the appendage: rings of rays square to the line. What a body may fill of a
// ring: body_section.h; how far it slides: slide_body.h.
//
//        wall ______.---------          t  distance along the line from its origin, mm; positive towards the tip
//            /  ^ ^ ^ ^ ^              a ring at t: rays at equal angles, from frame.u towards frame.v
//   origin --o--+-+-+-+-+--> t
//            \__v_v_v_v_v___
#pragma once

#include "core/access/seat_wall.h"
#include "core/geometry/plane.h"

#include <vector>

namespace gauge::core {

/// How finely a line looks around.
struct RingGrain {
    int rays = 96;
    double stepMm = 0.25;
};

struct WallRing {
    std::vector<double> raysMm; ///< to the wall; the reach where it meets none
    double leastMm = 0.0;       ///< shortest ray; 0 where the line itself lies in the wall
    bool inBox = true;          ///< the line's point lies in the box
};

/// Rings from `fromMm` to where the line leaves the blood or the box beyond its origin, or to `kFarthestMm`.
struct SheathWalls {
    static constexpr double kFarthestMm = 90.0;
    SectionFrame frame; ///< its origin is t = 0, its normal the direction
    RingGrain grain;
    double reachMm = 20.0;
    double fromMm = 0.0;
    std::vector<WallRing> rings; ///< at fromMm + i grain.stepMm
    std::vector<Eigen::Vector2d> directions; ///< of the rays, in the section's coordinates

    double tOf(std::size_t ring) const { return fromMm + static_cast<double>(ring) * grain.stepMm; }
    PatientPoint at(double tMm) const { return frame.origin + tMm * frame.normal; }
    PatientVector towards(std::size_t ray) const {
        return directions[ray].x() * frame.u + directions[ray].y() * frame.v;
    }
};

/// @param direction  unit vector towards the tip. @param beforeMm >= 0: how far before the origin the rings begin.
SheathWalls lookAround(const SeatWall& wall, const PatientPoint& origin, const PatientVector& direction, double beforeMm,
                       double reachMm, const RingGrain& grain = {});

/// The ring at any t of the line. A bump narrower than the gap between two rays may be passed (0.65 mm at 10 mm with 96 rays).
WallRing ringAt(const SeatWall& wall, const SheathWalls& around, double tMm);

} // namespace gauge::core
