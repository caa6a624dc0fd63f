#include "core/geometry/camera.h"

#include <cassert>
#include <cmath>

namespace gauge::core {
namespace {

/// Unit normal of the detector on the side away from the source.
Eigen::Vector3d normalOf(const PinholeCamera& camera) {
    const Eigen::Vector3d n = camera.columnStep.mm.cross(camera.rowStep.mm).normalized();
    return n.dot(camera.firstPixel.mm - camera.source.mm) < 0.0 ? Eigen::Vector3d(-n) : n;
}

} // namespace

double PinholeCamera::sourceToDetectorMm() const {
    const double distance = normalOf(*this).dot(firstPixel.mm - source.mm);
    assert(distance > 0.0);
    return distance;
}

double PinholeCamera::depthMm(const PatientPoint& p) const {
    return normalOf(*this).dot(p.mm - source.mm);
}

std::optional<Eigen::Vector2d> PinholeCamera::project(const PatientPoint& p) const {
    const Eigen::Vector3d n = normalOf(*this);
    const double depth = n.dot(p.mm - source.mm);
    if (!(depth > 0.0)) return std::nullopt;
    const double along = n.dot(firstPixel.mm - source.mm) / depth;
    const Eigen::Vector3d onDetector = source.mm + along * (p.mm - source.mm) - firstPixel.mm;
    // The steps need not be perpendicular: solve onDetector = x columnStep + y rowStep by their 2 x 2 Gram
    // matrix.
    const double cc = columnStep.dot(columnStep), cr = columnStep.dot(rowStep), rr = rowStep.dot(rowStep);
    const double c = columnStep.mm.dot(onDetector), r = rowStep.mm.dot(onDetector);
    const double determinant = cc * rr - cr * cr;
    assert(determinant > 0.0);
    return Eigen::Vector2d((rr * c - cr * r) / determinant, (cc * r - cr * c) / determinant);
}

PatientVector PinholeCamera::rayThrough(const Eigen::Vector2d& pixel) const {
    return (detectorPoint(pixel) - source).normalized();
}

std::optional<double> PinholeCamera::magnificationAt(const PatientPoint& p) const {
    const double depth = depthMm(p);
    if (!(depth > 0.0)) return std::nullopt;
    return sourceToDetectorMm() / depth;
}

} // namespace gauge::core
