// What changed between two looks at an implant, in sentences.
#pragma once

#include "core/release/release_finding.h"

#include <vector>

namespace gauge::core {

struct ReleaseChange {
    ReleaseQuantity quantity = ReleaseQuantity::JetWidth;
    std::string view, side;
    double before = 0.0, after = 0.0;
    bool worse = false;   ///< in the direction that matters; never for widths alone
    bool certain = true;  ///< beyond twice the uncertainty of the difference (assumed 0 where none is stated)
    std::string sentence; ///< with numbers, views and stages
};

/// Every finding seen at both moments in the same view and side; of several, the last one of each. Changes of less than
/// 0.05 (in the unit) are left out.
/// @errors those of `validate`.
Result<std::vector<ReleaseChange>> compareReleases(const ReleaseState& before, const ReleaseState& after);

/// The changes for the worse as notices: `effusion-grows`, `regurgitation-grows`, `gradient-rises`, `jet-grows`,
/// `implant-moves` (share beyond the circumflex artery falls, angle or gap grows), `clearance-falls`, `vein-flow-impeded`,
/// `device-thrombus`.
std::vector<Notice> changeNotices(const std::vector<ReleaseChange>& changes);

} // namespace gauge::core
