// 3D echo, where blood is dark: a section measured as on CT by turning the picture's brightness round, and the metrics
// of a contour that a hand drew or corrected, with the observer's uncertainty.
#pragma once

#include "core/measure/section.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <Eigen/Core>
#include <memory>
#include <span>

namespace gauge::core {

/// The echo volume with its brightness turned round (greatest + least - value), so that blood is bright as the
/// automatic border of `measureSection` expects it. Geometry and Frame of Reference stay.
/// @errors InvalidArgument for a volume that is no echo.
Result<std::shared_ptr<const Volume>> brightBlood(const Volume& echo);

/// How far a hand's line strays from the border; assumptions (no published figures in mm were found), editable.
struct DrawnContourOptions {
    double observerMm = 0.7;    ///< standard deviation of the line across the border, changing along it
    double correlationMm = 8.0; ///< length along the contour over which it strays alike, > 0
    double commonMm = 0.3;      ///< standard deviation of a line too wide or too narrow all the way round
    double scaleUncertainty = 0.0; ///< relative, of the image's millimetre
};

/// Metrics of the closed line through the drawn points (core/geometry/smooth_line.h, so that a dozen clicks are enough: 12
/// on a circle read its perimeter 0.011 % low). The component `observer` is the spread of each metric over
/// redraws of the line with the stated straying, always the same ones.
/// @param contour  section coordinates, mm, first point not repeated, any sense of rotation.
/// @errors TooFewPoints below 5, NonFinite, Degenerate; InvalidArgument for options out of range.
Result<Section> measureDrawnContour(const SectionFrame& frame, std::span<const Eigen::Vector2d> contour,
                                    const DrawnContourOptions& options = {});

} // namespace gauge::core
