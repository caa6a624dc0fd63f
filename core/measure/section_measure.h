// Measures one cross-section: outline, border, smooth contour, metrics, uncertainty.
#pragma once

#include "core/measure/edge_profile.h"
#include "core/measure/section.h"
#include "core/measure/section_metrics.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <optional>

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

} // namespace gauge::core
