// The CT cut as the echo cut it: the widths that CT reads along the echo's own lines, and the ellipse through them.
// Pictures of the CT in a view: cutSection (core/volume/section_image.h) on ProbePose::viewFrame.
#pragma once

#include "core/echo/echo_section.h"
#include "core/echo/probe_pose.h"
#include "core/measure/section.h"
#include "core/volume/volume.h"

#include <span>
#include <vector>

namespace gauge::core {

/// A width drawn on echo: its two ends in the view.
struct EchoLine {
    double probeAngleDeg = 0.0;
    Eigen::Vector2d fromMm{0.0, 0.0}, toMm{0.0, 0.0}; ///< (lateral, depth)
};

/// The chord in which the echo view cuts a CT contour (of the landing zone or the ostium).
/// `components.plane` is the spread of the width over the pose's covariance; `components.edge` that of the contour's
/// longest diameter.
/// @errors SectionNotFound when the view passes beside the contour, or is parallel to its plane.
Result<Estimate> ctWidthInView(const Section& ct, const ProbePose& pose, double probeAngleDeg);

/// The width that the CT's voxels show along the echo's line: from its middle outwards both ways to where the
/// interpolated value falls to `halfHu` (halfway between blood and wall; Section::bloodHu and wallHu give it).
/// @errors SectionNotFound when the middle lies in no blood; SectionOpen when no wall comes within 40 mm.
Result<Estimate> ctWidthAlongLine(const Volume& volume, double halfHu, const ProbePose& pose, const EchoLine& line);

/// What echo would have read on the CT: the ellipse through the CT's chords in these views, as from echo widths. Its
/// difference to the contour's own metrics is the part `plane` of the comparison.
/// @errors those of ctWidthInView and measureEchoSection.
Result<EchoSection> ctAsEchoWouldRead(const Section& ct, const ProbePose& pose, std::span<const double> probeAnglesDeg);

/// How far beyond the CT section's plane, along its normal (towards the tip), echo drew its lines: the mean over their middles,
/// mm. In an appendage that narrows, a width that was read deeper is smaller. `components.plane` is the spread over the pose,
/// `components.observer` the standard error between the lines (0 for one line).
/// @errors TooFewPoints without lines; NonFinite.
Result<Estimate> depthBeyondSection(const Section& ct, const ProbePose& pose, std::span<const EchoLine> lines);

/// The part of CT - echo that cutting CT as the echo did explains, for one metric: contour - as echo would read it. The
/// uncertainty is the spread over the probe's pose and over the CT plane's placement; the edge, common to both, is left
/// out. Goes into splitDifference (core/pressure/difference_split.h) as `plane`.
Estimate planePart(const Estimate& contour, const Estimate& asEchoWouldRead);

} // namespace gauge::core
