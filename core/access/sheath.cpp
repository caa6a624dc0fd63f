#include "core/access/sheath.h"

#include "core/geometry/polyline.h"
#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace gauge::core {
namespace {

constexpr double kLeastWayMm = 1.0;
constexpr double kArrivalStepRad = 0.25 * kRadPerDegree;
constexpr double kArrivalToleranceRad = 1e-6 * kRadPerDegree;
constexpr double kMostArrivalRad = 0.5 * std::numbers::pi;
/// Beyond this turn the lines before and behind the bend hardly meet any more.
constexpr double kMostTurnRad = 170.0 * kRadPerDegree;
/// So that a bend that just fits is not lost to rounding.
constexpr double kSlackRad = 1e-6;

/// The plane of line and axis: along the line, and across it towards the axis.
struct BendPlane {
    double distanceMm = 0.0;
    Eigen::Vector3d along, across;
    double axisRad = 0.0; ///< between line and axis, 0 … pi
};

BendPlane bendPlane(const PatientPoint& crossing, const AppendageTarget& target) {
    BendPlane plane;
    const Eigen::Vector3d way = target.ostiumCentre.mm - crossing.mm;
    plane.distanceMm = way.norm();
    plane.along = way / plane.distanceMm;
    const Eigen::Vector3d across = target.axis.mm - target.axis.mm.dot(plane.along) * plane.along;
    const double sine = across.norm();
    plane.across = sine > 1e-12 ? Eigen::Vector3d(across / sine) : plane.along.unitOrthogonal();
    plane.axisRad = std::atan2(sine, target.axis.mm.dot(plane.along));
    return plane;
}

struct Bend {
    double alpha = 0.0; ///< rad, >= 0
    double beta = 0.0;  ///< rad, >= 0
    double side = 1.0;  ///< -1: mirrored, t on the side away from the axis
};

/// The alphas at which a bend of radius R fits for this beta >= 0; nothing when none does.
std::optional<std::pair<double, double>> fittingAlphas(double distanceMm, double radiusMm, double beta) {
    if (beta <= kSlackRad) return std::pair{0.0, 0.0};
    const double sine = std::sin(beta), ratio = distanceMm / radiusMm;
    // D sin(alpha) + R cos(alpha + beta) >= R, a harmonic in alpha
    const double p = ratio - sine, q = std::cos(beta), amplitude = std::hypot(p, q);
    if (amplitude < 1.0 - kSlackRad * kSlackRad) return std::nullopt;
    const double shift = std::atan2(q, p), least = std::asin(std::min(1.0, 1.0 / amplitude));
    double low = std::max(0.0, least - shift), high = std::numbers::pi - least - shift;
    // D sin(beta) >= R (1 - cos(alpha + beta))
    const double room = 1.0 - ratio * sine;
    high = std::min({high, (room <= -1.0 ? std::numbers::pi : std::acos(room)) - beta, kMostTurnRad - beta});
    if (high < low - kSlackRad) return std::nullopt;
    return std::pair{low, std::max(low, high)};
}

/// Of the ways that arrive at this signed beta, that which leaves nearest to `leaving`; nothing when none does within reach.
std::optional<Bend> bestLeaving(const BendPlane& plane, double signedBeta, const PatientVector& leaving, const Steering& steering) {
    Bend bend{0.0, std::abs(signedBeta), signedBeta < 0.0 ? -1.0 : 1.0};
    const auto alphas = fittingAlphas(plane.distanceMm, steering.radiusMm, bend.beta);
    if (!alphas) return std::nullopt;
    const double along = leaving.mm.dot(plane.along), across = bend.side * leaving.mm.dot(plane.across);
    // cos(angle) = along cos(alpha) - across sin(alpha): one crest within half a turn to either side
    bend.alpha = std::clamp(std::atan2(-across, along), alphas->first, alphas->second);
    const double cosine = along * std::cos(bend.alpha) - across * std::sin(bend.alpha);
    if (std::acos(std::clamp(cosine, -1.0, 1.0)) > steering.mostDepartureDeg * kRadPerDegree + kSlackRad) return std::nullopt;
    return bend;
}

/// The way that arrives `off` from the axis, on either side of it.
std::optional<Bend> arrivingOff(const BendPlane& plane, double off, const PatientVector& leaving, const Steering& steering) {
    for (const double beta : {plane.axisRad - off, plane.axisRad + off})
        if (std::abs(beta) < kMostArrivalRad)
            if (const auto bend = bestLeaving(plane, beta, leaving, steering)) return bend;
    return std::nullopt;
}

std::optional<Bend> nearestToAxis(const BendPlane& plane, const PatientVector& leaving, const Steering& steering) {
    double off = 0.0;
    std::optional<Bend> found;
    while (!(found = arrivingOff(plane, off, leaving, steering)) && off < std::numbers::pi)
        off += kArrivalStepRad;
    if (!found || off == 0.0) return found;
    double fails = off - kArrivalStepRad;
    while (off - fails > kArrivalToleranceRad) {
        const double middle = 0.5 * (off + fails);
        if (const auto nearer = arrivingOff(plane, middle, leaving, steering)) {
            found = nearer;
            off = middle;
        } else {
            fails = middle;
        }
    }
    return found;
}

/// Angle between unit directions and its names in the course.
void describe(SheathCourse& course, const AppendageTarget& target, const PatientVector& leaving) {
    course.arrivalAngleDeg = angleBetweenDeg(course.arrival, target.axis);
    course.departureAngleDeg = angleBetweenDeg(course.departure, leaving);
}

SheathCourse bentCourse(const PatientPoint& crossing, const BendPlane& plane, const Bend& bend, double radiusMm) {
    const Eigen::Vector3d across = bend.side * plane.across;
    const auto direction = [&](double rad) -> Eigen::Vector3d { return std::cos(rad) * plane.along + std::sin(rad) * across; };
    const double turn = bend.alpha + bend.beta;
    SheathCourse course;
    course.departure = {direction(-bend.alpha)};
    course.arrival = {direction(bend.beta)};
    course.turnDeg = turn / kRadPerDegree;
    course.points.push_back(crossing);
    const PatientPoint ostium = crossing + PatientVector{plane.distanceMm * plane.along};
    if (turn <= 1e-9) {
        course.points.push_back(ostium);
        course.lengthMm = plane.distanceMm;
        return course;
    }
    course.radiusMm = radiusMm;
    const double first = plane.distanceMm * std::sin(bend.beta) / std::sin(turn); // crossing to the corner of both lines
    const double second = plane.distanceMm * std::sin(bend.alpha) / std::sin(turn);
    const double cut = radiusMm * std::tan(0.5 * turn);
    const PatientPoint start = crossing + (first - cut) * course.departure;
    const Eigen::Vector3d inward = direction(-bend.alpha + 0.5 * std::numbers::pi); // to the middle of the bend
    const int pieces = std::max(2, static_cast<int>(std::ceil(course.turnDeg)));
    for (int i = 0; i <= pieces; ++i) {
        const double angle = turn * i / pieces;
        course.points.push_back({start.mm + radiusMm * (std::sin(angle) * course.departure.mm + (1.0 - std::cos(angle)) * inward)});
    }
    course.points.push_back(ostium);
    course.lengthMm = (first - cut) + radiusMm * turn + (second - cut);
    return course;
}

Result<void> farEnough(const PatientPoint& crossing, const AppendageTarget& target) {
    const double away = distanceMm(crossing, target.ostiumCentre);
    if (away >= kLeastWayMm) return {};
    return failure(ErrorCode::Degenerate, "Cannot lay a sheath from the septum to the ostium: the crossing is " + fixed(away, 1) +
                                              " mm from the ostium's centre. Check the marks of the fossa.");
}

std::string noBend(const BendPlane& plane, const PatientVector& leaving, const Steering& steering) {
    const double lineDeg = angleBetweenDeg({plane.along}, leaving);
    return "No bend of radius " + fixed(steering.radiusMm, 0) + " mm leads from this crossing to the ostium: the line to it leaves the "
           "septum at " + fixed(lineDeg, 0) + " degrees where " + fixed(steering.mostDepartureDeg, 0) + " degrees are allowed, and over " +
           fixed(plane.distanceMm, 0) + " mm no bend makes up for that.";
}

} // namespace

