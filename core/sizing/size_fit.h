// How one size of a chart fits an appendage whose width at any pressure is known as a distribution. Numbers
// only; the sentences about them: size_warnings.h. The three percent conventions: percent.h.
#pragma once

#include "core/pressure/posterior.h"
#include "core/sizing/appendage_facts.h"
#include "core/sizing/bend.h"

#include <string>
#include <vector>

namespace gauge::core {

/// Mean left atrial pressures that the implant will live with, mmHg.
struct LivingRange {
    double lowestMmHg = 5.0;
    double highestMmHg = 20.0;
};

/// The appendage's width where it is looked at: read off the model once, since quantiles are what costs time.
struct WidthsAt {
    DiameterAt decision, lowest, highest;
};
WidthsAt widthsAt(const Posterior& posterior, const LivingRange& living);

/// The depth of the appendage where it is known, and how.
struct DepthKnown {
    std::optional<double> fromOstiumMm;
    std::optional<double> fromLandingZoneMm;
    bool lowerBound = false;
    std::string basis; ///< in words, for sentences
};

/// One clearance of one size.
struct ClearanceCheck {
    Structure structure = Structure::CircumflexArtery;
    double clearanceMm = 0.0; ///< below 0: the implant's face would reach beyond it
    double leastMm = 0.0;
    bool ok() const { return clearanceMm >= leastMm; }
};

/// One size against one appendage. Chances lie in [0, 1].
struct SizeFit {
    std::string name;
    double nominalMm = 0.0;
    double compressionPercent = 0.0; ///< at the median diameter and the decision pressure
    double oversizingPercent = 0.0;  ///< the same pair, the other convention
    /// P(the size's band holds D) at the decision pressure.
    double fitChance = 0.0;
    /// P(compression within its band at every pressure of the living range): D rises with pressure, so at
    /// both ends.
    double lastingFit = 0.0;
    double undersizeChance = 0.0;       ///< P(compression below its band) at the highest living pressure
    double overcompressionChance = 0.0; ///< P(compression above its band) at the lowest
    std::optional<bool> depthOk;        ///< absent: depth unknown, or a lower bound
    std::optional<double> depthMm;      ///< where the chart measures it
    double leastDepthMm = 0.0;
    std::optional<bool> discCovers; ///< lobe-and-disc with a known ostium only
    std::optional<double>
        discMarginMm; ///< disc diameter less ostium's longest diameter less the overlap asked for
    std::vector<ClearanceCheck> clearances;
    std::optional<FoldedReach> folded; ///< sharply bent appendages only
    std::vector<Notice> warnings;      ///< filled by size_warnings.h
};

/// Diameters at which the compression of a size is inside its band.
Band livingDiametersMm(const ChartSize& size);

/// The size's fit chance alone, which is what chooses among sizes.
double fitChance(const ChartSize& size, const Posterior& posterior);

/// @param posterior  of the quantity that the chart asks for; its decision pressure is the one at which the
/// fit is judged.
/// @param ostiumLongestMm  longest diameter of the ostium, if known.
SizeFit fitOf(const ChartSize& size, const DeviceChart& chart, const Posterior& posterior,
              const WidthsAt& widths, const AppendageFacts& facts, const DepthKnown& depth,
              std::optional<double> ostiumLongestMm);

/// The size with the greatest fit chance; among equals the one with the greatest lasting fit; none where
/// every chance is 0.
std::optional<std::size_t> greatestFit(const std::vector<SizeFit>& fits);

/// The size whose band holds a bare reading, as somebody would choose who has that reading alone: among
/// several the one whose band's middle is nearest; none when no band holds it.
std::optional<std::size_t> sizeForReading(const DeviceChart& chart, double readingMm);

} // namespace gauge::core
