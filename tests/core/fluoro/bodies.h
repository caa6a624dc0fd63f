// Contours with closed forms, for tests.
#pragma once

#include "core/geometry/points.h"

#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace gauge::test {

inline std::vector<core::PatientPoint> ellipseFrom(const Eigen::Vector3d& centre, const Eigen::Vector3d& a,
                                                   const Eigen::Vector3d& b, int count = 720) {
    std::vector<core::PatientPoint> points;
    for (int i = 0; i < count; ++i) {
        const double t = 2.0 * std::numbers::pi * i / count;
        points.push_back({centre + std::cos(t) * a + std::sin(t) * b});
    }
    return points;
}

/// Two unit vectors perpendicular to `normal`.
inline std::array<Eigen::Vector3d, 2> axesOf(const Eigen::Vector3d& normal) {
    const Eigen::Vector3d n = normal.normalized();
    const Eigen::Vector3d helper =
        std::abs(n.x()) < 0.7 ? Eigen::Vector3d::UnitX() : Eigen::Vector3d::UnitY();
    const Eigen::Vector3d u = n.cross(helper).normalized();
    return {u, n.cross(u)};
}

/// Semi-axes along axesOf(normal).
inline std::vector<core::PatientPoint> ellipseIn3d(const Eigen::Vector3d& centre,
                                                   const Eigen::Vector3d& normal, double a, double b,
                                                   int count = 720) {
    const auto axes = axesOf(normal);
    return ellipseFrom(centre, a * axes[0], b * axes[1], count);
}

} // namespace gauge::test
