// The wall as seen from a straight line through the appendage: rings of rays square to the line. Quick answers for bodies
// of revolution about that line.
//
//        wall ______.---------          t  distance along the line from its origin, mm; positive towards the tip
//            /  ^ ^ ^ ^ ^              a ring at t: rays at equal angles, from frame.u towards frame.v
//   origin --o--+-+-+-+-+--> t          least: shortest ray of a ring; the disc of radius r at t is clear of the wall
//            \__v_v_v_v_v___               exactly when least >= r (a wall inside the disc shades the axis)
#pragma once

#include "core/access/seat_wall.h"
#include "core/geometry/plane.h"

#include <optional>
#include <vector>

namespace gauge::core {

/// How finely a line looks around.
struct RingGrain {
    int rays = 96;
    double stepMm = 0.25;
};

struct WallRing {
    double leastMm = 0.0;    ///< shortest ray; 0 where the line itself lies in the wall
    double areaRadiusMm = 0.0; ///< of the circle with the area that the rays span, rays cut at the reach
    bool inBox = true;       ///< the line's point lies in the box
};

/// Rings from `fromMm` to where the line leaves the blood or the box beyond its origin, or to `kFarthestMm`.
struct SheathWalls {
    static constexpr double kFarthestMm = 90.0;
    SectionFrame frame; ///< its origin is t = 0, its normal the direction
    RingGrain grain;
    double reachMm = 20.0;
    double fromMm = 0.0;
    std::vector<WallRing> rings; ///< at fromMm + i grain.stepMm

    double tOf(std::size_t ring) const { return fromMm + static_cast<double>(ring) * grain.stepMm; }
    PatientPoint at(double tMm) const { return frame.origin + tMm * frame.normal; }
    /// Area-derived radius at t, between its rings; nothing outside them.
    std::optional<double> areaRadiusMm(double tMm) const;
};

/// @param direction  unit vector towards the tip. @param beforeMm >= 0: how far before the origin the rings begin.
SheathWalls lookAround(const SeatWall& wall, const PatientPoint& origin, const PatientVector& direction, double beforeMm,
                       double reachMm, const RingGrain& grain = {});

/// What stops a disc that slides along the line.
struct SheathStop {
    enum class By { Wall, NoRoom, Open } by = By::Open; ///< NoRoom: already at t = 0. Open: nothing within the box
    double tMm = 0.0;                                   ///< reach of the disc from the origin
    PatientPoint contact;                               ///< where it touches; meaningless when open
    bool ahead = false; ///< the wall lies ahead (less than half the radius from the line), not beside
};

/// The greatest t up to which a disc of `radiusMm` about the line, sliding from t = 0, meets no wall.
/// Accuracy: 0.01 mm along the line for the grain's rays; a bump narrower than the gap between two rays may be passed
/// (0.65 mm at 10 mm with 96 rays).
SheathStop slideDisc(const SeatWall& wall, const SheathWalls& around, double radiusMm);

} // namespace gauge::core
