#include "core/sizing/size_fit.h"

#include "core/sizing/percent.h"

#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
// Where the instructions state none: free vein flow and 1.5 mm to the pulmonary artery (Miura et al.,
// PMC12926309); 2 mm to the others is an assumption (circumflex artery: less than 2 mm from the landing zone
// in 38.8 % of 116 CTs, ISMICS 2022 abstract).
constexpr double kPulmonaryClearanceMm = 1.5;
constexpr double kOtherClearanceMm = 2.0;

double leastClearance(const DeviceChart& chart, Structure structure) {
    const auto stated = chart.leastClearanceMm.find(structure);
    if (stated != chart.leastClearanceMm.end()) return stated->second;
    return structure == Structure::PulmonaryArtery ? kPulmonaryClearanceMm : kOtherClearanceMm;
}

/// Diameter of the face that the implant turns to the atrium.
double faceDiameter(const ChartSize& size, DeviceKind kind) {
    return kind == DeviceKind::LobeAndDisc ? size.discDiameterMm.value_or(size.nominalMm)
                                           : size.outerDiameterMm.value_or(size.nominalMm);
}

void judgeDepth(const ChartSize& size, const DeviceChart& chart, const DepthKnown& depth, SizeFit& fit) {
    fit.leastDepthMm = size.leastDepthMm;
    if (chart.depthFrom == DepthFrom::Ostium)
        fit.depthMm = depth.fromOstiumMm;
    else if (depth.fromLandingZoneMm)
        fit.depthMm = depth.fromLandingZoneMm;
    else if (depth.fromOstiumMm)
        fit.depthMm = *depth.fromOstiumMm - size.landingOffsetMm;
    if (fit.depthMm && !depth.lowerBound) fit.depthOk = *fit.depthMm >= size.leastDepthMm;
}

void judgeDisc(const ChartSize& size, const DeviceChart& chart, std::optional<double> ostiumMm,
               SizeFit& fit) {
    if (chart.kind != DeviceKind::LobeAndDisc || !size.discDiameterMm || !ostiumMm) return;
    fit.discMarginMm = *size.discDiameterMm - *ostiumMm - chart.discOverlapMm;
    fit.discCovers = *fit.discMarginMm >= 0.0;
}

void judgeClearances(const ChartSize& size, const DeviceChart& chart, const AppendageFacts& facts,
                     SizeFit& fit) {
    for (const Clearance& c : facts.clearances) {
        const double reach =
            c.from == Clearance::From::OstiumCentre ? faceDiameter(size, chart.kind) / 2.0 : 0.0;
        fit.clearances.push_back({c.structure, c.distanceMm - reach, leastClearance(chart, c.structure)});
    }
}

void judgeBend(const ChartSize& size, const DeviceChart& chart, const AppendageFacts& facts, SizeFit& fit) {
    if (!facts.bend || !isSharp(*facts.bend)) return;
    const double offset = chart.depthFrom == DepthFrom::LandingZone ? size.landingOffsetMm : 0.0;
    fit.folded = foldedReach(*facts.bend, size, size.leastDepthMm + offset);
}

} // namespace

Band livingDiametersMm(const ChartSize& size) {
    return {diameterAtCompression(size.nominalMm, size.compressionPercent.hi),
            diameterAtCompression(size.nominalMm, size.compressionPercent.lo)};
}

WidthsAt widthsAt(const Posterior& posterior, const LivingRange& living) {
    return {posterior.at(posterior.decisionPressureMmHg()), posterior.at(living.lowestMmHg),
            posterior.at(living.highestMmHg)};
}

double fitChance(const ChartSize& size, const Posterior& posterior) {
    return posterior.probabilityWithin(posterior.decisionPressureMmHg(), size.acceptsMm.lo,
                                       size.acceptsMm.hi);
}

SizeFit fitOf(const ChartSize& size, const DeviceChart& chart, const Posterior& posterior,
              const WidthsAt& widths, const AppendageFacts& facts, const DepthKnown& depth,
              std::optional<double> ostiumLongestMm) {
    SizeFit fit;
    fit.name = size.name;
    fit.nominalMm = size.nominalMm;
    const double medianMm = widths.decision.medianMm;
    const double lowest = widths.lowest.pressureMmHg, highest = widths.highest.pressureMmHg;
    fit.compressionPercent = compressionPercent(size.nominalMm, medianMm);
    fit.oversizingPercent = oversizingPercent(size.nominalMm, medianMm);
    fit.fitChance = fitChance(size, posterior);
    const Band inside = livingDiametersMm(size);
    fit.lastingFit =
        posterior.probabilityBothWithin(lowest, inside.lo, inside.hi, highest, inside.lo, inside.hi);
    fit.undersizeChance = posterior.probabilityWithin(highest, inside.hi, kInfinity);
    fit.overcompressionChance = posterior.probabilityWithin(lowest, -kInfinity, inside.lo);
    judgeDepth(size, chart, depth, fit);
    judgeDisc(size, chart, ostiumLongestMm, fit);
    judgeClearances(size, chart, facts, fit);
    judgeBend(size, chart, facts, fit);
    return fit;
}

std::optional<std::size_t> greatestFit(const std::vector<SizeFit>& fits) {
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < fits.size(); ++i) {
        if (fits[i].fitChance <= 0.0) continue;
        const bool better =
            !best || fits[i].fitChance > fits[*best].fitChance ||
            (fits[i].fitChance == fits[*best].fitChance && fits[i].lastingFit > fits[*best].lastingFit);
        if (better) best = i;
    }
    return best;
}

std::optional<std::size_t> sizeForReading(const DeviceChart& chart, double readingMm) {
    std::optional<std::size_t> best;
    double bestDistance = kInfinity;
    for (std::size_t i = 0; i < chart.sizes.size(); ++i) {
        const Band& band = chart.sizes[i].acceptsMm;
        const double distance = std::abs(readingMm - (band.lo + band.hi) / 2.0);
        if (!band.holds(readingMm) || distance >= bestDistance) continue;
        best = i;
        bestDistance = distance;
    }
    return best;
}

} // namespace gauge::core
