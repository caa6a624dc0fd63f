// The way of the sheath from the crossing of the septum to the ostium: straight, or with one bend.
// Who makes an AppendageTarget from a CT measurement: access_target.h.
//
//        crossing c o------ d ---.                 One bend lies in one plane. It is that of the line c-O and the axis:
//                   \ alpha       \ radius R         d  leaves the septum, alpha away from the line on one side
//                    \             )                 t  arrives, beta away from the line on the other side
//                line \          .'  t               turn = alpha + beta
//                      \       O----->  axis        straight, arc of radius R, straight; tangents agree at the joints.
#pragma once

#include "core/geometry/points.h"
#include "core/result.h"

#include <optional>
#include <vector>

namespace gauge::core {

/// Where a sheath has to arrive.
struct AppendageTarget {
    PatientPoint ostiumCentre; ///< of the ostium's contour
    PatientVector axis;        ///< unit: the appendage's proximal axis, into the appendage
};

/// What a steerable sheath can do.
struct Steering {
    double radiusMm = 25.0;         ///< > 0: the tightest bend of its middle line; an assumption, no source
    double mostDepartureDeg = 45.0; ///< 0 … 90: how far from the stated direction it can leave the septum; an assumption

    bool operator==(const Steering&) const = default;
};
/// @errors InvalidArgument for values outside the ranges above; NonFinite.
Result<void> validate(const Steering& steering);

/// A way from crossing to ostium.
struct SheathCourse {
    std::vector<PatientPoint> points; ///< of its middle line, crossing to ostium; a bend about every degree
    double lengthMm = 0.0;            ///< exact, not that of the polyline
    PatientVector departure;          ///< unit, out of the septum into the left atrium
    PatientVector arrival;            ///< unit, in at the ostium
    double arrivalAngleDeg = 0.0;     ///< between arrival and the proximal axis
    double departureAngleDeg = 0.0;   ///< between departure and the stated direction; 0 … 180
    double turnDeg = 0.0;             ///< of the bend; 0 = straight
    double radiusMm = 0.0;            ///< of the bend; 0 when there is none
};

/// The straight line. @param leaving  unit; the direction that departureAngleDeg counts from: the septum's normal into the
/// left atrium. @errors Degenerate when crossing and ostium are less than 1 mm apart.
Result<SheathCourse> straightCourse(const PatientPoint& crossing, const AppendageTarget& target, const PatientVector& leaving);

/// The way with one bend of radius `steering.radiusMm` that arrives nearest to the axis among those that leave the septum
/// within `steering.mostDepartureDeg` of `leaving`; of several, that which leaves nearest to `leaving`.
///
/// With D the distance and the angles of the drawing, a bend of radius R fits when D sin(alpha) >= R (1 - cos(alpha + beta))
/// (room before the ostium) and D sin(beta) >= R (1 - cos(alpha + beta)) (room behind the septum): for a given beta an interval
/// of alpha in closed form. The arrival is searched outwards from the axis in steps of 0.25 degrees, then halved to 1e-6 degrees.
/// A real sheath can also bend out of that plane, so this is no more than it can do; that it reaches nothing else on its way
/// is not checked.
/// @errors NotFound when no bend fits, with what stands in the way; Degenerate as straightCourse(); those of
/// validate(). A straight line counts as a bend of 0 degrees.
Result<SheathCourse> steeredCourse(const PatientPoint& crossing, const AppendageTarget& target, const PatientVector& leaving,
                                   const Steering& steering);

/// The arrival angle of steeredCourse() alone, degrees; nothing where it has an error. For maps.
std::optional<double> steeredArrivalDeg(const PatientPoint& crossing, const AppendageTarget& target,
                                        const PatientVector& leaving, const Steering& steering);

} // namespace gauge::core
