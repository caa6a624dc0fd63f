#include "core/anatomy/landing.h"

#include "core/anatomy/axis.h"
#include "core/geometry/polyline.h"
#include "core/measure/section_measure.h"
#include "core/number_text.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace gauge::core {
namespace {

constexpr double kStraightReachMm = 80.0;
constexpr double kWallPlaceMm = 0.15; // standard uncertainty of a single place on the wall along one ray
constexpr double kWallStepMm = 0.25;

/// Straight from the section's centre along the ostium's normal to the opposite wall. The plane component is the
/// spread over starts shifted and directions tilted by the placement's spread.
Estimate straightDepth(const AppendageTrace& trace, const Section& section) {
    const PatientVector along = trace.ostium.normal;
    const auto depth = [&](const PatientVector& direction) {
        return distanceToWallMm(trace.pool, section.center, direction, kStraightReachMm).value_or(kStraightReachMm);
    };
    Estimate estimate;
    estimate.method = "straight line from the landing plane's centre along the ostium normal to the opposite wall";
    estimate.value = depth(along);
    estimate.components.edge = kWallPlaceMm;
    const double tilt = trace.spread.tiltDeg * std::numbers::pi / 180.0;
    double square = trace.spread.shiftMm * trace.spread.shiftMm;
    for (const PatientVector& about : {section.frame.u, section.frame.v}) {
        const double plus = depth({Eigen::AngleAxisd(tilt, about.mm) * along.mm});
        const double minus = depth({Eigen::AngleAxisd(-tilt, about.mm) * along.mm});
        square += 0.25 * (plus - minus) * (plus - minus) +
                  0.75 * (plus + minus - 2.0 * estimate.value) * (plus + minus - 2.0 * estimate.value);
    }
    estimate.components.plane = std::sqrt(square);
    return estimate;
}

LandingZone zoneOf(const AppendageTrace& trace, LandingKind kind, double depthMm, Section section) {
    LandingZone zone;
    zone.kind = kind;
    zone.depthMm = depthMm;
    zone.section = std::move(section);
    zone.straightDepthMm = straightDepth(trace, zone.section);
    return zone;
}

/// The place on the wall, on the side of `ridge`, whose straight distance from it is `beyondMm`: found walking along
/// the axis, where the ray from the axis towards the ridge's side meets the wall.
std::optional<PatientPoint> wallBeyondRidge(const AppendageTrace& trace, const PatientPoint& ridge, double beyondMm) {
    const PatientVector side = ridge - trace.pointAt(0.0);
    std::optional<PatientPoint> before;
    double distanceBefore = 0.0;
    for (double s = 0.5; s < trace.lengthMm(); s += kWallStepMm) {
        const PatientPoint at = trace.pointAt(s);
        const PatientVector along = trace.directionAt(s);
        const PatientVector across = side - side.dot(along) * along;
        if (across.norm() < 1e-3)
            continue;
        const auto width = distanceToWallMm(trace.pool, at, across.normalized(), 40.0);
        if (!width)
            continue;
        const PatientPoint wall = at + *width * across.normalized();
        const double distance = distanceMm(wall, ridge);
        if (before && distanceBefore < beyondMm && distance >= beyondMm) {
            const double share = (beyondMm - distanceBefore) / (distance - distanceBefore);
            return *before + share * (wall - *before);
        }
        before = wall;
        distanceBefore = distance;
    }
    return std::nullopt;
}

Result<Section> sectionIn(const Volume& volume, const AppendageTrace& trace, const SectionFrame& frame) {
    SectionOptions options;
    options.placement = trace.spread;
    return measureSection(volume, frame, trace.pool.guideAt(frame.origin), options);
}

} // namespace

SectionFrame frameAt(const AppendageTrace& trace, double sMm) {
    return frameOf({trace.pointAt(sMm), trace.directionAt(sMm)});
}

Result<Section> sectionAt(const Volume& volume, const AppendageTrace& trace, double sMm) {
    return sectionIn(volume, trace, frameAt(trace, sMm));
}

