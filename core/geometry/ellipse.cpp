#include "core/geometry/ellipse.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>

namespace gauge::core {
namespace {

/// E for a small axis ratio q > 0: 1 + q^2/2 (L - 1/2) + 3 q^4/16 (L - 13/12), L = ln(4/q); the rest is O(q^6 L).
double ellipticEOfFlat(double q) {
    const double l = std::log(4.0) - std::log(q), q2 = q * q;
    return 1.0 + 0.5 * q2 * (l - 0.5) + 3.0 / 16.0 * q2 * q2 * (l - 13.0 / 12.0);
}

/// Nearest point in the first quadrant of the ellipse x^2/a^2 + y^2/b^2 = 1, a >= b > 0, for p >= 0.
Eigen::Vector2d nearestInQuadrant(double a, double b, const Eigen::Vector2d& p) {
    if (p.y() <= 1e-200 * b) {
        const double reach = a * a - b * b; // a times the half length of the evolute on the major axis
        if (a * p.x() >= reach) return {a, 0.0};
        const double c = a * p.x() / reach;
        return {a * c, b * std::sqrt(1.0 - c * c)};
    }
    // The nearest point is ((k + 1) x/(w + k), y/w) with k = (a/b)^2 - 1 and w > 0 the root of g, which is convex and
    // decreasing: Newton's steps from its left go up to the root and never past it.
    const double k = (a - b) * (a + b) / (b * b), n = (k + 1.0) * p.x() / a, z = p.y() / b;
    double w = std::max(z, n - k); // g >= 0 here
    for (;;) {
        const double u = n / (w + k), v = z / w;
        const double g = u * u + v * v - 1.0;
        const double following = w + 0.5 * g / (u * u / (w + k) + v * v / w);
        if (!(following > w * (1.0 + 4.0 * std::numeric_limits<double>::epsilon()))) break;
        w = following;
    }
    return {(k + 1.0) * p.x() / (w + k), p.y() / w};
}

} // namespace

double completeEllipticE(double axisRatio) {
    assert(axisRatio >= 0.0 && axisRatio <= 1.0);
    if (axisRatio == 0.0) return 1.0;
    if (axisRatio < 1e-3) return ellipticEOfFlat(axisRatio);
    // E = pi / (2 M) * (1 - sum 2^(n-1) c_n^2) with M the mean of 1 and q, c_0^2 = 1 - q^2, c_n = (a - b)/2.
    double a = 1.0, b = axisRatio, sum = 0.5 * (1.0 - axisRatio) * (1.0 + axisRatio), power = 0.5;
    while (a - b > 1e-9 * a) { // the next c would be (a - b)^2 / (16 a): below rounding
        const double c = 0.5 * (a - b), mean = 0.5 * (a + b);
        b = std::sqrt(a * b);
        a = mean;
        power *= 2.0;
        sum += power * c * c;
    }
    return std::numbers::pi / (a + b) * (1.0 - sum);
}

double perimeterMm(const Ellipse& e) {
    assert(e.semiMajorMm >= e.semiMinorMm && e.semiMinorMm >= 0.0);
    return e.semiMajorMm == 0.0 ? 0.0 : 4.0 * e.semiMajorMm * completeEllipticE(e.semiMinorMm / e.semiMajorMm);
}

double areaMm2(const Ellipse& e) {
    return std::numbers::pi * e.semiMajorMm * e.semiMinorMm;
}

Eigen::Vector2d pointAt(const Ellipse& e, double t) {
    return e.center +
           Eigen::Rotation2Dd(e.angleRad) * Eigen::Vector2d(e.semiMajorMm * std::cos(t), e.semiMinorMm * std::sin(t));
}

double chordMm(const Ellipse& e, double directionRad) {
    const double along = std::cos(directionRad - e.angleRad), across = std::sin(directionRad - e.angleRad);
    const double denominator = std::hypot(e.semiMinorMm * along, e.semiMajorMm * across);
    return denominator == 0.0 ? 2.0 * e.semiMajorMm : 2.0 * e.semiMajorMm * e.semiMinorMm / denominator;
}

Eigen::Vector2d nearestPoint(const Ellipse& e, const Eigen::Vector2d& p) {
    assert(e.semiMajorMm >= e.semiMinorMm && e.semiMinorMm > 0.0);
    const Eigen::Rotation2Dd turn(e.angleRad);
    const Eigen::Vector2d q = turn.inverse() * (p - e.center);
    const Eigen::Vector2d x = nearestInQuadrant(e.semiMajorMm, e.semiMinorMm, q.cwiseAbs());
    return e.center + turn * Eigen::Vector2d(std::copysign(x.x(), q.x()), std::copysign(x.y(), q.y()));
}

} // namespace gauge::core
