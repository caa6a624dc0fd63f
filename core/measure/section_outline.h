// First, rough outline of the blood in a section: which blob contains the axis point, and where its border runs to
// about a quarter of a pixel. edge_profile.h then places the border exactly.
#pragma once

#include "core/geometry/plane.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <Eigen/Core>
#include <vector>

namespace gauge::core {

struct OutlineOptions {
    double levelHu = 0.0;         ///< border between blood and not blood
    double firstReachMm = 16.0;   ///< half width of the first field looked at; doubled while the blob leaves it
    double greatestReachMm = 48.0; ///< a blob that leaves this field is open
    /// Bridges narrower than twice this are cut: noise may join a neighbour through a thin wall.
    double bridgeRadiusMm = 0.6;
};

struct Outline {
    std::vector<Eigen::Vector2d> contour; ///< counter-clockwise, section coordinates about the frame's origin, mm
    std::vector<float> insideHu;          ///< values at least 1.2 mm inside the border (may be empty)
};

/// Outline of the blob of values above the level that contains the frame's origin (or lies within 2 mm of it).
/// @errors SectionNotFound when there is no blood there; SectionOpen when the blob leaves the greatest field or the
/// volume.
Result<Outline> traceOutline(const Volume& volume, const SectionFrame& frame, const OutlineOptions& options);

} // namespace gauge::core