Result<void> checkAxisLanding(const AppendageTrace& trace, double depthMm, const std::optional<PatientVector>& normal) {
    if (!(depthMm > 0.0) || depthMm >= trace.lengthMm())
        return failure(ErrorCode::LandingOutsideAppendage,
                       "Cannot measure a landing zone " + fixed(depthMm, 1) + " mm beyond the ostium: the axis of the appendage is " +
                           fixed(trace.lengthMm(), 1) + " mm long. Choose a depth between 0 and that.");
    const double tiltDeg = normal ? angleBetweenDeg(*normal, trace.directionAt(depthMm)) : 0.0;
    if (tiltDeg > kMostLandingTiltDeg)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot measure the landing zone " + fixed(depthMm, 1) + " mm beyond the ostium: its plane is tilted " +
                           fixed(tiltDeg, 0) + " degrees from square to the axis; at most " + fixed(kMostLandingTiltDeg, 0) +
                           " can be used. Tilt it back, or make it square again.");
    return {};
}

Result<LandingZone> axisLanding(const Volume& volume, const AppendageTrace& trace, double depthMm,
                                const std::optional<PatientVector>& normal) {
    if (const auto usable = checkAxisLanding(trace, depthMm, normal); !usable) return tl::make_unexpected(usable.error());
    auto section = normal ? sectionIn(volume, trace, frameOf({trace.pointAt(depthMm), *normal})) : sectionAt(volume, trace, depthMm);
    if (!section)
        return failure(section.error().code, "Cannot measure the landing zone " + fixed(depthMm, 1) + " mm beyond the ostium. " + section.error().message,
                       section.error());
    LandingZone zone = zoneOf(trace, LandingKind::Axis, depthMm, std::move(*section));
    if (normal) zone.tiltDeg = angleBetweenDeg(*normal, trace.directionAt(depthMm));
    return zone;
}

Result<LandingZone> plugLanding(const Volume& volume, const AppendageTrace& trace, const PatientPoint& circumflex,
                                const PatientPoint& ridge, double beyondRidgeMm) {
    const auto wall = wallBeyondRidge(trace, ridge, beyondRidgeMm);
    if (!wall)
        return failure(ErrorCode::LandingOutsideAppendage,
                       "Cannot place the plug plane: the wall on the ridge's side does not reach " + fixed(beyondRidgeMm, 1) + " mm beyond the ridge tip. Choose a smaller distance, or check the ridge point.");
    const PatientVector u = (*wall - circumflex).normalized();
    double s = 0.5 * beyondRidgeMm;
    Plane plane;
    for (int round = 0; round < 20; ++round) {
        const PatientVector t = trace.directionAt(s);
        const PatientVector n = t - t.dot(u) * u;
        if (n.norm() < 0.2)
            return failure(ErrorCode::LandmarksUnusable,
                           "Cannot place the plug plane: the circumflex point and the wall point lie one behind the "
                           "other along the axis. Check the circumflex and ridge points.");
        plane = {circumflex, n.normalized()};
        // Where the axis crosses the plane, nearest to the middle of the line.
        std::optional<double> crossing;
        const PatientPoint middle = circumflex + 0.5 * (*wall - circumflex);
        for (double a = -3.0; a + kWallStepMm < trace.lengthMm(); a += kWallStepMm) {
            const double da = signedDistanceMm(plane, trace.pointAt(a));
            const double db = signedDistanceMm(plane, trace.pointAt(a + kWallStepMm));
            if ((da > 0.0) == (db > 0.0))
                continue;
            const double at = a + kWallStepMm * da / (da - db);
            if (!crossing || distanceMm(trace.pointAt(at), middle) < distanceMm(trace.pointAt(*crossing), middle))
                crossing = at;
        }
        if (!crossing)
            return failure(ErrorCode::LandmarksUnusable,
                           "Cannot place the plug plane: the axis does not cross the plane through the circumflex point "
                           "and the wall beyond the ridge. Check the circumflex and ridge points.");
        const double moved = std::abs(*crossing - s);
        s = *crossing;
        if (moved < 1e-4)
            break;
    }
    auto section = sectionIn(volume, trace, frameOf({trace.pointAt(s), plane.normal}));
    if (!section)
        return failure(section.error().code, "Cannot measure the plug plane " + fixed(beyondRidgeMm, 1) + " mm beyond the ridge. " + section.error().message,
                       section.error());
    return zoneOf(trace, LandingKind::Plug, beyondRidgeMm, std::move(*section));
}

} // namespace gauge::core
