#include "core/access/crossing.h"

#include "core/geometry/polyline.h"
#include "core/number_text.h"

#include <cmath>

namespace gauge::core {
namespace {

constexpr double kLeastAlong = 0.26; // sine of 15 degrees

Result<void> addMitral(CrossingScene& scene, const SeptumMarks& marks) {
    if (marks.annulus.empty()) {
        if (marks.coaptation.empty()) return {};
        return failure(ErrorCode::TooFewPoints, "Cannot tell heights over the level of coaptation: no points of the mitral annulus are marked, "
                                                "which tell what is up along the septum. Mark at least 3 around it.");
    }
    auto datum = mitralDatum(marks.annulus, marks.coaptation, scene.face.frame.origin);
    if (!datum) return tl::unexpected(datum.error());
    const Eigen::Vector3d up = datum->annulus.plane.normal.mm, n = scene.face.frame.normal.mm;
    const Eigen::Vector3d along = up - up.dot(n) * n;
    if (along.norm() < kLeastAlong)
        return failure(ErrorCode::Degenerate, "Cannot tell heights along the septum: its plane lies almost parallel to that of the mitral annulus. "
                                              "Check the points of both.");
    scene.mitral = std::move(*datum);
    scene.alongSeptum = PatientVector{along.normalized()};
    return {};
}

} // namespace

Result<CrossingScene> crossingScene(const SeptumMarks& marks, const std::optional<AppendageTarget>& target,
                                    const PatientPoint& leftAtrium) {
    auto face = septalFace(marks.fossa, target ? target->ostiumCentre : leftAtrium, marks.aorticRoot);
    if (!face) return tl::unexpected(face.error());
    CrossingScene scene{std::move(*face), std::nullopt, target, std::nullopt};
    if (auto added = addMitral(scene, marks); !added) return tl::unexpected(added.error());
    return scene;
}

CrossingValues crossingAt(const CrossingScene& scene, const Eigen::Vector2d& place, const Steering& steering) {
    CrossingValues values;
    values.place = place;
    values.point = scene.face.frame.patientFromSection(place);
    if (scene.mitral) {
        values.overAnnulusMm = signedDistanceMm(scene.mitral->annulus.plane, values.point);
        if (const auto& level = scene.mitral->coaptation)
            values.overCoaptationMm = (values.point - level->middle).dot(*scene.alongSeptum);
    }
    if (!scene.target) return values;
    const PatientVector way = scene.target->ostiumCentre - values.point;
    values.distanceMm = way.norm();
    if (way.norm() > 0.0) values.angleDeg = angleBetweenDeg(way, scene.target->axis);
    values.steeredAngleDeg = steeredArrivalDeg(values.point, *scene.target, scene.face.frame.normal, steering);
    return values;
}

std::optional<double> heightMm(const CrossingValues& values, HeightDatum datum) {
    return datum == HeightDatum::Annulus ? values.overAnnulusMm : values.overCoaptationMm;
}

std::string_view words(HeightDatum datum) {
    return datum == HeightDatum::Annulus ? "over the plane of the mitral annulus"
                                         : "over the level of coaptation, parallel to the septum";
}

std::optional<bool> servesRepair(const CrossingValues& values, const CrossingLimits& limits) {
    const auto height = heightMm(values, limits.datum);
    if (!height) return std::nullopt;
    return *height >= limits.lowestMm && *height <= limits.highestMm;
}

std::optional<bool> servesClosure(const CrossingValues& values, const CrossingLimits& limits) {
    if (!values.angleDeg) return std::nullopt;
    return *values.angleDeg <= limits.mostAngleDeg;
}

std::optional<bool> servesClosureSteered(const CrossingValues& values, const CrossingLimits& limits) {
    if (!values.angleDeg) return std::nullopt;
    return *values.angleDeg <= limits.mostAngleDeg ||
           (values.steeredAngleDeg && *values.steeredAngleDeg <= limits.mostAngleDeg);
}

Result<void> validate(const CrossingLimits& limits) {
    for (const double value : {limits.lowestMm, limits.highestMm, limits.mostAngleDeg})
        if (!std::isfinite(value))
            return failure(ErrorCode::NonFinite, "Cannot use the limits of the crossing: one of them is not a finite number.");
    if (!(limits.lowestMm < limits.highestMm))
        return failure(ErrorCode::InvalidArgument, "Cannot use the height band of the repair: it reaches from " + general(limits.lowestMm) +
                                                       " to " + general(limits.highestMm) + " mm. Its lower end must lie below its upper end.");
    if (!(limits.mostAngleDeg > 0.0 && limits.mostAngleDeg <= 90.0))
        return failure(ErrorCode::InvalidArgument, "Cannot use the limit of the angle: it is " + general(limits.mostAngleDeg) +
                                                       "°; it must be above 0 and at most 90.");
    return validate(limits.steering);
}

} // namespace gauge::core
