#include "core/fluoro/view_planning.h"

#include "core/geometry/planar_contour.h"
#include "core/geometry/plane.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {


/// Of a line of sight's two directions the one with the detector before the patient.
CArmAngles fromTheFront(const PatientVector& sight) {
    const CArmAngles angles = anglesOf(sight);
    return std::abs(angles.primaryDeg) <= 90.0 ? angles : anglesOf(-sight);
}

/// Contour in its own plane, with the frame to go back.
struct Flat {
    SectionFrame frame;
    std::vector<Eigen::Vector2d> points;
};

Result<Flat> flatten(std::span<const PatientPoint> contour) {
    const auto normal = contourNormal(contour);
    if (!normal) return tl::make_unexpected(normal.error());
    Flat flat{frameOf(Plane{contour.front(), *normal}), {}};
    for (const auto& p : contour)
        flat.points.push_back(flat.frame.sectionFromPatient(p));
    return flat;
}

} // namespace

std::optional<double> edgeOnSecondaryDeg(const PatientVector& normal, double primaryDeg) {
    const Eigen::Vector3d n = normal.mm.normalized();
    const double a = primaryDeg * kRadPerDegree;
    const double across = n.y() * std::cos(a) - n.x() * std::sin(a);
    constexpr double kUpright = 1e-9; // n_z below rounding of the angles
    if (std::abs(n.z()) > kUpright) return std::atan(across / n.z()) / kRadPerDegree;
    if (std::abs(across) <= kUpright) return 0.0;
    return std::nullopt;
}

std::vector<CArmAngles> edgeOnCurve(const PatientVector& normal, int count) {
    const SectionFrame frame = frameOf(Plane{{}, normal.normalized()});
    std::vector<CArmAngles> views;
    for (int i = 0; i < count; ++i) {
        const double t = 2.0 * std::numbers::pi * i / count;
        views.push_back(anglesOf(std::cos(t) * frame.u + std::sin(t) * frame.v));
    }
    return views;
}

CArmAngles enFace(const PatientVector& normal) {
    return fromTheFront(normal);
}

Result<CArmAngles> edgeOnAlong(const PatientVector& normal, const PatientVector& inPlane) {
    const PatientVector n = normal.normalized();
    const PatientVector sight = inPlane - inPlane.dot(n) * n;
    if (!(sight.norm() > 1e-9 * inPlane.norm()))
        return failure(
            ErrorCode::Degenerate,
            "Cannot find the edge-on view along that direction: it is perpendicular to the plane. Give a "
            "direction within the plane.");
    return fromTheFront(sight);
}

Result<SectionViews> sectionViews(std::span<const PatientPoint> contour) {
    const auto flat = flatten(contour);
    if (!flat) return tl::make_unexpected(flat.error());
    const Caliper longest = maximumCaliper(flat->points);
    const Eigen::Vector2d along = (longest.to - longest.from).normalized(), across(-along.y(), along.x());
    const auto inPatient = [&](const Eigen::Vector2d& v) {
        return fromTheFront(v.x() * flat->frame.u + v.y() * flat->frame.v);
    };
    SectionViews views;
    views.showsLongest = inPatient(across);
    views.showsShortest = inPatient(along);
    views.enFace = enFace(flat->frame.normal);
    views.longestMm = longest.lengthMm;
    views.shortestMm = extentAlong(flat->points, across).lengthMm;
    return views;
}

Result<double> lostOfLongestMm(std::span<const PatientPoint> contour, const CArmAngles& angles) {
    const auto seen = projectedWidth(contour, angles);
    if (!seen) return tl::make_unexpected(seen.error());
    if (!seen->widthMm)
        return failure(ErrorCode::Degenerate, "Cannot say what the view at " + words(angles) +
                                                  " leaves out: it looks along the axis and shows no width.");
    const auto flat = flatten(contour);
    if (!flat) return tl::make_unexpected(flat.error());
    return std::max(0.0, maximumCaliper(flat->points).lengthMm - *seen->widthMm);
}

} // namespace gauge::core
