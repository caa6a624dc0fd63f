// A smooth curve in the patient near given points: the natural cubic smoothing spline.
// Neighbours: polyline.h.
#pragma once

#include "core/geometry/points.h"
#include "core/result.h"

#include <span>
#include <vector>

namespace gauge::core {

/// Natural cubic spline in space over the knots `t`, twice continuously differentiable; straight beyond its ends.
class SpaceSpline {
public:
    /// The curve g that makes  sum_i w_i |p_i - g(t_i)|^2 + lambda * integral |g''(t)|^2 dt  least, where t is the
    /// distance along the polyline through the points, mm.
    /// @param points   at least 2, patient LPS; consecutive points differ.
    /// @param weights  one per point, > 0, 1/mm2 when they are 1/variance. A large weight holds its point.
    /// @param lambda   >= 0, in mm3 times the weights' unit; 0 passes through every point. For evenly spaced points
    ///                 h apart of weight w, undulations of wavelength L are kept by the factor
    ///                 1 / (1 + lambda h / w (2 pi / L)^4).
    /// @errors TooFewPoints, NonFinite, Degenerate for consecutive points that coincide, InvalidArgument for weights
    /// that are not positive or not one per point, or a negative lambda.
    /// O(n). Source: [Reinsch1967]; [Green1994] sec. 2.3 (from memory).
    static Result<SpaceSpline> smooth(std::span<const PatientPoint> points, std::span<const double> weights,
                                      double lambda);

    /// Knots, mm, from 0 up.
    const std::vector<double>& knots() const { return m_t; }
    /// The curve at its knots.
    const std::vector<PatientPoint>& values() const { return m_g; }

    PatientPoint pointAt(double t) const;
    /// dg/dt; its length is near 1 where the points lie close to the curve.
    PatientVector derivativeAt(double t) const;
    /// d2g/dt2, 1/mm; 0 at and beyond the ends.
    PatientVector secondDerivativeAt(double t) const;

private:
    SpaceSpline() = default;
    std::size_t intervalAt(double t) const;

    std::vector<double> m_t;
    std::vector<PatientPoint> m_g;
    std::vector<PatientVector> m_second; // g'' at the knots
};

/// `SpaceSpline::smooth` at its knots: as many points as came in. Same parameters and errors.
Result<std::vector<PatientPoint>> smoothPolyline(std::span<const PatientPoint> points,
                                                 std::span<const double> weights, double lambda);

} // namespace gauge::core
