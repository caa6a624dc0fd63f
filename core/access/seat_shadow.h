// The outline of a seated size on an X-ray frame, laid onto a place of the picture as core/fluoro/projected_outline.h lays a contour:
// a file tells the C-arm's angles, but not where its isocentre lies in the patient of the CT.
#pragma once

#include "core/access/seated_body.h"
#include "core/cine/planar_scale.h"
#include "core/fluoro/c_arm_reach.h"

#include <vector>

namespace gauge::core {

/// By parallel rays: a closed outline in pixels for the body, and one for the disc where there is one. The outline is the convex hull of
/// the shadow: exact for bodies that bulge nowhere inwards.
/// @param anchor  a place of the patient, and @param anchorPixel  where it lies in the picture.
/// @param scale  of the picture at the body's depth.
/// @param turn  how the patient lies under the arm; `angles` are those that the arm shows.
/// @errors NonFinite; those of validate(angles), validate(scale) and validate(turn).
Result<std::vector<std::vector<Eigen::Vector2d>>> shadowsOf(const SeatedBody& seated, const PatientPoint& anchor,
                                                            const CArmAngles& angles, const PlanarScale& scale,
                                                            const Eigen::Vector2d& anchorPixel, const PatientTurn& turn = {});

} // namespace gauge::core
