// A septum to work by hand: it stands upright and sagittal at x = -20, its fossa a circle of 10 mm about (-20, 5, 0); the mitral
// annulus lies level at z = -35, the leaflets meet 8 mm below; the ostium's centre is at (20, 5, 0), level with the fossa's middle.
//
//      z ^      fossa |            A crossing at (-20, 5 + b, h) lies 35 + h over the annulus and 43 + h over the coaptation
//        |            |--- ostium  parallel to the septum; the line to the ostium is (40, -b, -h).
//        |    ________|
//        '--------------> x (left)
#pragma once

#include "core/access/crossing_answer.h"

#include <Eigen/Geometry>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <stdexcept>
#include <vector>

namespace gauge::test {

/// Of the circle through 24 rim points as a smooth line: the spline errs by 1e-5 of the radius there.
inline constexpr double kOutlineMm = 1e-3;
inline constexpr double kAccessRounding = 1e-9; // a few operations on lengths of 100 mm

inline std::vector<core::PatientPoint> ring(const Eigen::Vector3d& middle, const Eigen::Vector3d& a, const Eigen::Vector3d& b, int count) {
    std::vector<core::PatientPoint> points;
    for (int i = 0; i < count; ++i) {
        const double t = 2.0 * std::numbers::pi * i / count;
        points.push_back({middle + std::cos(t) * a + std::sin(t) * b});
    }
    return points;
}

inline core::SeptumMarks uprightMarks() {
    core::SeptumMarks marks;
    marks.annulus = ring({0, -10, -35}, {15, 0, 0}, {0, 15, 0}, 12);
    marks.coaptation = {{{-4, -10, -43}}, {{0, -10, -43}}, {{4, -10, -43}}};
    marks.fossa = ring({-20, 5, 0}, {0, 10, 0}, {0, 0, 10}, 24);
    marks.aorticRoot = core::PatientPoint{{-22, -25, 8}};
    return marks;
}

/// @param up, back  direction of the axis against straight to the left, degrees: towards the head, towards the back.
inline core::AppendageTarget uprightTarget(double up, double back = 0.0) {
    const double r = std::numbers::pi / 180.0;
    const Eigen::Vector3d axis(std::cos(up * r) * std::cos(back * r), std::cos(up * r) * std::sin(back * r), std::sin(up * r));
    return {{{20, 5, 0}}, {axis}};
}

template <class T> const T& need(const core::Result<T>& result) {
    if (!result) throw std::runtime_error("unexpected error: " + result.error().message);
    return *result;
}

template <class T> core::Error refused(const core::Result<T>& result) {
    if (!result) return result.error();
    ADD_FAILURE() << "an error was expected";
    return {};
}

inline core::CrossingScene uprightScene(double up, double back = 0.0) {
    return need(core::crossingScene(uprightMarks(), uprightTarget(up, back), {{0, 0, 0}}));
}

/// The same heart elsewhere.
inline core::SeptumMarks moved(core::SeptumMarks marks, const Eigen::Isometry3d& motion) {
    for (auto* points : {&marks.annulus, &marks.coaptation, &marks.fossa})
        for (auto& point : *points)
            point.mm = motion * point.mm;
    if (marks.aorticRoot) marks.aorticRoot->mm = motion * marks.aorticRoot->mm;
    return marks;
}

} // namespace gauge::test
