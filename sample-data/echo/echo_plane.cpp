#include "sample-data/echo/echo_plane.h"

#include <cmath>
#include <numbers>

namespace gauge::sample_case {
namespace {

double radians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

} // namespace

EchoProbe probeLookingAt(const core::PatientPoint& apex, const core::PatientPoint& target) {
    EchoProbe probe;
    probe.apex = apex;
    probe.beam = (target - apex).normalized();
    const Eigen::Vector3d left = Eigen::Vector3d::UnitX();
    probe.left = {(left - left.dot(probe.beam.mm) * probe.beam.mm).normalized()};
    probe.up = probe.left.cross(probe.beam);
    if (probe.up.mm.z() < 0.0) probe.up = -probe.up;
    return probe;
}

core::PatientVector EchoPlane::lateral() const {
    const double t = radians(angleDeg);
    return probe.left * std::cos(t) + probe.up * std::sin(t);
}

core::PatientVector EchoPlane::normal() const {
    return lateral().cross(probe.beam);
}

core::PatientPoint EchoPlane::patientFromPixel(const Eigen::Vector2d& pixel) const {
    const Eigen::Vector2d mm = fan.mmPerPixel * (pixel - fan.apexPixel);
    return probe.apex + lateral() * mm.x() + probe.beam * mm.y();
}

Eigen::Vector2d EchoPlane::pixelFromPatient(const core::PatientPoint& p) const {
    const core::PatientVector d = p - probe.apex;
    return fan.apexPixel + Eigen::Vector2d(d.dot(lateral()), d.dot(probe.beam)) / fan.mmPerPixel;
}

bool EchoPlane::inFan(const Eigen::Vector2d& pixel) const {
    const Eigen::Vector2d mm = fan.mmPerPixel * (pixel - fan.apexPixel);
    return mm.norm() <= fan.depthMm && std::atan2(std::abs(mm.x()), mm.y()) <= radians(fan.halfAngleDeg);
}

} // namespace gauge::sample_case
