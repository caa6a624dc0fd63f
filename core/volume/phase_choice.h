// Which phase of the heart beat is nearest to what a person asks for, by percent of the R-R interval or by
// milliseconds from the R wave. The phases themselves are handed out by phase_set.h.
//
//     R                    R            percent: share of the beat, 0 and 100 are the same moment
//     |--------------------|            delay:   milliseconds after the R wave
//     0 %      45 %      100 %          They agree only through the length of the beat (R-R interval).
#pragma once

#include "core/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>

namespace gauge::core {

/// What is known of a phase before its images are read.
struct PhaseInfo {
    std::optional<double> percent; ///< of the R-R interval, 0 to 100
    std::optional<double> delayMs; ///< from the R wave, >= 0
    std::optional<double> beatMs;  ///< R-R interval of the beats that it was made of, > 0
    std::string label;             ///< for people: "45 %", "320 ms", "ungated"
    std::size_t bytes = 0;         ///< of its voxels in memory
};

struct PhaseChoice {
    std::size_t phase = 0;
    /// What was taken when it is not what was asked for, or how it was found; empty when it is exactly that.
    std::string words;
};

/// The phase nearest to `percent`. The beat is a circle: 98 lies nearer to 0 than to 90. Of equally near ones
/// the larger (a phase may lack slices), then the first. Phases that know no percentage but delay and R-R
/// interval are found by their ratio, and `words` says so.
/// @param percent  0 to 100. @errors InvalidArgument outside; NotFound when no phase tells where it lies.
Result<PhaseChoice> nearestByPercent(std::span<const PhaseInfo> phases, double percent);

/// The phase nearest to a delay after the R wave. Phases without a delay but with percentage and R-R interval
/// are found by their product, and `words` says so.
/// @param delayMs  >= 0. @errors InvalidArgument outside; NotFound when no phase tells where it lies.
Result<PhaseChoice> nearestByDelay(std::span<const PhaseInfo> phases, double delayMs);

} // namespace gauge::core
