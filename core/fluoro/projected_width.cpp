#include "core/fluoro/projected_width.h"

#include "core/geometry/planar_contour.h"
#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace gauge::core {
namespace {


double extent(const std::vector<Eigen::Vector2d>& points, const Eigen::Vector2d& direction) {
    double low = points.front().dot(direction), high = low;
    for (const auto& p : points) {
        low = std::min(low, p.dot(direction));
        high = std::max(high, p.dot(direction));
    }
    return high - low;
}

/// Longest distance; an edge-on contour is a line, whose hull has fewer than 3 points.
double longest(const std::vector<Eigen::Vector2d>& points) {
    const auto hull = convexHull(points);
    if (hull.size() >= 3) return maximumCaliper(hull).lengthMm;
    double length = 0.0;
    for (const auto& p : points)
        length = std::max(length, (p - points.front()).norm());
    for (const auto& p : points)
        for (const auto& q : hull)
            length = std::max(length, (p - q).norm());
    return length;
}

/// @param axis  projected normal in the picture, not zero unless the view is en face.
ProjectedWidth widthOf(const std::vector<Eigen::Vector2d>& points, const Eigen::Vector2d& axis,
                       double cosToSight) {
    ProjectedWidth out;
    out.openingDeg = std::asin(std::min(1.0, std::abs(cosToSight))) / kRadPerDegree;
    out.axisVisible = std::sqrt(std::max(0.0, 1.0 - cosToSight * cosToSight));
    out.longestMm = longest(points);
    if (out.openingDeg <= kLargestOpeningDeg)
        out.widthMm = extent(points, Eigen::Vector2d(-axis.y(), axis.x()).normalized());
    return out;
}

Eigen::Vector3d centreOf(std::span<const PatientPoint> contour) {
    Eigen::Vector3d sum = Eigen::Vector3d::Zero();
    for (const auto& p : contour)
        sum += p.mm;
    return sum / static_cast<double>(contour.size());
}

} // namespace

double visibleFraction(const PatientVector& direction, const CArmAngles& angles) {
    return direction.normalized().cross(beamDirection(angles)).norm();
}

Result<PatientVector> contourNormal(std::span<const PatientPoint> contour) {
    const std::string attempt = "Cannot project the contour: ";
    if (contour.size() < 3)
        return failure(ErrorCode::TooFewPoints, attempt + "it has " + std::to_string(contour.size()) +
                                                    " points; at least 3 are needed.");
    if (!std::all_of(contour.begin(), contour.end(), [](const auto& p) { return p.mm.allFinite(); }))
        return failure(ErrorCode::NonFinite, attempt + "a coordinate is no finite number.");
    const Eigen::Vector3d origin = contour.front().mm;
    Eigen::Vector3d area = Eigen::Vector3d::Zero();
    double around = 0.0;
    for (std::size_t i = 0; i < contour.size(); ++i) {
        const Eigen::Vector3d a = contour[i].mm - origin, b = contour[(i + 1) % contour.size()].mm - origin;
        area += 0.5 * a.cross(b);
        around += (b - a).norm();
    }
    if (!(area.norm() > 1e-12 * around * around))
        return failure(ErrorCode::Degenerate, attempt + "it encloses no area. Measure the section again.");
    return PatientVector{area.normalized()};
}

Result<ProjectedWidth> projectedWidth(std::span<const PatientPoint> contour, const CArmAngles& angles) {
    if (auto valid = validate(angles); !valid) return tl::make_unexpected(valid.error());
    const auto normal = contourNormal(contour);
    if (!normal) return tl::make_unexpected(normal.error());
    const PictureAxes axes = pictureAxes(angles);
    const auto inPicture = [&](const Eigen::Vector3d& v) {
        return Eigen::Vector2d(v.dot(axes.right.mm), v.dot(axes.up.mm));
    };
    const Eigen::Vector3d centre = centreOf(contour);
    std::vector<Eigen::Vector2d> points;
    for (const auto& p : contour)
        points.push_back(inPicture(p.mm - centre));
    return widthOf(points, inPicture(normal->mm), normal->dot(axes.towardDetector));
}

