// The planned seat of a size beside what was seen of the implant.
#pragma once

#include "core/release/release_finding.h"
#include "core/sizing/seat.h"

#include <optional>
#include <vector>

namespace gauge::core {

struct PlannedSeen {
    ReleaseQuantity quantity = ReleaseQuantity::ImplantWidth;
    std::string view;
    Estimate planned;
    double seen = 0.0;
    std::optional<double> seenSd; ///< as stated; counted as 0 where none is
    bool differ = false;          ///< by more than twice the standard uncertainty of the difference
    Notice sentence;              ///< planned-seen, or planned-differs
};

/// Findings of a look from the deployment on that the plan says something of: share beyond the circumflex artery, width (planned: in place
/// at the landing zone), clearances. In the order of the findings; none of looks at the sheath.
std::vector<PlannedSeen> plannedSeen(const Seat& seat, const ReleaseState& look);

} // namespace gauge::core
