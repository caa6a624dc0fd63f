// Ellipses through noisy points. The ellipse itself: ellipse.h.
#pragma once

#include "core/geometry/ellipse.h"
#include "core/result.h"

#include <Eigen/Core>
#include <optional>
#include <span>

namespace gauge::core {

struct EllipseFit {
    Ellipse ellipse;
    /// Root of the mean squared orthogonal distance of the points, mm.
    double rmsDistanceMm = 0.0;
    /// Covariance of (center u, center v, semiMajor, semiMinor, angle), mm and rad; none when the scatter of the
    /// points cannot be known: 5 points and no `pointSigmaMm`. For a near circle the angle is undetermined: its
    /// variance is held at that of a direction known nothing about, pi^2/12, its correlations kept.
    std::optional<Eigen::Matrix<double, 5, 5>> covariance;
};

struct EllipseFitOptions {
    /// Standard uncertainty of each point across the curve, mm, > 0; without it, it is taken from the residuals.
    std::optional<double> pointSigmaMm;
};

/// Direct least squares: the ellipse with the least sum of squared algebraic distances under 4 a c - b^2 = 1.
/// Biased towards small ellipses on partial, noisy arcs; a starting point, exact for exact points.
/// @param points  at least 5, section coordinates, mm.
/// @errors TooFewPoints below 5; NonFinite; Degenerate when all lie on a line or in fewer than 5 places;
/// NotAnEllipse when no real ellipse comes out.
/// Invariant under similarity. Source: [Halir1998], the numerically stable form of [Fitzgibbon1999].
Result<Ellipse> fitEllipseDirect(std::span<const Eigen::Vector2d> points);

/// Orthogonal-distance least squares: the ellipse with the least sum of squared distances to the points, by
/// damped Gauss-Newton from the direct fit and from the circle of the same mean radius; the better of the two.
/// @errors those of fitEllipseDirect; NotAnEllipse also when the best ellipse grows without bound or flattens to a
/// segment (points of a parabola, a hyperbola or a line pair), or the iteration does not settle.
/// Accuracy: parameters to 1e-7 of the size (the sum of squares is flat to rounding there).
/// Source: [Gander1994] for the criterion; parameters chosen so that a circle is no singular case.
Result<EllipseFit> fitEllipse(std::span<const Eigen::Vector2d> points, const EllipseFitOptions& options = {});

} // namespace gauge::core
