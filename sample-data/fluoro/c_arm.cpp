#include "sample-data/fluoro/c_arm.h"

#include <cmath>
#include <numbers>

namespace gauge::sample_case {
namespace {

double radians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

} // namespace

core::PatientVector CArm::towardsDetector() const {
    const double a = radians(primaryDeg), b = radians(secondaryDeg);
    return {{std::sin(a) * std::cos(b), -std::cos(a) * std::cos(b), std::sin(b)}};
}

core::PatientVector CArm::right() const {
    const double a = radians(primaryDeg);
    return {{std::cos(a), std::sin(a), 0.0}};
}

core::PatientVector CArm::down() const {
    return right().cross(towardsDetector());
}

Eigen::Vector2d CArm::pixelOf(const core::PatientPoint& p) const {
    const core::PatientVector ray = p - source();
    const double scale = sidMm / ray.dot(towardsDetector()) / imagerSpacingMm;
    return {0.5 * (columns - 1) + scale * ray.dot(right()), 0.5 * (rows - 1) + scale * ray.dot(down())};
}

core::PatientPoint CArm::detectorPoint(const Eigen::Vector2d& pixel) const {
    const Eigen::Vector2d mm =
        imagerSpacingMm * (pixel - 0.5 * Eigen::Vector2d(columns - 1, rows - 1));
    return source() + towardsDetector() * sidMm + right() * mm.x() + down() * mm.y();
}

} // namespace gauge::sample_case
