// Lengths on an ultrasound picture: which scale holds between two places, and why none does; and the scale
// that a person marks where the file tells none.
#pragma once

#include "core/cine/echo_region.h"
#include "core/cine/planar_scale.h"
#include "core/measure/estimate.h"
#include "core/result.h"

#include <optional>
#include <span>

namespace gauge::core {

/// A scale that the person marked in the picture.
struct HandScale {
    PlanarScale scale; ///< origin HandCalibration
    /// Where it holds: the region in which it was marked; nullopt = the whole picture.
    std::optional<PixelBox> within;
    bool operator==(const HandScale& other) const {
        return scale.mmPerPixel == other.scale.mmPerPixel && within == other.within &&
               scale.relativeUncertainty == other.scale.relativeUncertainty;
    }
};

/// Marks nearer than this give no scale: their own uncertainty would be above 7 % of it.
inline constexpr double kShortestScalePixels = 20.0;

/// A scale from two marks `knownMm` apart, the same along both axes.
/// @param pixelAspect  height of a pixel divided by its width (PixelAspectRatio of the file; 1 when not
/// told). Uncertainty: sqrt(2) endPixels along the line, relative to its length.
/// @errors NonFinite; InvalidArgument for a length that is not above 0, or marks nearer than
/// kShortestScalePixels.
Result<PlanarScale> markedScale(const Eigen::Vector2d& from, const Eigen::Vector2d& to, double knownMm,
                                double pixelAspect = 1.0, double endPixels = kHandSetPixels);

/// One mark of a scale along an axis of the picture.
struct AxisMark {
    double fromPixel = 0.0;
    double toPixel = 0.0;
    double knownMm = 0.0;
};

/// A scale from a horizontal and a vertical scale of the picture. Uncertainty: the larger of the two.
/// @errors as markedScale.
Result<PlanarScale> markedScalePerAxis(const AxisMark& horizontal, const AxisMark& vertical,
                                       double endPixels = kHandSetPixels);

/// The scale that holds at both places. A hand-marked scale comes first where it holds: within its box, or,
/// for the whole picture, between places of one region (or of none); never in spectral, ECG or M-mode
/// regions. Else both places must lie in one region (regionAt) whose both axes are believable lengths. Two
/// regions count as one when one of them contains both places and their scales agree within 0.1 %, as a
/// colour box does within its tissue picture.
/// @errors NonFinite; RegionsMixed when the places lie in different regions; ScaleMissing with the reason
/// otherwise.
Result<PlanarScale> scaleBetween(std::span<const EchoRegion> regions, const std::optional<HandScale>& hand,
                                 const Eigen::Vector2d& from, const Eigen::Vector2d& to);

/// Length between two places. @errors those of scaleBetween().
Result<Estimate> regionDistance(std::span<const EchoRegion> regions, const std::optional<HandScale>& hand,
                                const Eigen::Vector2d& from, const Eigen::Vector2d& to,
                                double endPixels = kHandSetPixels);

/// What to say when a hand-marked scale and the scanner's differ by more than twice their combined
/// uncertainty
/// (`scale-marked-differs`); nullopt when they agree or the region has none.
std::optional<Notice> scaleContradiction(const PlanarScale& hand, const EchoRegion& region);

} // namespace gauge::core
