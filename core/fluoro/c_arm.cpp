#include "core/fluoro/c_arm.h"

#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {


std::string side(double deg, const char* positive, const char* negative) {
    const long whole = std::lround(std::abs(deg));
    return std::string(deg < 0.0 && whole != 0 ? negative : positive) + " " + std::to_string(whole);
}

} // namespace

Result<void> validate(const CArmAngles& angles) {
    if (!std::isfinite(angles.primaryDeg) || !std::isfinite(angles.secondaryDeg))
        return failure(ErrorCode::NonFinite,
                       "Cannot use the C-arm's angles: one of them is no finite number.");
    if (std::abs(angles.primaryDeg) > 180.0 || std::abs(angles.secondaryDeg) > 90.0)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot use the C-arm's angles: " + general(angles.primaryDeg) + " and " +
                           general(angles.secondaryDeg) +
                           " degrees; the primary (LAO +, RAO -) must lie within -180 to 180, the secondary "
                           "(CRA +, CAU -) within -90 to 90.");
    return {};
}

std::string words(const CArmAngles& angles) {
    return side(angles.primaryDeg, "LAO", "RAO") + ", " + side(angles.secondaryDeg, "CRA", "CAU");
}

PatientVector beamDirection(const CArmAngles& angles) {
    const double a = angles.primaryDeg * kRadPerDegree, b = angles.secondaryDeg * kRadPerDegree;
    return {{std::sin(a) * std::cos(b), -std::cos(a) * std::cos(b), std::sin(b)}};
}

CArmAngles anglesOf(const PatientVector& towardDetector) {
    const Eigen::Vector3d d = towardDetector.mm.normalized();
    const double across = std::hypot(d.x(), d.y());
    const double primary = across > 1e-12 ? std::atan2(d.x(), -d.y()) / kRadPerDegree : 0.0;
    return {primary, std::atan2(d.z(), across) / kRadPerDegree};
}

PictureAxes pictureAxes(const CArmAngles& angles) {
    const double a = angles.primaryDeg * kRadPerDegree, b = angles.secondaryDeg * kRadPerDegree;
    return {{{std::cos(a), std::sin(a), 0.0}},
            {{-std::sin(a) * std::sin(b), std::cos(a) * std::sin(b), std::cos(b)}},
            beamDirection(angles)};
}

Result<PinholeCamera> cameraOf(const CArm& arm) {
    if (auto valid = validate(arm.angles); !valid) return tl::make_unexpected(valid.error());
    const double sod = arm.sourceToIsocentreMm, sid = arm.sourceToDetectorMm;
    if (!(sod > 0.0 && sid > sod && std::isfinite(sid)))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot place the C-arm: the source is " + general(sod) + " mm from the isocentre and " +
                           general(sid) +
                           " mm from the detector; the isocentre must lie between source and detector.");
    const auto& spacing = arm.imagerSpacingMm;
    if (!(spacing.x() > 0.0 && spacing.y() > 0.0 && spacing.allFinite()) || arm.columns < 1 || arm.rows < 1)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot place the C-arm: a detector of " + std::to_string(arm.columns) + " x " +
                           std::to_string(arm.rows) + " pixels of " + general(spacing.x()) + " x " +
                           general(spacing.y()) + " mm is none.");
    const PictureAxes axes = pictureAxes(arm.angles);
    PinholeCamera camera;
    camera.source = arm.isocentre - sod * axes.towardDetector;
    camera.columnStep = spacing.x() * axes.right;
    camera.rowStep = -spacing.y() * axes.up;
    camera.firstPixel = arm.isocentre + (sid - sod) * axes.towardDetector -
                        0.5 * (arm.columns - 1) * camera.columnStep - 0.5 * (arm.rows - 1) * camera.rowStep;
    camera.columns = arm.columns;
    camera.rows = arm.rows;
    return camera;
}

} // namespace gauge::core
