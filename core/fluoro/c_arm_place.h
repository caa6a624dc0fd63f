// Where a C-arm stands about the patient of a CT, and its angles as people type them. Neighbour: c_arm.h.
#pragma once

#include "core/fluoro/c_arm_reach.h"
#include "core/fluoro/fluoro_scale.h"

#include <Eigen/Core>
#include <span>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Where nobody tells them, distances are assumed: from the source to the isocentre as for scales, to the detector as is usual
/// for hearts. Assumptions without a source; they change how much larger near parts look, not where a line of sight goes.
inline constexpr double kAssumedSourceToIsocentreMm = kUnknownSourceToObjectMm;
inline constexpr double kAssumedSourceToDetectorMm = 1100.0;

/// How far source and detector are from the isocentre, as the person sets them.
struct CArmDistances {
    double sourceToIsocentreMm = kAssumedSourceToIsocentreMm;
    double sourceToDetectorMm = kAssumedSourceToDetectorMm;
    bool operator==(const CArmDistances&) const = default;
};

/// No C-arm is smaller or larger. Assumptions.
inline constexpr double kLeastSourceDistanceMm = 300.0, kMostSourceDistanceMm = 2000.0;

/// @errors NonFinite; InvalidArgument beyond these limits, or unless the isocentre lies between source and detector.
Result<void> validate(const CArmDistances& distances);

/// Points of the CT as the room sees them: turned about the origin, so that their places against each other are right, for widths and
/// outlines by parallel rays.
std::vector<PatientPoint> roomPoints(std::span<const PatientPoint> points, const PatientTurn& turn);

/// The arm's camera in the axes of a CT whose patient lies otherwise under the arm. `arm.angles` are those that the arm shows (of
/// the room), `arm.isocentre` lies in the CT; the camera, its picture with it, is turned back about the isocentre.
/// @errors those of cameraOf(arm) and validate(turn).
Result<PinholeCamera> cameraOf(const CArm& arm, const PatientTurn& turn);

/// The same arm, its isocentre moved so that `point` lies in the isocentre's plane and is seen at `pixel`. A file tells the arm's
/// angles and distances, never where its isocentre lies in the patient of the CT: something seen on both has to tell it.
/// @param turn  how the patient lies under the arm, as for cameraOf(). @errors those of cameraOf(); NonFinite.
Result<CArm> aimedAt(const CArm& arm, const PatientPoint& point, const Eigen::Vector2d& pixel, const PatientTurn& turn = {});

/// Angles as typed: "RAO 30, CAUD 12", "lao20 cra 5", "cau12", "-30 -12" (primary LAO +, then secondary CRA +). What is not said is 0.
/// Words: LAO, RAO; CRA, CRAN, CRANIAL; CAU, CAUD, CAUDAL; in any order; decimal point or comma.
/// @errors InvalidArgument naming what was not understood, or said twice; those of validate(angles).
Result<CArmAngles> anglesFromText(std::string_view text);

} // namespace gauge::core
