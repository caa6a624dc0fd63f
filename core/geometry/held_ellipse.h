// An ellipse that a hand changes by its handles, in a plane. Ellipses as such: ellipse.h; through points: ellipse_fit.h.
//
//              o Across
//              |
//              o------------o Along   - - o Turn
//            Center
#pragma once

#include "core/geometry/ellipse.h"
#include "core/result.h"

#include <Eigen/Core>
#include <array>
#include <span>
#include <vector>

namespace gauge::core {

/// Section coordinates, mm and radians. Neither half-axis need be the longer one, so that one may be dragged past the other.
struct HeldEllipse {
    Eigen::Vector2d center = Eigen::Vector2d::Zero();
    double alongMm = 0.0, acrossMm = 0.0; ///< half-axes, at least kLeastHalfAxisMm
    double directionRad = 0.0;            ///< of the half-axis `along`, from the first axis to the second

    bool operator==(const HeldEllipse&) const = default;
};

enum class EllipseHandle { Center, Along, Across, Turn };
inline constexpr std::array kEllipseHandles{EllipseHandle::Center, EllipseHandle::Along, EllipseHandle::Across, EllipseHandle::Turn};

inline constexpr double kLeastHalfAxisMm = 0.5;
/// From the end of `along` to the handle that turns.
inline constexpr double kTurnHandleMm = 4.0;

Eigen::Vector2d placeOf(const HeldEllipse& ellipse, EllipseHandle handle);

/// The ellipse when its handle is moved to `to`: the centre carries all, the ends change their own half-axis only (what of the
/// way lies across it does nothing), the last turns about the centre. Nothing turns while `to` is the centre.
HeldEllipse dragged(HeldEllipse ellipse, EllipseHandle handle, const Eigen::Vector2d& to);

/// `count` points at equal steps of the eccentric anomaly, the first at the end of `along`. The smooth line through 24 of them
/// has the ellipse's area and perimeter within 0.01 % for half-axes of up to 2 : 1.
std::vector<Eigen::Vector2d> pointsOn(const HeldEllipse& ellipse, std::size_t count);

/// The ellipse through a contour by least squares of the distances, and how far its points lie from it.
/// @errors those of fitEllipse().
struct EllipseOfContour {
    HeldEllipse ellipse;
    double rmsDistanceMm = 0.0;
};
Result<EllipseOfContour> ellipseOf(std::span<const Eigen::Vector2d> contour);

} // namespace gauge::core
