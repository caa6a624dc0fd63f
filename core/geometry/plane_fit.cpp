#include "core/geometry/plane_fit.h"

#include "core/number_text.h"

#include <Eigen/SVD>
#include <algorithm>
#include <cmath>
#include <string>

namespace gauge::core {
namespace {

/// Extents below this share of the longest are rounding.
constexpr double kRoundingShare = 1e-9;
/// Across the plane against along its short direction.
constexpr double kMostThickness = 0.5;

std::string planeAttempt(std::string_view of) {
    return "Cannot lay a plane through " + std::string(of) + ": ";
}

Result<void> checkPlanePoints(std::span<const PatientPoint> points, std::string_view of) {
    if (points.size() < 3)
        return failure(ErrorCode::TooFewPoints, planeAttempt(of) + "points marked: " + std::to_string(points.size()) +
                                                    "; at least 3 are needed. Mark more.");
    for (std::size_t i = 0; i < points.size(); ++i)
        if (!points[i].mm.allFinite())
            return failure(ErrorCode::NonFinite, planeAttempt(of) + "point " + std::to_string(i + 1) + " of " +
                                                     std::to_string(points.size()) + " is not a finite number.");
    return {};
}

Result<void> checkPlaneSpread(const Eigen::Vector3d& spread, std::string_view of, double leastMm) {
    if (!(spread[0] > 0.0))
        return failure(ErrorCode::Degenerate,
                       planeAttempt(of) + "all points lie in one place. Mark points that are spread around it.");
    if (spread[1] <= kRoundingShare * spread[0] || spread[1] < leastMm)
        return failure(ErrorCode::Degenerate, planeAttempt(of) + "its points lie almost on one line (spread " +
                                                  fixed(spread[1], 1) + " mm to either side of it), so the tilt about that line is "
                                                  "not known. Mark points beside that line.");
    if (spread[2] > kMostThickness * spread[1])
        return failure(ErrorCode::Degenerate, planeAttempt(of) + "its points do not lie near a plane (spread " + fixed(spread[2], 1) +
                                                  " mm across the best plane and " + fixed(spread[1], 1) +
                                                  " mm along its short side). Look for a point that was marked elsewhere.");
    return {};
}

} // namespace

Result<PlaneFit> fitPlane(std::span<const PatientPoint> points, std::string_view of, const PlaneFitOptions& options) {
    if (auto usable = checkPlanePoints(points, of); !usable) return tl::unexpected(usable.error());
    Eigen::Matrix3Xd centred(3, static_cast<Eigen::Index>(points.size()));
    for (std::size_t i = 0; i < points.size(); ++i)
        centred.col(static_cast<Eigen::Index>(i)) = points[i].mm;
    const Eigen::Vector3d centroid = centred.rowwise().mean();
    centred.colwise() -= centroid;

    const Eigen::JacobiSVD<Eigen::Matrix3Xd> svd(centred, Eigen::ComputeFullU);
    Eigen::Vector3d spread = Eigen::Vector3d::Zero();
    spread.head(svd.singularValues().size()) = svd.singularValues() / std::sqrt(static_cast<double>(points.size()));
    if (auto wide = checkPlaneSpread(spread, of, options.leastSpreadMm); !wide) return tl::unexpected(wide.error());

    PlaneFit fit;
    fit.plane = {{centroid}, {svd.matrixU().col(2).normalized()}};
    fit.longSpreadMm = spread[0];
    fit.shortSpreadMm = spread[1];
    double squares = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double distance = std::abs(signedDistanceMm(fit.plane, points[i]));
        squares += distance * distance;
        if (distance <= fit.largestMm && i > 0) continue;
        fit.largestMm = distance;
        fit.farthest = i;
    }
    fit.rmsMm = std::sqrt(squares / static_cast<double>(points.size()));
    return fit;
}

} // namespace gauge::core
