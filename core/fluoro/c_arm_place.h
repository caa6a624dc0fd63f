// Where a C-arm stands about the patient of a CT, and its angles as people type them. Neighbour: c_arm.h.
#pragma once

#include "core/fluoro/c_arm.h"
#include "core/fluoro/fluoro_scale.h"

#include <Eigen/Core>
#include <string_view>

namespace gauge::core {

/// Where nobody tells them, distances are assumed: from the source to the isocentre as for scales, to the detector as is usual
/// for hearts. Assumptions without a source; they change how much larger near parts look, not where a line of sight goes.
inline constexpr double kAssumedSourceToIsocentreMm = kUnknownSourceToObjectMm;
inline constexpr double kAssumedSourceToDetectorMm = 1100.0;

/// The same arm, its isocentre moved so that `point` lies in the isocentre's plane and is seen at `pixel`. A file tells the arm's
/// angles and distances, never where its isocentre lies in the patient of the CT: something seen on both has to tell it.
/// @errors those of cameraOf(); NonFinite.
Result<CArm> aimedAt(const CArm& arm, const PatientPoint& point, const Eigen::Vector2d& pixel);

/// Angles as typed: "RAO 30, CAUD 12", "lao20 cra 5", "cau12", "-30 -12" (primary LAO +, then secondary CRA +). What is not said is 0.
/// Words: LAO, RAO; CRA, CRAN, CRANIAL; CAU, CAUD, CAUDAL; in any order; decimal point or comma.
/// @errors InvalidArgument naming what was not understood, or said twice; those of validate(angles).
Result<CArmAngles> anglesFromText(std::string_view text);

} // namespace gauge::core
