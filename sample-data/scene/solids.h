// Solids by defining functions: negative inside, zero on the surface, close to the signed distance in mm near
// it (first-order: value over gradient), smooth, and growing with distance everywhere.
#pragma once

#include "sample-data/scene/centre_curve.h"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace gauge::sample_case {

/// A smooth function through knots: monotone cubic between them (Fritsch and Carlson), held beyond the ends.
class SmoothTable {
public:
    SmoothTable() = default;
    SmoothTable(double value) : SmoothTable({{0.0, value}}) {}
    /// @param knots  at least 1, with rising first members.
    SmoothTable(std::vector<std::pair<double, double>> knots);
    double operator()(double x) const;

private:
    std::vector<std::pair<double, double>> m_knots;
    std::vector<double> m_slopes;
};

struct Ellipsoid {
    Eigen::Vector3d centre = Eigen::Vector3d::Zero();
    Eigen::Matrix3d axes = Eigen::Matrix3d::Identity(); ///< columns: unit directions of the semi-axes
    Eigen::Vector3d semiAxes = Eigen::Vector3d::Ones();

    double distance(const Eigen::Vector3d& x) const;
    /// The surface point whose outward unit normal is `normal`.
    Eigen::Vector3d surfacePoint(const Eigen::Vector3d& normal) const;
};

/// A tube about a centre line. Its cross-section at s is |p/a|^m + |q/b|^m = 1 with p, q along the frame's
/// normal and binormal turned by `twistRad + twistPerMm * s`; both ends are closed by half an ellipsoid.
struct Tube {
    CentreCurve curve;
    SmoothTable semiA, semiB; ///< half widths against s, mm
    double exponent = 2.0;    ///< m >= 2: 2 is an ellipse, larger is squarer
    double twistRad = 0.0;
    double twistPerMm = 0.0;
    double baseCapMm = 1.0; ///< length of the closing half ellipsoid at firstS, > 0
    double tipCapMm = 1.0;  ///< the same at lastS

    double distance(const Eigen::Vector3d& x) const;
    double twistAt(double s) const { return twistRad + twistPerMm * s; }
};

/// Union of two solids with a fillet of radius about `r` mm in the corner between them. Equals the plain
/// union wherever either solid is farther than `r`.
inline double filletUnion(double a, double b, double r) {
    if (a >= r || b >= r || r <= 0.0) return std::min(a, b);
    const double u = r - a, v = r - b;
    return std::max(r, std::min(a, b)) - std::sqrt(u * u + v * v);
}

} // namespace gauge::sample_case
