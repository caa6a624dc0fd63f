// Sorts the slices of a series into phases of the heart cycle.
#pragma once

#include "core/result.h"
#include "dicomio/ct/slice_facts.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

struct PhaseGroup {
    std::optional<double> percent;
    std::optional<double> triggerMs;
    std::string label;
    std::vector<SliceFacts> slices;
};

struct PhaseSplit {
    std::vector<PhaseGroup> phases; ///< in the order of percent, trigger time or temporal position
    std::vector<core::Notice> notices;
};

/// A series is split only when places repeat in it, and then by the first of these that makes every place
/// unique within its phase: NominalPercentageOfCardiacPhase, trigger time (by its rank at each place, when it
/// varies with the heart rate), temporal position, series description. A series that none of them splits
/// stays whole, and the geometry proof will name its repeated slices. Precondition: at least one slice, none
/// a localizer.
PhaseSplit splitPhases(std::vector<SliceFacts> slices);

/// The one percentage that a description tells ("… 45 %"), if there is exactly one, between 0 and 100.
std::optional<double> percentInText(const std::string& description);

} // namespace gauge::dicomio
