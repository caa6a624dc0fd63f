// Measures one cross-section: outline, border, smooth contour, metrics, uncertainty.
#pragma once

#include "core/measure/edge_profile.h"
#include "core/measure/section.h"
#include "core/measure/section_metrics.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <optional>
#include <span>
#include <vector>

namespace gauge::core {

struct SectionOptions {
    /// Spread of the plane's placement; none = the plane component stays 0.
    std::optional<PlacementSpread> placement = PlacementSpread::confirmed();
    bool edgeUncertainty = true;
    double greatestReachMm = 48.0; ///< a blob that leaves this half width is open
};

/// @param frame  the origin lies in the blood to be measured (within 2 mm); the normal points to the tip.
/// @errors SectionNotFound, SectionOpen.
/// Accuracy on phantoms: DEVELOPERS.md, "Accuracy".
Result<Section> measureSection(const Volume& volume, const SectionFrame& frame, const SectionGuide& guide,
                               const SectionOptions& options = {});

/// The border near a line that a hand drew: the line's points moved onto it along profiles across the line, then the smooth
/// curve through them.
/// @param contour  the line, section coordinates, mm, at least 3 points, any sense of rotation.
/// @errors those of validateContour; SectionNotFound when no border that closes is found.
Result<std::vector<Eigen::Vector2d>> refitContour(const Volume& volume, const SectionFrame& frame,
                                                  std::span<const Eigen::Vector2d> contour, const SectionGuide& guide);

} // namespace gauge::core
