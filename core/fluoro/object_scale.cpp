#include "core/fluoro/object_scale.h"

#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace gauge::core {
namespace {

constexpr double kSteepestTiltDeg = 60.0;
/// Markers of a straight, evenly marked catheter scatter by their clicks; beyond this many of their SD one is
/// missing.
constexpr double kUnevenMarkers = 4.0;

Eigen::Vector2d square(const Eigen::Vector2d& p, double aspect) {
    return {p.x(), p.y() * aspect};
}

Result<void> checkOptions(const ObjectScaleOptions& options) {
    if (options.pixelAspect > 0.0 && std::isfinite(options.pixelAspect)) return {};
    return failure(ErrorCode::InvalidArgument,
                   "Cannot make a scale: a pixel's height over its width is given as " +
                       general(options.pixelAspect) + "; it must be above zero.");
}

/// What a length in the picture and in life give, with the checks that all objects share.
Result<FluoroScale> scaleFrom(const PixelLength& length, double mm, double relativeMm, ScaleOrigin origin,
                              const std::string& detail, const ObjectScaleOptions& options) {
    if (auto valid = checkOptions(options); !valid) return tl::make_unexpected(valid.error());
    if (!std::isfinite(length.px) || !std::isfinite(length.standardUncertaintyPx) || !std::isfinite(mm))
        return failure(ErrorCode::NonFinite, "Cannot make a scale: the object's size is no finite number.");
    if (!(length.px > length.standardUncertaintyPx) || !(mm > 0.0))
        return failure(ErrorCode::Degenerate, "Cannot make a scale: the object is " +
                                                  fixed(length.px, 1) + " ± " +
                                                  fixed(length.standardUncertaintyPx, 1) +
                                                  " pixels long in the picture. Mark it again.");
    const bool small = length.px < kLeastScaleObjectPx;
    if (small && !options.acceptRough)
        return failure(ErrorCode::Degenerate,
                       "Cannot make a scale of an object that is " + fixed(length.px, 1) +
                           " pixels wide in the picture: at least " + general(kLeastScaleObjectPx) +
                           " are needed. Choose a wider object or a magnified run, or accept a rough scale.");
    FluoroScale scale;
    const double mmPerPixel = mm / length.px;
    scale.planar.mmPerPixel = {mmPerPixel, mmPerPixel * options.pixelAspect};
    scale.planar.origin = origin;
    scale.planar.detail = detail + ", " + fixed(length.px, 1) + " pixels";
    scale.ownRelative = std::hypot(relativeMm, length.standardUncertaintyPx / length.px);
    if (small) {
        scale.rough = true;
        scale.planar.detail += ", rough";
        scale.notices.push_back({"scale-object-small",
                                 "The scale rests on an object only " + fixed(length.px, 1) +
                                     " pixels wide; lengths measured with it are rough.",
                                 {}});
    }
    auto placed = atDepth(scale, options.offDepthMm, options.sourceToObjectMm);
    return placed;
}

/// Evenly numbered markers on a line: distance from one to the next by least squares.
struct MarkerFit {
    PixelLength step;
    double worstResidualPx = 0.0;
};

MarkerFit fitMarkers(std::span<const Eigen::Vector2d> markers, double aspect, double clickPx) {
    const auto n = static_cast<double>(markers.size());
    const Eigen::Vector2d first = square(markers.front(), aspect), last = square(markers.back(), aspect);
    const Eigen::Vector2d along = (last - first).normalized();
    const double middle = 0.5 * (n - 1.0);
    double meanT = 0.0, products = 0.0, squares = 0.0;
    for (std::size_t i = 0; i < markers.size(); ++i) {
        const double t = (square(markers[i], aspect) - first).dot(along),
                     index = static_cast<double>(i) - middle;
        meanT += t / n;
        products += t * index;
        squares += index * index;
    }
    MarkerFit fit{{products / squares, clickPx / std::sqrt(squares)}, 0.0};
    for (std::size_t i = 0; i < markers.size(); ++i) {
        const double index = static_cast<double>(i) - middle;
        const Eigen::Vector2d expected = first + (meanT + fit.step.px * index) * along;
        fit.worstResidualPx = std::max(fit.worstResidualPx, (square(markers[i], aspect) - expected).norm());
    }
    return fit;
}

/// Mean of the tilt's cosine and its relative standard deviation.
struct Foreshortening {
    double cosine = 1.0;
    double relative = 0.0;
};

Foreshortening foreshorteningOf(const MarkerTilt& tilt) {
    if (tilt.deg) {
        const double angle = *tilt.deg * kRadPerDegree, u = tilt.uncertaintyDeg * kRadPerDegree;
        return {std::cos(angle), std::hypot(std::tan(angle) * u, u * u / std::numbers::sqrt2)};
    }
    const double largest = tilt.largestDeg * kRadPerDegree;
    if (largest < 1e-6) return {};
    const double mean = std::sin(largest) / largest;
    const double meanSquare = 0.5 + std::sin(2.0 * largest) / (4.0 * largest);
    return {mean, std::sqrt(std::max(0.0, meanSquare - mean * mean)) / mean};
}

Result<void> checkMarkers(std::span<const Eigen::Vector2d> markers, double spacingMm,
                          const MarkerTilt& tilt) {
    if (markers.size() < 2)
        return failure(ErrorCode::TooFewPoints,
                       "Cannot make a scale of markers: " + std::to_string(markers.size()) +
                           " marked; at least 2 are needed.");
    if (!std::all_of(markers.begin(), markers.end(), [](const auto& m) { return m.allFinite(); }))
        return failure(ErrorCode::NonFinite,
                       "Cannot make a scale of markers: a position is no finite number.");
    if (!(spacingMm > 0.0 && spacingMm <= 200.0))
        return failure(ErrorCode::InvalidArgument, "Cannot make a scale of markers: a spacing of " +
                                                       general(spacingMm) + " mm lies outside 0 to 200 mm.");
    const double steepest = tilt.deg ? std::abs(*tilt.deg) : tilt.largestDeg;
    if (!(steepest <= kSteepestTiltDeg) || !(tilt.largestDeg >= 0.0) || !(tilt.uncertaintyDeg >= 0.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot make a scale of markers turned " + general(steepest) +
                           " degrees out of the detector's plane: up to " + general(kSteepestTiltDeg) +
                           " can be corrected. Turn the arm until they are seen at their longest.");
    return {};
}

} // namespace

PixelLength betweenClicks(const Eigen::Vector2d& from, const Eigen::Vector2d& to, double pixelAspect,
                          double clickPx) {
    const Eigen::Vector2d across = square(to, pixelAspect) - square(from, pixelAspect);
    const double length = across.norm();
    const Eigen::Vector2d unit = length > 0.0 ? Eigen::Vector2d(across / length) : Eigen::Vector2d::UnitX();
    const double perClick = clickPx * std::hypot(unit.x(), unit.y() * pixelAspect);
    return {length, std::numbers::sqrt2 * perClick};
}

Result<FluoroScale> objectScale(const PixelLength& width, const KnownDiameter& diameter,
                                const ObjectScaleOptions& options) {
    auto scale = scaleFrom(width, diameter.mm, diameter.relativeUncertainty, ScaleOrigin::Catheter,
                           diameter.words, options);
    if (scale) scale->notices.insert(scale->notices.end(), diameter.notices.begin(), diameter.notices.end());
    return scale;
}

Result<FluoroScale> markerScale(std::span<const Eigen::Vector2d> markers, double spacingMm,
                                const MarkerTilt& tilt, const ObjectScaleOptions& options,
                                double spacingRelative, double clickPx) {
    if (auto valid = checkMarkers(markers, spacingMm, tilt); !valid)
        return tl::make_unexpected(valid.error());
    if (auto valid = checkOptions(options); !valid) return tl::make_unexpected(valid.error());
    const MarkerFit fit = fitMarkers(markers, options.pixelAspect, clickPx);
    if (fit.worstResidualPx > kUnevenMarkers * clickPx * std::max(1.0, options.pixelAspect))
        return failure(
            ErrorCode::Degenerate,
            "Cannot make a scale of " + std::to_string(markers.size()) + " markers: one lies " +
                fixed(fit.worstResidualPx, 1) +
                " pixels off an evenly marked straight line. Mark a straight part, and every marker in it.");
    const Foreshortening seen = foreshorteningOf(tilt);
    const double steps = static_cast<double>(markers.size() - 1);
    const PixelLength whole{fit.step.px * steps, fit.step.standardUncertaintyPx * steps};
    std::string detail = std::to_string(markers.size()) + " markers " + general(spacingMm) + " mm apart";
    if (tilt.deg)
        detail += ", " + general(*tilt.deg) + " degrees out of the detector's plane";
    else
        detail += ", up to " + general(tilt.largestDeg) + " degrees out of the detector's plane";
    return scaleFrom(whole, spacingMm * steps * seen.cosine, std::hypot(spacingRelative, seen.relative),
                     ScaleOrigin::MarkerSpacing, detail, options);
}

} // namespace gauge::core
