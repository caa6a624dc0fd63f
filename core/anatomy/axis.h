// The axis: the line through the middle of the appendage.
#pragma once

#include "core/anatomy/blood_pool.h"
#include "core/geometry/plane.h"
#include "core/geometry/polyline.h"
#include "core/result.h"

#include <array>
#include <optional>
#include <vector>

namespace gauge::core {

/// What the pool looks like across the axis at one place, seen along rays from the axis: quick, to about a tenth of
/// a millimetre; measure/section_measure.h measures properly.
struct AxisSlice {
    static constexpr int kRays = 32;
    SectionFrame frame;
    std::array<double, kRays> radiusMm{};  ///< to the wall, ray i at angle 2 pi i / kRays from frame.u towards v
    std::array<bool, kRays> open{};        ///< ray i met no wall within the reach
    double openShare = 0.0;                ///< share of open rays
    double areaMm2 = 0.0;                  ///< of the star that the rays span

    /// Centroid of the star, rays cut at `mostMm`; relative to the frame's origin.
    Eigen::Vector2d centroidWithin(double mostMm) const;
    double areaDerivedRadiusMm() const;
    double medianRayMm() const;
};

/// Looks along rays in the plane of `frame` from its origin, at most `reachMm` far.
AxisSlice sliceAt(const BloodPool& pool, const SectionFrame& frame, double reachMm);

/// Moves a way through the pool into the middle of its cross-sections and smooths it. Points about every 0.5 mm,
/// from the first node's place to the last one's. Each point of the result lies in blood.
/// @param way  nodes from the tip towards the atrium, at least 2.
/// @errors SectionNotFound when no line inside the pool results.
Result<Polyline> centreLine(const BloodPool& pool, const std::vector<PatientPoint>& way);

/// Blood level halfway to the wall at a place: what counts as blood there.
double halfLevelAt(const BloodPool& pool, const PatientPoint& p);

/// Distance from `from` along the unit `direction` to the wall; nullopt when there is none within `reachMm`; 0 when
/// `from` is not in blood.
std::optional<double> distanceToWallMm(const BloodPool& pool, const PatientPoint& from,
                                       const PatientVector& direction, double reachMm);

/// The line with its first end renewed: in the dome that closes the lumen it does not know the middle, so that part is
/// cut off and the rest prolonged straight on to the wall.
std::vector<PatientPoint> prolongedToWall(const BloodPool& pool, const std::vector<PatientPoint>& line);

} // namespace gauge::core
