// A multiplane probe in the gullet and the fan-shaped picture it makes.
//
//                apex o  (the probe's tip; depth 0)         seen along the beam axis, from the probe:
//                    /|\                                       up (90 degrees)
//                   / | \   beam axis: aimed at the             |
//                  /  |  \  appendage; the plane turns          o---- left (0 degrees): `lateral` of a plane at
//                 /___v___\ about it                                  angle t is cos t * left + sin t * up
//                    depth
//
// The picture's columns run along `lateral`: the patient's left is on the right at 0 degrees, the head at 90.
#pragma once

#include "core/geometry/plane.h"

#include <Eigen/Core>

namespace gauge::sample_case {

struct EchoProbe {
    core::PatientPoint apex;
    core::PatientVector beam; ///< unit
    core::PatientVector left; ///< unit, perpendicular to the beam: as near to the patient's left as can be
    core::PatientVector up;   ///< unit, perpendicular to both, towards the head
};

/// A probe at `apex` that looks at `target`.
EchoProbe probeLookingAt(const core::PatientPoint& apex, const core::PatientPoint& target);

/// Where the fan lies in the picture.
struct FanLayout {
    int columns = 640, rows = 480;
    double mmPerPixel = 0.27;
    Eigen::Vector2d apexPixel{319.5, 34.0}; ///< whole numbers at pixel centres
    double depthMm = 108.0;
    double halfAngleDeg = 42.0;
};

struct EchoPlane {
    EchoProbe probe;
    double angleDeg = 0.0; ///< rotation of the plane about the beam axis
    FanLayout fan;

    core::PatientVector lateral() const;
    core::PatientVector normal() const; ///< lateral x beam
    core::PatientPoint patientFromPixel(const Eigen::Vector2d& pixel) const;
    /// Of the foot of the perpendicular on the plane.
    Eigen::Vector2d pixelFromPatient(const core::PatientPoint& p) const;
    double outOfPlaneMm(const core::PatientPoint& p) const { return (p - probe.apex).dot(normal()); }
    bool inFan(const Eigen::Vector2d& pixel) const;
};

} // namespace gauge::sample_case
