// How far readings of an appendage by echo and CT differed in published series: what a difference in this patient is held
// against.
#pragma once

#include "core/pressure/observation.h"
#include "core/pressure/priors.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

/// Difference of a modality from CT, mm.
struct PublishedDifference {
    Modality modality = Modality::Echo2d;
    double biasMm = 0.0; ///< modality less CT
    double sdMm = 0.0;
    int patients = 0;
    Basis basis = Basis::Computed;
    std::string words; ///< source
    double lowerLimitMm() const { return biasMm - 1.96 * sdMm; }
    double upperLimitMm() const { return biasMm + 1.96 * sdMm; }
};

/// 2D and 3D echo against CT. There is none for fluoroscopy: no published figure was found.
const std::vector<PublishedDifference>& publishedDifferences();

/// SD between observers, mm: orders of magnitude only.
struct ObserverSpread {
    Modality modality = Modality::Ct;
    double lowestSdMm = 0.0;
    double highestSdMm = 0.0;
    Basis basis = Basis::Memory;
    std::string words;
};
const std::vector<ObserverSpread>& observerSpreads();

/// A notice "beyond-published-limits", a sentence with the numbers, when `reading` less the CT contour `ct` lies outside the
/// published 95 % limits of its modality. None where there is no figure, or the quantities differ, or either is no
/// contour or ellipse. Pressure is not considered: say in which states they were read.
std::optional<Notice> beyondPublishedLimits(const Observation& reading, const Observation& ct);

} // namespace gauge::core
