#include "core/geometry/held_ellipse.h"

#include "core/geometry/ellipse_fit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

Eigen::Vector2d along(const HeldEllipse& ellipse) {
    return {std::cos(ellipse.directionRad), std::sin(ellipse.directionRad)};
}

Eigen::Vector2d across(const HeldEllipse& ellipse) {
    return {-std::sin(ellipse.directionRad), std::cos(ellipse.directionRad)};
}

} // namespace

Eigen::Vector2d placeOf(const HeldEllipse& ellipse, EllipseHandle handle) {
    switch (handle) {
    case EllipseHandle::Center:
        break;
    case EllipseHandle::Along:
        return ellipse.center + ellipse.alongMm * along(ellipse);
    case EllipseHandle::Across:
        return ellipse.center + ellipse.acrossMm * across(ellipse);
    case EllipseHandle::Turn:
        return ellipse.center + (ellipse.alongMm + kTurnHandleMm) * along(ellipse);
    }
    return ellipse.center;
}

HeldEllipse dragged(HeldEllipse ellipse, EllipseHandle handle, const Eigen::Vector2d& to) {
    const Eigen::Vector2d arm = to - ellipse.center;
    switch (handle) {
    case EllipseHandle::Center:
        ellipse.center = to;
        break;
    case EllipseHandle::Along:
        ellipse.alongMm = std::max(kLeastHalfAxisMm, arm.dot(along(ellipse)));
        break;
    case EllipseHandle::Across:
        ellipse.acrossMm = std::max(kLeastHalfAxisMm, arm.dot(across(ellipse)));
        break;
    case EllipseHandle::Turn:
        if (arm.norm() > 0.0) ellipse.directionRad = std::atan2(arm.y(), arm.x());
        break;
    }
    return ellipse;
}

std::vector<Eigen::Vector2d> pointsOn(const HeldEllipse& ellipse, std::size_t count) {
    std::vector<Eigen::Vector2d> points;
    for (std::size_t i = 0; i < count; ++i) {
        const double t = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
        points.push_back(ellipse.center + ellipse.alongMm * std::cos(t) * along(ellipse) +
                         ellipse.acrossMm * std::sin(t) * across(ellipse));
    }
    return points;
}

Result<EllipseOfContour> ellipseOf(std::span<const Eigen::Vector2d> contour) {
    const auto fit = fitEllipse(contour);
    if (!fit) return tl::make_unexpected(fit.error());
    const Ellipse& e = fit->ellipse;
    return EllipseOfContour{{e.center, std::max(kLeastHalfAxisMm, e.semiMajorMm), std::max(kLeastHalfAxisMm, e.semiMinorMm), e.angleRad},
                            fit->rmsDistanceMm};
}

} // namespace gauge::core
