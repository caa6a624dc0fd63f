// The ellipse in a plane: perimeter, area, chords, nearest point. Fit to points: ellipse_fit.h.
//
//         v ^        . - ~ ~ - .
//           |     '      /semiMajor      angleRad: from the u axis to the major axis, counter-clockwise,
//           |    (   center       )      in (-pi/2, pi/2].
//           |     .      \semiMinor
//           |        ' - _ _ - '
//           +----------------------> u
#pragma once

#include <Eigen/Core>

namespace gauge::core {

/// Section coordinates, mm. semiMajorMm >= semiMinorMm >= 0.
struct Ellipse {
    Eigen::Vector2d center = Eigen::Vector2d::Zero();
    double semiMajorMm = 0.0;
    double semiMinorMm = 0.0;
    double angleRad = 0.0;
};

/// Complete elliptic integral of the second kind E(m) for the parameter m = k^2 = 1 - q^2, given by the axis ratio
/// q = b/a in [0, 1] (which keeps full precision for flat ellipses): E = 1 at q = 0, pi/2 at q = 1.
/// Accuracy: 1e-14 relative. Arithmetic-geometric mean; below q = 1e-3 the logarithmic series.
/// Source: [DLMF] 19.8.6 and 19.12.2 (section numbers from memory).
double completeEllipticE(double axisRatio);

/// Exact perimeter, mm: 4 a E. For any axis ratio, a segment (b = 0) included.
double perimeterMm(const Ellipse& ellipse);

/// pi a b, mm2.
double areaMm2(const Ellipse& ellipse);

/// Point at eccentric anomaly t, radians: center + R(angle) (a cos t, b sin t).
Eigen::Vector2d pointAt(const Ellipse& ellipse, double t);

/// Length, mm, of the chord through the centre in the direction that makes `directionRad` with the u axis.
/// 0 only for b = 0 away from the major axis. With r = half of it: 1/r^2 = cos^2/a^2 + sin^2/b^2 about the major axis.
double chordMm(const Ellipse& ellipse, double directionRad);

/// The point of the ellipse nearest to `p`; where several are (on the evolute's inside segment of the major axis)
/// one of them. Precondition: semiMinorMm > 0. Accuracy: 1e-12 of the semi-major axis.
/// Source: [Eberly2013] (from memory); Newton from the left of a convex decreasing function, so it cannot fail.
Eigen::Vector2d nearestPoint(const Ellipse& ellipse, const Eigen::Vector2d& p);

} // namespace gauge::core
