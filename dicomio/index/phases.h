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
    std::optional<double> beatMs; ///< mean R-R interval
    std::string stack;            ///< StackID, where the series has several; otherwise empty
    std::string label;            ///< "45 %", "320 ms", "stack 2, 45 %", "ungated"
    std::vector<SliceFacts> slices;
};

struct PhaseSplit {
    std::vector<PhaseGroup>
        phases; ///< by stack, then in the order of percent, trigger time or temporal position
    std::vector<core::Notice> notices;
};

/// Stacks of Enhanced objects (StackID) are different volumes and are taken apart first. Then a series is
/// split only when places repeat in it, by the first of these that makes every place unique within its phase:
/// NominalPercentageOfCardiacPhase, trigger time (by its rank at each place, when it varies with the heart
/// rate), temporal position, dimension indices that count moments, series description. A series that none of
/// them splits stays whole, and the geometry proof will name its repeated slices. Precondition: at least one
/// slice, none a localizer.
PhaseSplit splitPhases(std::vector<SliceFacts> slices);

/// The one percentage that a description tells ("… 45 %"), if there is exactly one, between 0 and 100.
std::optional<double> percentInText(const std::string& description);

} // namespace gauge::dicomio
