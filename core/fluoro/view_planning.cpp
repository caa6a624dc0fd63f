#include "core/fluoro/view_planning.h"

#include "core/geometry/planar_contour.h"
#include "core/geometry/plane.h"
#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kUpright = 1e-9; // n_z below rounding of the angles
constexpr double kTableStepDeg = 5.0;
constexpr int kTableSteps = 36;

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
    if (std::abs(n.z()) > kUpright) return std::atan(across / n.z()) / kRadPerDegree;
    if (std::abs(across) <= kUpright) return 0.0;
    return std::nullopt;
}

Result<PatientVector> planeNormal(const Eigen::Vector3d& given) {
    if (!given.allFinite())
        return failure(ErrorCode::NonFinite, "Cannot use the normal of the plane: one of its components is no finite number.");
    const double largest = given.cwiseAbs().maxCoeff();
    if (!(largest > 0.0))
        return failure(ErrorCode::Degenerate,
                       "Cannot use the normal of the plane: all its components are 0, which is no direction.");
    // Divided twice, so that neither tiny nor huge components are lost.
    return PatientVector{(given / largest).normalized()};
}

std::optional<double> onlyPrimaryDeg(const PatientVector& normal) {
    const Eigen::Vector3d n = normal.mm.normalized();
    if (std::abs(n.z()) > kUpright) return std::nullopt;
    if (n.x() == 0.0) return 0.0 == n.y() ? 0.0 : 90.0; // looks to the front: edge-on from the left
    return std::atan(n.y() / n.x()) / kRadPerDegree + 0.0; // no negative zero
}

std::vector<CArmAngles> edgeOnTable(const PatientVector& normal) {
    std::vector<CArmAngles> table;
    const auto only = onlyPrimaryDeg(normal);
    for (int i = 0; i <= kTableSteps; ++i) {
        const double deg = -90.0 + kTableStepDeg * i;
        table.push_back(only ? CArmAngles{*only, deg} : CArmAngles{deg, edgeOnSecondaryDeg(normal, deg).value_or(0.0)});
    }
    return table;
}

namespace {

/// The edge-on view at an angle along the great circle, radians.
struct Circle {
    SectionFrame frame;
    CArmAngles at(double t) const { return anglesOf(std::cos(t) * frame.u + std::sin(t) * frame.v); }
};

/// Between a place within the reach and one outside, the last within.
double borderBetween(const Circle& circle, const CArmReach& reach, double within, double outside) {
    constexpr double kFine = 1e-5; // radians: 0.0006 degrees
    while (std::abs(outside - within) > kFine) {
        const double middle = 0.5 * (within + outside);
        (reach.contains(circle.at(middle)) ? within : outside) = middle;
    }
    return within;
}

} // namespace

std::vector<std::vector<CArmAngles>> edgeOnWithin(const PatientVector& normal, const CArmReach& reach, double stepDeg) {
    const Circle circle{frameOf(Plane{{}, normal.normalized()})};
    const int count = std::max(8, static_cast<int>(std::ceil(360.0 / stepDeg)));
    const auto place = [&](int i) { return 2.0 * std::numbers::pi * i / count; };
    const auto within = [&](int i) { return reach.contains(circle.at(place(i))); };
    int start = 0; // outside, so that no part runs over the end of the circle
    while (start < count && within(start))
        ++start;
    std::vector<std::vector<CArmAngles>> parts;
    if (start == count) {
        parts.push_back(edgeOnCurve(normal, count));
        return parts;
    }
    for (int i = start + 1; i <= start + count; ++i) {
        const bool now = within(i), before = within(i - 1);
        if (now && !before) parts.push_back({circle.at(borderBetween(circle, reach, place(i), place(i - 1)))});
        if (now) parts.back().push_back(circle.at(place(i)));
        if (!now && before) parts.back().push_back(circle.at(borderBetween(circle, reach, place(i - 1), place(i))));
    }
    return parts;
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

Result<WidthTolerance> widthWithin(std::span<const PatientPoint> contour, const CArmAngles& angles, double toleranceDeg) {
    if (!(toleranceDeg >= 0.0 && toleranceDeg <= 30.0))
        return failure(ErrorCode::InvalidArgument, "Cannot tell how the width changes within " + general(toleranceDeg) +
                                                       " degrees; the tolerance must lie within 0 to 30.");
    const auto nominal = projectedWidth(contour, angles);
    if (!nominal) return tl::make_unexpected(nominal.error());
    if (!nominal->widthMm)
        return failure(ErrorCode::Degenerate, "Cannot tell how the width changes about " + words(angles) +
                                                  ": the view looks along the axis and shows no width.");
    WidthTolerance range{*nominal->widthMm, *nominal->widthMm};
    constexpr int kHalf = 4;
    for (int i = -kHalf; i <= kHalf; ++i) {
        for (int j = -kHalf; j <= kHalf; ++j) {
            // beamDirection goes on over the poles, as the arm would.
            const CArmAngles near{angles.primaryDeg + toleranceDeg * i / kHalf, angles.secondaryDeg + toleranceDeg * j / kHalf};
            const auto seen = projectedWidth(contour, anglesOf(beamDirection(near)));
            if (!seen || !seen->widthMm) continue;
            range.lowestMm = std::min(range.lowestMm, *seen->widthMm);
            range.highestMm = std::max(range.highestMm, *seen->widthMm);
        }
    }
    return range;
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
