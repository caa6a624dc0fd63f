// What the person marks for the crossing of the septum, and what the person sets.
#pragma once

#include "core/access/sheath.h"
#include "core/geometry/points.h"
#include "core/result.h"

#include <optional>
#include <vector>

namespace gauge::core {

/// Points on the CT, LPS, mm; the order within a list does not matter.
struct SeptumMarks {
    std::vector<PatientPoint> annulus;      ///< mitral annulus, at least 3 around it
    std::vector<PatientPoint> coaptation;   ///< where the mitral leaflets meet in systole, at least 1
    std::vector<PatientPoint> fossa;        ///< rim of the fossa ovalis, at least 4 around it
    std::optional<PatientPoint> aorticRoot; ///< middle of the aortic root; tells the side that must not be crossed

    bool operator==(const SeptumMarks&) const = default;
};

/// From where the height of a crossing is counted.
enum class HeightDatum {
    Annulus,    ///< square to the plane of the mitral annulus
    Coaptation, ///< level at which the leaflets meet in systole, parallel to the septum (DICOM PS3.16, 131130)
};

/// What a crossing has to meet. The defaults and their basis:
///   35 to 45 mm over the annulus: range from memory; 40 mm (secondary regurgitation) and above 40 mm (primary) were read
///   [PMC5752829]. 30 degrees: [Fukutomi2021] as read in its abstract. See DEVELOPERS.md, "Septal crossing".
struct CrossingLimits {
    bool repairPlanned = true; ///< the same session repairs the mitral valve
    HeightDatum datum = HeightDatum::Annulus;
    double lowestMm = 35.0, highestMm = 45.0; ///< height band of the repair over `datum`, lowest < highest
    double mostAngleDeg = 30.0;               ///< of the sheath to the proximal axis, > 0 and at most 90
    bool steerableAtHand = true;              ///< a steerable sheath may be used
    Steering steering;

    bool operator==(const CrossingLimits&) const = default;
};
/// @errors InvalidArgument for values outside the ranges above; NonFinite; those of validate(Steering).
Result<void> validate(const CrossingLimits& limits);

} // namespace gauge::core
