// A contour of the CT as an X-ray frame shows it, laid onto a place of the picture. The file tells the C-arm's angles, but not where
// its isocentre lies in the patient of the CT: where the outline belongs is what the person drew.
#pragma once

#include "core/cine/planar_scale.h"
#include "core/fluoro/c_arm.h"
#include "core/geometry/points.h"
#include "core/result.h"

#include <Eigen/Core>
#include <span>
#include <vector>

namespace gauge::core {

/// By parallel rays, in the picture axes of c_arm.h (patient's head up, not mirrored): pixels of the picture.
/// @param contour  closed, at least 3 points, LPS mm.
/// @param centrePixel  where the middle of the contour's points lies in the picture.
/// @param scale  of the picture at the contour's depth.
/// @errors TooFewPoints; NonFinite; those of validate(angles) and validate(scale).
Result<std::vector<Eigen::Vector2d>> projectedOutline(std::span<const PatientPoint> contour, const CArmAngles& angles,
                                                      const PlanarScale& scale, const Eigen::Vector2d& centrePixel);

} // namespace gauge::core
