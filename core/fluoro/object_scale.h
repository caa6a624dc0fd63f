// A scale from an object of known size seen in the picture: a catheter's width (measured along its edges or
// by two clicks), or markers at a known spacing. The scale holds at the object's own depth. One scale is used
// at a time, and it is named; scales are never averaged.
#pragma once

#include "core/fluoro/fluoro_scale.h"
#include "core/fluoro/scale_object.h"

#include <Eigen/Core>
#include <optional>
#include <span>

namespace gauge::core {

/// Objects that look narrower than this make no scale: a pixel at either edge is a tenth of them. Assumption.
inline constexpr double kLeastScaleObjectPx = 10.0;

struct ObjectScaleOptions {
    bool acceptRough = false; ///< let objects below kLeastScaleObjectPx through, marked rough
    /// Height of a pixel over its width (PixelAspectRatio); > 0.
    double pixelAspect = 1.0;
    /// Distance of what will be measured from the object's depth, mm; kUnknownDepthMm when not told.
    double offDepthMm = kUnknownDepthMm;
    double sourceToObjectMm = kUnknownSourceToObjectMm; ///< SOD where known
};

/// A length in the picture, pixels (of a pixel's width, where pixels are not square).
struct PixelLength {
    double px = 0.0;
    double standardUncertaintyPx = 0.0;
};

/// Distance of two clicks. @param clickPx  standard deviation of a click along each axis.
PixelLength betweenClicks(const Eigen::Vector2d& from, const Eigen::Vector2d& to, double pixelAspect = 1.0,
                          double clickPx = kHandSetPixels);

/// Scale from an object's width in the picture and its outer diameter.
/// @errors InvalidArgument for options out of range; NonFinite; Degenerate for an object under
/// kLeastScaleObjectPx unless rough ones are accepted, and for a width of at most its own uncertainty.
Result<FluoroScale> objectScale(const PixelLength& width, const KnownDiameter& diameter,
                                const ObjectScaleOptions& options = {});

/// How much a line of markers is turned out of the detector's plane, degrees.
struct MarkerTilt {
    std::optional<double> deg; ///< known, for example from a second view; 0 to 60
    double uncertaintyDeg = 5.0;
    /// When not known: uniform from 0 to this ([Koning2001]: below 20 degrees the error stays under 7
    /// %).
    double largestDeg = 20.0;
};

/// Scale from two or more markers in a row, `spacingMm` apart. Foreshortened markers look closer together:
/// with the tilt known the scale is corrected by its cosine; without, by the mean cosine, and the rest is
/// uncertainty.
/// @param markers  in their order along the catheter, pixels. @param spacingRelative  standard, of the
/// spacing.
/// @errors TooFewPoints; NonFinite; InvalidArgument (spacing, tilt, options); Degenerate as objectScale(),
/// and for markers so unevenly spaced that one must be missing or the line bent.
Result<FluoroScale> markerScale(std::span<const Eigen::Vector2d> markers, double spacingMm,
                                const MarkerTilt& tilt = {}, const ObjectScaleOptions& options = {},
                                double spacingRelative = 0.01, double clickPx = kHandSetPixels);

} // namespace gauge::core
