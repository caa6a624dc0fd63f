// A zoo of closed contours that many geometry tests share, each with the reason why it exists, and the random
// contours of property tests.
#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <cmath>
#include <numbers>
#include <rapidcheck.h>
#include <string>
#include <vector>

namespace gauge::test {

using Contour = std::vector<Eigen::Vector2d>;

struct NamedContour {
    std::string name;
    Contour points;
};

inline Contour ellipseContour(double a, double b, double angle, const Eigen::Vector2d& center, int count) {
    Contour out;
    const Eigen::Rotation2Dd turn(angle);
    for (int i = 0; i < count; ++i) {
        const double t = 2.0 * std::numbers::pi * i / count;
        out.push_back(center + turn * Eigen::Vector2d(a * std::cos(t), b * std::sin(t)));
    }
    return out;
}

inline std::vector<NamedContour> shapeZoo() {
    return {
        // Sides, diagonals and area known by hand.
        {"rectangle 4 x 3", {{0, 0}, {4, 0}, {4, 3}, {0, 3}}},
        // The least width is a height, not a side.
        {"triangle 3-4-5", {{0, 0}, {4, 0}, {0, 3}}},
        // Not convex: the hull differs from the contour.
        {"L shape", {{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}}},
        // Vertices on the straight line between others, and one repeated: neither may change a measure.
        {"square with extra vertices", {{0, 0}, {1, 0}, {2, 0}, {2, 0}, {2, 2}, {1, 2}, {0, 2}, {0, 1}}},
        // A neck cut across, far from the origin: cancellation would show.
        {"ellipse 12 x 8 far away", ellipseContour(12, 8, 0.4, {1e4, -2e4}, 90)},
        // Nearly a line.
        {"needle", {{0, 0}, {10, 0}, {10, 1e-3}, {0, 1e-3}}},
    };
}

/// A star-shaped contour with 3 to 40 vertices and radii of 1 to 20 mm: convex or not, never crossing itself.
inline rc::Gen<Contour> starContours() {
    const auto radii =
        rc::gen::resize(40, rc::gen::suchThat(rc::gen::container<std::vector<int>>(rc::gen::inRange(1000, 20000)),
                                              [](const auto& r) { return r.size() >= 3; }));
    return rc::gen::map(radii, [](const std::vector<int>& r) {
        Contour out;
        for (std::size_t i = 0; i < r.size(); ++i) {
            const double t = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(r.size());
            out.push_back(1e-3 * r[i] * Eigen::Vector2d(std::cos(t), std::sin(t)));
        }
        return out;
    });
}

inline rc::Gen<double> reals(double low, double high) {
    return rc::gen::map(rc::gen::inRange(0, 1000001),
                        [low, high](int i) { return low + (high - low) * static_cast<double>(i) / 1e6; });
}

/// A rotation and a shift in the plane.
struct Motion {
    double angle = 0.0;
    double x = 0.0, y = 0.0;

    Eigen::Vector2d operator()(const Eigen::Vector2d& p) const {
        return Eigen::Rotation2Dd(angle) * p + Eigen::Vector2d(x, y);
    }
    Contour operator()(const Contour& c) const {
        Contour out;
        for (const auto& p : c)
            out.push_back((*this)(p));
        return out;
    }
};

inline Motion anyMotion() {
    return {*reals(-4.0, 4.0), *reals(-300.0, 300.0), *reals(-300.0, 300.0)};
}

} // namespace gauge::test
