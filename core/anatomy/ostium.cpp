#include "core/anatomy/ostium.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace gauge::core {
namespace {

constexpr double kTangentHalfWindowMm = 1.0;
constexpr double kCrestInsideMm = 1.5;   // the plane lies this far inside the first flare: there the wall is whole
constexpr double kNearestLandmarksMm = 4.0, kFarthestLandmarksMm = 60.0;
constexpr double kBeyondLandmark = 0.12; // share of the line between the landmarks by which the axis may miss it

/// Places (from the tip end) where the axis crosses a plane, in order from the tip.
std::vector<double> crossings(const Polyline& axis, const Plane& plane) {
    std::vector<double> result;
    const auto& points = axis.points();
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double a = signedDistanceMm(plane, points[i - 1]), b = signedDistanceMm(plane, points[i]);
        if ((a > 0.0) != (b > 0.0))
            result.push_back(axis.distancesMm()[i - 1] +
                             (axis.distancesMm()[i] - axis.distancesMm()[i - 1]) * a / (a - b));
    }
    return result;
}

/// The crossing whose place in the patient is nearest to `near`.
std::optional<double> crossingNear(const Polyline& axis, const Plane& plane, const PatientPoint& near) {
    std::optional<double> best;
    for (const double s : crossings(axis, plane))
        if (!best || distanceMm(axis.pointAt(s), near) < distanceMm(axis.pointAt(*best), near))
            best = s;
    return best;
}

PatientVector towardsTip(const Polyline& axis, double s) {
    return -axis.tangentAt(s, kTangentHalfWindowMm); // the axis runs from the tip
}

} // namespace

Result<OstiumPlane> ostiumFromLandmarks(const Neck& neck, const PatientPoint& circumflex, const PatientPoint& ridge) {
    const auto axis = Polyline::make(neck.axis);
    if (!axis)
        return tl::make_unexpected(axis.error());
    const PatientVector between = ridge - circumflex;
    if (between.norm() < kNearestLandmarksMm || between.norm() > kFarthestLandmarksMm)
        return failure(ErrorCode::LandmarksUnusable,
                       "Cannot place the ostium: the circumflex and ridge points are " + fixed(between.norm(), 1) + " mm apart; an ostium lies between points " + fixed(kNearestLandmarksMm, 1) + " mm to " +
                           fixed(kFarthestLandmarksMm, 1) + " mm apart. Mark them again.");
    const PatientVector u = between.normalized();
    const PatientPoint middle = circumflex + 0.5 * between;
    const auto unusable = [] {
        return failure(ErrorCode::LandmarksUnusable,
                       "Cannot place the ostium: the axis of the appendage does not cross the plane through the "
                       "circumflex and ridge points near them. Mark them again on both sides of the ostium, or move the "
                       "tip seed into the appendage.");
    };
    double s = axis->nearestTo(middle).sMm;
    Plane plane;
    for (int round = 0; round < 20; ++round) {
        const PatientVector t = towardsTip(*axis, s);
        const PatientVector n = t - t.dot(u) * u;
        if (n.norm() < 0.2)
            return unusable(); // the landmarks lie one behind the other along the axis
        plane = {circumflex, n.normalized()};
        const auto crossing = crossingNear(*axis, plane, middle);
        if (!crossing)
            return unusable();
        const double moved = std::abs(*crossing - s);
        s = *crossing;
        if (moved < 1e-4)
            break;
    }
    const PatientPoint at = axis->pointAt(s);
    const double share = (at - circumflex).dot(u) / between.norm();
    if (distanceMm(at, middle) > between.norm())
        return unusable();
    if (share > 1.0 + kBeyondLandmark)
        return failure(ErrorCode::SeedInVein,
                       "Cannot measure: the way from the atrium to the tip seed passes beyond the ridge, not between the "
                       "circumflex and ridge points. The tip seed seems to lie in the upper left pulmonary vein; put it "
                       "into the appendage.");
    if (share < -kBeyondLandmark)
        return unusable();
    return OstiumPlane{{at, plane.normal}, s, false, std::nullopt};
}

Result<OstiumPlane> ostiumFromPlane(const Neck& neck, const Plane& given) {
    const auto axis = Polyline::make(neck.axis);
    if (!axis)
        return tl::make_unexpected(axis.error());
    if (!(given.normal.norm() > 1e-6))
        return failure(ErrorCode::InvalidArgument, "Cannot place the ostium: the normal given has no length.");
    Plane plane{given.point, given.normal.normalized()};
    const auto s = crossingNear(*axis, plane, plane.point);
    if (!s || distanceMm(axis->pointAt(*s), plane.point) > 25.0)
        return failure(ErrorCode::OstiumNotFound,
                       "Cannot measure: the axis of the appendage does not cross the ostium plane that was given within "
                       "25 mm of its point. Move the plane onto the ostium.");
    if (plane.normal.dot(towardsTip(*axis, *s)) < 0.0)
        plane.normal = -plane.normal;
    return OstiumPlane{{axis->pointAt(*s), plane.normal}, *s, false, std::nullopt};
}

Result<OstiumPlane> proposeOstium(const Neck& neck) {
    const auto axis = Polyline::make(neck.axis);
    if (!axis)
        return tl::make_unexpected(axis.error());
    std::vector<double> flares;
    for (const Flare& flare : neck.flares)
        if (flare.found)
            flares.push_back(flare.sMm);
    if (flares.size() < AxisSlice::kRays / 6)
        return failure(ErrorCode::OstiumNotFound,
                       "Cannot propose an ostium: the wall of the appendage nowhere turns into the wall of the atrium "
                       "between the seeds. Mark the circumflex and ridge points, or give the ostium plane.");
    std::sort(flares.begin(), flares.end());
    // The second and third flare from the tip: a single ray may follow noise.
    const double crest = 0.5 * (flares[1] + flares[2]);
    const double s = std::max(1.0, crest - kCrestInsideMm);

    // What makes a proposal doubtful: few rays that flare, a rim spread along the axis, a neck unlike a tube.
    const double share = static_cast<double>(flares.size()) / AxisSlice::kRays;
    const double spread = flares[flares.size() * 3 / 4] - flares.front();
    const double continued = std::max(0.0, s - neck.cleanMm);
    const double doubt = 4.0 * (1.0 - share) + 0.25 * std::max(0.0, spread - 4.0) + 0.5 * std::max(0.0, continued - 2.5);
    return OstiumPlane{{axis->pointAt(s), towardsTip(*axis, s)}, s, true, 0.9 / (1.0 + doubt)};
}

} // namespace gauge::core
