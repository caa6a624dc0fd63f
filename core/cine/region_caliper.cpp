#include "core/cine/region_caliper.h"

#include "core/number_text.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace gauge::core {
namespace {

constexpr double kSameScale = 1e-3;

std::string shown(const Eigen::Vector2d& p) {
    return "(" + fixed(p.x(), 1) + ", " + fixed(p.y(), 1) + ")";
}

std::string shown(const PlanarScale& scale) {
    return fixed(scale.mmPerPixel.x(), 4) + " x " + fixed(scale.mmPerPixel.y(), 4) + " mm a pixel";
}

std::string named(std::span<const EchoRegion> regions, std::size_t index) {
    return "region " + std::to_string(index + 1) + " of " + std::to_string(regions.size()) + " (" +
           std::string(words(regions[index].kind)) + ")";
}

bool sameScale(const PlanarScale& a, const PlanarScale& b) {
    const Eigen::Array2d ratio = a.mmPerPixel.array() / b.mmPerPixel.array();
    return (ratio - 1.0).abs().maxCoeff() <= kSameScale;
}

std::string reasonOf(const EchoRegion& region) {
    if (!region.scaleFault.empty()) return region.scaleFault;
    switch (region.kind) {
    case EchoRegionKind::Spectral:
        return "it shows velocities against time; use the velocity and time calipers there";
    case EchoRegionKind::Ecg:
        return "it shows the electrocardiogram, which has no lengths";
    case EchoRegionKind::MMode:
        return "its horizontal axis is time, so a line across it is no length";
    default:
        break;
    }
    return "its axes are " + std::string(words(region.x.unit)) + " and " + std::string(words(region.y.unit)) +
           ", not two lengths in cm";
}

/// False where a plane picture cannot be: lengths marked by hand do not hold there either.
bool isPicture(const EchoRegion& region) {
    return region.kind != EchoRegionKind::Spectral && region.kind != EchoRegionKind::Ecg &&
           region.kind != EchoRegionKind::MMode;
}

/// A scale of the whole picture does not reach from one region into another, which may be drawn at another
/// size.
bool holds(const HandScale& hand, bool sameRegion, const Eigen::Vector2d& from, const Eigen::Vector2d& to) {
    return hand.within ? hand.within->contains(from) && hand.within->contains(to) : sameRegion;
}

constexpr const char* kWhatToDo = " Mark a scale of known length in the picture to calibrate it by hand.";

Result<PlanarScale> scaleOf(std::span<const EchoRegion> regions, std::size_t index) {
    const EchoRegion& region = regions[index];
    if (region.scale) return *region.scale;
    const bool flat = region.kind == EchoRegionKind::Tissue || region.kind == EchoRegionKind::Colour ||
                      region.kind == EchoRegionKind::Other;
    return failure(ErrorCode::ScaleMissing, "Cannot measure a length in " + named(regions, index) + ": " +
                                                reasonOf(region) + "." +
                                                (flat ? kWhatToDo : " Place both ends in a tissue region."));
}

Result<PlanarScale> isotropic(double pixels, double aspect, double knownMm, double endPixels) {
    if (!std::isfinite(pixels) || !std::isfinite(knownMm) || !std::isfinite(aspect) ||
        !std::isfinite(endPixels))
        return failure(ErrorCode::NonFinite,
                       "Cannot calibrate: a mark or the known length is no number. Mark the scale again.");
    if (!(knownMm > 0.0) || !(aspect > 0.0) || endPixels < 0.0)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot calibrate with a known length of " + fixed(knownMm, 2) +
                           " mm: it must be above zero. Give the length that the marked scale stands for.");
    if (pixels < kShortestScalePixels)
        return failure(ErrorCode::InvalidArgument, "Cannot calibrate on two marks that are " +
                                                       fixed(pixels, 1) + " pixels apart: at least " +
                                                       fixed(kShortestScalePixels, 0) +
                                                       " are needed. Mark a longer part of the scale.");
    const double mm = knownMm / pixels;
    PlanarScale scale;
    scale.mmPerPixel = {mm, mm * aspect};
    scale.relativeUncertainty = std::sqrt(2.0) * endPixels / pixels;
    scale.origin = ScaleOrigin::HandCalibration;
    scale.detail = fixed(knownMm, 1) + " mm over " + fixed(pixels, 1) + " pixels";
    return scale;
}

} // namespace