Result<void> validate(const Steering& steering) {
    if (!std::isfinite(steering.radiusMm) || !std::isfinite(steering.mostDepartureDeg))
        return failure(ErrorCode::NonFinite, "Cannot bend the sheath: its radius or departure is not a finite number.");
    if (!(steering.radiusMm > 0.0))
        return failure(ErrorCode::InvalidArgument, "Cannot bend the sheath: the radius is " + general(steering.radiusMm) +
                                                       " mm; it must be above 0.");
    if (!(steering.mostDepartureDeg >= 0.0 && steering.mostDepartureDeg <= 90.0))
        return failure(ErrorCode::InvalidArgument, "Cannot bend the sheath: it is to leave the septum within " +
                                                       general(steering.mostDepartureDeg) + "°; 0 to 90 are possible.");
    return {};
}

Result<SheathCourse> straightCourse(const PatientPoint& crossing, const AppendageTarget& target, const PatientVector& leaving) {
    if (auto far = farEnough(crossing, target); !far) return tl::unexpected(far.error());
    SheathCourse course = bentCourse(crossing, bendPlane(crossing, target), {}, 0.0);
    describe(course, target, leaving);
    return course;
}

Result<SheathCourse> steeredCourse(const PatientPoint& crossing, const AppendageTarget& target, const PatientVector& leaving,
                                   const Steering& steering) {
    if (auto valid = validate(steering); !valid) return tl::unexpected(valid.error());
    if (auto far = farEnough(crossing, target); !far) return tl::unexpected(far.error());
    const BendPlane plane = bendPlane(crossing, target);
    const auto bend = nearestToAxis(plane, leaving, steering);
    if (!bend) return failure(ErrorCode::NotFound, noBend(plane, leaving, steering));
    SheathCourse course = bentCourse(crossing, plane, *bend, steering.radiusMm);
    describe(course, target, leaving);
    return course;
}

std::optional<double> steeredArrivalDeg(const PatientPoint& crossing, const AppendageTarget& target,
                                        const PatientVector& leaving, const Steering& steering) {
    if (!validate(steering) || !farEnough(crossing, target)) return std::nullopt;
    const BendPlane plane = bendPlane(crossing, target);
    const auto bend = nearestToAxis(plane, leaving, steering);
    if (!bend) return std::nullopt;
    return std::abs(plane.axisRad - bend->side * bend->beta) / kRadPerDegree;
}

} // namespace gauge::core
