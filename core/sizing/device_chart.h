// A device chart: which sizes there are and what each accepts, as the device's current instructions say it.
// It is data that the person loads; the program holds no device. Reading it: chart_reader.h. Judging sizes:
// size_fit.h.
#pragma once

#include "core/pressure/observation.h"
#include "core/result.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

/// Single-lobe plug, or a lobe in the neck with a disc over the ostium.
enum class DeviceKind { Plug, LobeAndDisc };

/// A closed interval lo < hi.
struct Band {
    double lo = 0.0;
    double hi = 0.0;
    bool holds(double value) const { return value >= lo && value <= hi; }
    bool operator==(const Band&) const = default;
};

/// Which number the instructions want from one family of imaging.
struct InstructedQuantity {
    Quantity quantity = Quantity::LandingZonePerimeterDerivedDiameter;
    Derivation derivation = Derivation::Contour;
};

/// "A reading taken as instructed": what the accepted bands of a chart are about.
struct InstructedReading {
    InstructedQuantity by3d; ///< CT, 3D echo
    InstructedQuantity by2d; ///< 2D echo, fluoroscopy
    Phase phase = Phase::EndSystole;
    std::optional<double> leastPressureMmHg; ///< below it the instructions want filling and a second reading
    std::optional<double> decisionPressureMmHg; ///< absent: the instructions are silent, the person says
};

/// From where the least depth of a size is measured.
enum class DepthFrom { Ostium, LandingZone };

/// What the instructions say about folding an implant into a sharply bent lobe.
enum class FoldedPlacement { Allowed, NotAllowed, Silent };

struct ChartSize {
    std::string name;
    std::string text; ///< remark of the instructions; of a demonstration chart: that it is invented
    double nominalMm = 0.0;
    Band acceptsMm;          ///< of a reading taken as instructed
    Band compressionPercent; ///< 100 (nominal - D)/nominal in which the implant may live
    double leastDepthMm = 0.0;
    double landingOffsetMm = 0.0; ///< of the landing plane inside the ostium
    std::optional<double> lobeDiameterMm, outerDiameterMm, discDiameterMm;
    FoldedPlacement folded = FoldedPlacement::Silent;
};

/// Structures that an implant must keep away from.
enum class Structure { CircumflexArtery, Ridge, PulmonaryArtery, MitralAnnulus };

struct DeviceChart {
    std::string name;
    DeviceKind kind = DeviceKind::Plug;
    bool invented = false; ///< a demonstration chart
    std::string version, date, source;
    InstructedReading reading;
    DepthFrom depthFrom = DepthFrom::Ostium;
    /// By how much the disc's diameter must exceed the longest diameter of the ostium.
    double discOverlapMm = 0.0;
    std::map<Structure, double> leastClearanceMm; ///< where the instructions state one
    std::vector<ChartSize> sizes;                 ///< at least one, ascending by nominal size
};

const char* name(DeviceKind kind);
const char* name(Structure structure);  ///< "circumflex-artery" as in files
const char* words(Structure structure); ///< "circumflex artery" as in sentences

} // namespace gauge::core