Result<PlanarScale> markedScale(const Eigen::Vector2d& from, const Eigen::Vector2d& to, double knownMm,
                                double pixelAspect, double endPixels) {
    // In widths of a pixel: a line of known length counts its vertical part by the pixel's height.
    const Eigen::Vector2d line = (to - from).cwiseProduct(Eigen::Vector2d(1.0, pixelAspect));
    return isotropic(line.norm(), pixelAspect, knownMm, endPixels * std::max(1.0, pixelAspect));
}

Result<PlanarScale> markedScalePerAxis(const AxisMark& horizontal, const AxisMark& vertical,
                                       double endPixels) {
    const auto x =
        isotropic(std::abs(horizontal.toPixel - horizontal.fromPixel), 1.0, horizontal.knownMm, endPixels);
    if (!x) return x;
    const auto y =
        isotropic(std::abs(vertical.toPixel - vertical.fromPixel), 1.0, vertical.knownMm, endPixels);
    if (!y) return y;
    PlanarScale scale = *x;
    scale.mmPerPixel.y() = y->mmPerPixel.y();
    scale.relativeUncertainty = std::max(x->relativeUncertainty, y->relativeUncertainty);
    scale.detail = "across: " + x->detail + "; down: " + y->detail;
    return scale;
}

Result<PlanarScale> scaleBetween(std::span<const EchoRegion> regions, const std::optional<HandScale>& hand,
                                 const Eigen::Vector2d& from, const Eigen::Vector2d& to) {
    if (!from.allFinite() || !to.allFinite())
        return failure(ErrorCode::NonFinite,
                       "Cannot measure a length: an end of the caliper is no number. Set both ends again.");
    const auto a = regionAt(regions, from), b = regionAt(regions, to);
    const bool noPicture = (a && !isPicture(regions[*a])) || (b && !isPicture(regions[*b]));
    if (hand && !noPicture && holds(*hand, a == b, from, to)) return hand->scale;
    if (!a || !b)
        return failure(
            ErrorCode::ScaleMissing,
            regions.empty()
                ? std::string("Cannot measure a length: the file calibrates no region of this picture.") +
                      kWhatToDo
                : "Cannot measure a length: the end at " + shown(a ? to : from) +
                      " lies outside every calibrated region. Place both ends in one region, or mark a "
                      "scale of known length in the picture.");
    if (*a == *b) return scaleOf(regions, *a);
    const auto &first = regions[*a], &second = regions[*b];
    const bool nested = first.box.contains(to) || second.box.contains(from);
    if (nested && first.scale && second.scale && sameScale(*first.scale, *second.scale))
        return first.box.contains(to) ? first.scale.value() : second.scale.value();
    return failure(ErrorCode::RegionsMixed,
                   "Cannot measure a length from " + named(regions, *a) + " to " + named(regions, *b) +
                       ": each region has a scale of its own. Place both ends in one region.");
}

Result<Estimate> regionDistance(std::span<const EchoRegion> regions, const std::optional<HandScale>& hand,
                                const Eigen::Vector2d& from, const Eigen::Vector2d& to, double endPixels) {
    const auto scale = scaleBetween(regions, hand, from, to);
    if (!scale) return tl::make_unexpected(scale.error());
    return planarDistance(from, to, *scale, endPixels);
}

std::optional<Notice> scaleContradiction(const PlanarScale& hand, const EchoRegion& region) {
    if (!region.scale) return std::nullopt;
    const Eigen::Array2d difference =
        (hand.mmPerPixel.array() / region.scale->mmPerPixel.array() - 1.0).abs();
    const double combined = std::hypot(hand.relativeUncertainty, region.scale->relativeUncertainty);
    if (difference.maxCoeff() <= 2.0 * combined) return std::nullopt;
    return Notice{"scale-marked-differs",
                  "The scale marked by hand says " + shown(hand) +
                      ", the scanner's calibration of the region " + shown(*region.scale) +
                      ", which differs by " + fixed(100.0 * difference.maxCoeff(), 1) +
                      " %. Check the known length; the picture may have been scaled after it was taken.",
                  {}};
}

} // namespace gauge::core