Result<ProjectedWidth> projectedWidth(std::span<const PatientPoint> contour, const CArm& arm) {
    const auto camera = cameraOf(arm);
    if (!camera) return tl::make_unexpected(camera.error());
    const auto normal = contourNormal(contour);
    if (!normal) return tl::make_unexpected(normal.error());
    const Eigen::Vector2d mmPerPixel = arm.imagerSpacingMm / arm.magnification();
    const auto picture = [&](const PatientPoint& p) -> std::optional<Eigen::Vector2d> {
        const auto pixel = camera->project(p);
        if (!pixel) return std::nullopt;
        return Eigen::Vector2d(pixel->x() * mmPerPixel.x(), -pixel->y() * mmPerPixel.y());
    };
    std::vector<Eigen::Vector2d> points;
    for (const auto& p : contour) {
        const auto seen = picture(p);
        if (!seen)
            return failure(
                ErrorCode::InvalidArgument,
                "Cannot project the contour: a part of it lies level with the source of the C-arm or "
                "behind it. Check where the isocentre was put.");
        points.push_back(*seen);
    }
    const PatientPoint centre{centreOf(contour)};
    constexpr double kAlongMm = 1e-3; // short against the perspective, long against rounding
    const auto before = picture(centre - kAlongMm * *normal), after = picture(centre + kAlongMm * *normal);
    const Eigen::Vector2d axis =
        before && after ? Eigen::Vector2d(*after - *before) : Eigen::Vector2d::UnitY();
    return widthOf(points, axis, normal->dot((centre - camera->source).normalized()));
}

Result<Estimate> predictedWidth(std::span<const PatientPoint> contour, const CArmAngles& angles,
                                const PredictionOptions& options) {
    if (!(options.contourUncertaintyMm >= 0.0 && std::isfinite(options.contourUncertaintyMm) &&
          options.angleUncertaintyDeg >= 0.0 && options.angleUncertaintyDeg <= 30.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot predict the width: uncertainties of " + general(options.contourUncertaintyMm) +
                           " mm and " + general(options.angleUncertaintyDeg) +
                           " degrees; neither may be negative, nor the second above 30.");
    const auto nominal = projectedWidth(contour, angles);
    if (!nominal) return tl::make_unexpected(nominal.error());
    if (!nominal->widthMm)
        return failure(
            ErrorCode::Degenerate,
            "Cannot predict a width at " + words(angles) + ": the section is seen " +
                fixed(nominal->openingDeg, 0) +
                " degrees open, nearly from the front, where its axis has no length. Choose a view closer to "
                "edge-on.");
    // Probabilists' Gauss-Hermite rule of five points: exact for polynomials up to degree 9.
    constexpr std::array<double, 5> kPlaces = {-2.856970013872806, -1.355626179974266, 0.0, 1.355626179974266,
                                               2.856970013872806};
    constexpr std::array<double, 5> kWeights = {0.011257411327721, 0.222075922005613, 0.533333333333333,
                                                0.222075922005613, 0.011257411327721};
    double weight = 0.0, mean = 0.0, meanSquare = 0.0;
    for (std::size_t i = 0; i < kPlaces.size(); ++i) {
        for (std::size_t j = 0; j < kPlaces.size(); ++j) {
            // Turning past a pole goes on along the great circle.
            const double up = angles.secondaryDeg + options.angleUncertaintyDeg * kPlaces[j];
            const double a = (angles.primaryDeg + options.angleUncertaintyDeg * kPlaces[i]) * kRadPerDegree,
                         b = up * kRadPerDegree;
            const auto turned =
                anglesOf({{std::sin(a) * std::cos(b), -std::cos(a) * std::cos(b), std::sin(b)}});
            const auto seen = projectedWidth(contour, turned);
            if (!seen || !seen->widthMm)
                continue; // views without a width cannot be the one that was measured
            const double w = kWeights[i] * kWeights[j];
            weight += w;
            mean += w * *seen->widthMm;
            meanSquare += w * *seen->widthMm * *seen->widthMm;
        }
    }
    mean /= weight;
    Estimate out;
    out.value = *nominal->widthMm;
    out.components.edge = options.contourUncertaintyMm;
    // About the nominal value: a shift of the mean is uncertainty too.
    out.components.plane =
        std::sqrt(std::max(0.0, meanSquare / weight - 2.0 * mean * out.value + out.value * out.value));
    out.method = "width of the CT contour at " + words(angles) + ", parallel rays";
    return out;
}

} // namespace gauge::core
