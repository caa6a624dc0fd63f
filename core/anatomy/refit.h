// A contour that a hand drew on a finished measurement's images, moved onto the border there.
#pragma once

#include "core/anatomy/appendage.h"

#include <span>

namespace gauge::core {

/// The border of the blood near a line drawn in `frame` (core/measure/section_measure.h), with the levels that the
/// measurement found about the frame's origin.
/// @errors those of refitContour() there.
Result<std::vector<Eigen::Vector2d>> refitContour(const Volume& volume, const AppendageMeasurement& measurement,
                                                  const SectionFrame& frame, std::span<const Eigen::Vector2d> contour);

} // namespace gauge::core
