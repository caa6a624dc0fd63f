// Open polylines in the patient, by arc length: the axis of an appendage is one of these.
// Neighbours: smoothing_spline.h (a smooth curve through noisy points), plane.h.
#pragma once

#include "core/geometry/points.h"
#include "core/result.h"

#include <span>
#include <vector>

namespace gauge::core {

/// Length of the polyline, mm; 0 for fewer than 2 points.
double lengthMm(std::span<const PatientPoint> polyline);

/// A polyline that knows the distance of each of its points from the first. Places on it are given by that
/// distance s, mm; s outside [0, length] is held at the ends.
class Polyline {
public:
    /// Consecutive repeats of a point are dropped.
    /// @errors TooFewPoints when fewer than 2 different points are left; NonFinite for NaN or infinity.
    static Result<Polyline> make(std::span<const PatientPoint> points);

    const std::vector<PatientPoint>& points() const { return m_points; }
    /// Distance of each point from the first along the polyline, mm; same size as `points()`.
    const std::vector<double>& distancesMm() const { return m_distances; }
    double lengthMm() const { return m_distances.back(); }

    PatientPoint pointAt(double sMm) const;

    /// Unit direction at s. With `halfWindowMm` = 0 that of the segment (at a vertex, of the segment after it);
    /// otherwise that of the chord from s - halfWindow to s + halfWindow, held at the ends.
    PatientVector tangentAt(double sMm, double halfWindowMm = 0.0) const;

    struct Place {
        double sMm = 0.0;
        double distanceMm = 0.0;
    };
    /// The place on the polyline nearest to `p` (the first such from the start). O(n).
    Place nearestTo(const PatientPoint& p) const;

    struct Turn {
        double angleDeg = 0.0; ///< 0 = straight, 180 = straight back
        double sMm = 0.0;
    };
    /// The greatest angle between the chord over [s - span, s] and the chord over [s, s + span], for s at the
    /// polyline's points at least `spanMm` (> 0) from both ends. A zero angle at half the length where the polyline
    /// is shorter than 2 spans.
    Turn maximumTurn(double spanMm) const;

    /// Points at equal distances along the polyline, both ends kept; the distance is the one nearest to `stepMm`
    /// (> 0) that divides the length into whole steps.
    std::vector<PatientPoint> resampled(double stepMm) const;

private:
    Polyline() = default;
    /// Index of the segment that holds s: 0 … points - 2.
    std::size_t segmentAt(double sMm) const;

    std::vector<PatientPoint> m_points;
    std::vector<double> m_distances;
};

/// The angle between two directions, degrees, 0 to 180; accurate for small angles too. Precondition: neither is 0.
double angleBetweenDeg(const PatientVector& a, const PatientVector& b);

} // namespace gauge::core
