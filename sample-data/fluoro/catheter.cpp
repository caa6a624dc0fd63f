#include "sample-data/fluoro/catheter.h"

#include <cassert>
#include <cmath>

namespace gauge::sample_case {
namespace {

constexpr double kStepMm = 0.5;

Eigen::Vector3d catmullRom(const Eigen::Vector3d& a, const Eigen::Vector3d& b, const Eigen::Vector3d& c,
                           const Eigen::Vector3d& d, double t) {
    return 0.5 * (2.0 * b + t * (c - a) + t * t * (2.0 * a - 5.0 * b + 4.0 * c - d) +
                  t * t * t * (3.0 * b - a - 3.0 * c + d));
}

} // namespace

Catheter catheterThrough(const std::vector<core::PatientPoint>& places, double outerDiameterMm) {
    assert(places.size() >= 3);
    Catheter catheter;
    catheter.outerDiameterMm = outerDiameterMm;
    const std::size_t n = places.size();
    for (std::size_t i = 0; i + 2 < n; ++i) {
        const Eigen::Vector3d before = places[i == 0 ? 0 : i - 1].mm, from = places[i].mm, to = places[i + 1].mm;
        // Into the straight end without a corner: its direction goes on behind it.
        const Eigen::Vector3d after =
            i + 3 == n ? to + (places[n - 1].mm - to).normalized() * (to - from).norm() : places[i + 2].mm;
        const int steps = static_cast<int>(std::ceil((to - from).norm() / kStepMm));
        for (int k = 0; k < steps; ++k)
            catheter.course.push_back({catmullRom(before, from, to, after, static_cast<double>(k) / steps)});
    }
    const Eigen::Vector3d from = places[n - 2].mm, to = places[n - 1].mm;
    catheter.straightMm = (to - from).norm();
    const int steps = static_cast<int>(std::ceil(catheter.straightMm / kStepMm));
    for (int k = 0; k <= steps; ++k)
        catheter.course.push_back({from + (to - from) * static_cast<double>(k) / steps});
    return catheter;
}

CatheterEdges catheterEdges(const Catheter& catheter, const CArm& arm, double beforeTipMm) {
    assert(beforeTipMm <= catheter.straightMm);
    const Eigen::Vector3d tip = catheter.course.back().mm;
    const Eigen::Vector3d along = (tip - catheter.course[catheter.course.size() - 2].mm).normalized();
    const Eigen::Vector3d centre = tip - beforeTipMm * along;
    // In the plane across the catheter: the source's foot, and the tangents from it to the circle.
    Eigen::Vector3d towards = arm.source().mm - centre;
    towards -= towards.dot(along) * along;
    const double radius = 0.5 * catheter.outerDiameterMm, cosine = radius / towards.norm();
    const Eigen::Vector3d near = towards.normalized(), side = along.cross(near);
    const auto edge = [&](double sign) {
        const Eigen::Vector3d point =
            centre + radius * (cosine * near + sign * std::sqrt(1.0 - cosine * cosine) * side);
        return arm.pixelOf({point});
    };
    return {{centre}, edge(-1.0), edge(1.0)};
}

} // namespace gauge::sample_case
