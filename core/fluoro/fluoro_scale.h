// How long a pixel of a fluoroscopy is in the patient: from the geometry of the arm, from a catheter, from
// markers. A scale holds at its own depth, on the line through the beam's centre; without a scale there are
// no millimetres. Neighbours: catheter_profile.h (a catheter's width off the picture),
// core/cine/planar_scale.h (the scale and caliper).
#pragma once

#include "core/cine/planar_scale.h"
#include "core/result.h"

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

/// A scale with the shares of its uncertainty. `planar.relativeUncertainty` is both in quadrature.
struct FluoroScale {
    PlanarScale planar;
    double ownRelative = 0.0;   ///< of the scale at its own depth, relative standard uncertainty
    double depthRelative = 0.0; ///< because the measured object lies at another depth
    bool rough = false;         ///< from an object too small in the picture to be a good scale
    std::vector<Notice> notices;
};

/// Assumptions, none with a source: tube and detector distances as the device tells them, and where the
/// appendage lies against the isocentre when nobody tells (it is steered to the middle of the picture, not to
/// a depth).
inline constexpr double kDistanceRelativeUncertainty = 0.01;
inline constexpr double kUnknownDepthMm = 30.0;           ///< standard deviation
inline constexpr double kUnknownSourceToObjectMm = 750.0; ///< used for depth only, when SOD is not known
/// Of a pixel spacing that the device calibrated on an object of known size: published errors of catheters as
/// a scale reach from -8.9 to +4 % ([Herrman1994]); as a rectangular distribution 3.7 %.
inline constexpr double kCatheterRelativeUncertainty = 0.037;
/// Of a pixel spacing in the patient whose way of calibration is not told; assumption.
inline constexpr double kUntoldRelativeUncertainty = 0.10;

/// The same scale for an object off its depth: `off` / SOD joins the relative uncertainty in quadrature, in
/// place of what stood there. @param offDepthMm  distance along the beam, >= 0. @param sourceToObjectMm  SOD,
/// > 0.
/// @errors InvalidArgument, NonFinite.
Result<FluoroScale> atDepth(const FluoroScale& scale, double offDepthMm, double sourceToObjectMm);

/// Spacing at the detector reduced to the isocentre: ImagerPixelSpacing x SOD / SID.
/// @param imagerSpacingMm  along a row, along a column. @param offDepthMm  of the object against the
/// isocentre, standard uncertainty; kUnknownDepthMm when not told.
/// @errors SpacingInvalid; GeometryContradictory unless 0 < SOD < SID.
Result<FluoroScale> isocentreScale(const Eigen::Vector2d& imagerSpacingMm, double sourceToIsocentreMm,
                                   double sourceToDetectorMm, double offDepthMm = kUnknownDepthMm);

} // namespace gauge::core
