#include "core/sizing/size_warnings.h"

#include "core/number_text.h"
#include "core/sizing/percent.h"
#include "core/sizing/wording.h"

namespace gauge::core {
namespace {

std::string widthAt(const DiameterAt& d) {
    return mmText(d.medianMm) + " (95 % " + mmRange(d.lower95Mm, d.upper95Mm) + ")";
}

std::string plain(double value) {
    return fixed(value, 6);
}

void addUndersized(const SizeFit& fit, const ChartSize& size, const WidthsAt& widths,
                   std::vector<Notice>& warnings) {
    if (fit.undersizeChance < kWarningChance) return;
    const DiameterAt& d = widths.highest;
    warnings.push_back({"undersized-at-highest-pressure",
                        "Undersized at " + pressureText(d.pressureMmHg) +
                            ", as when the pressure returns: the appendage is then " + widthAt(d) +
                            " wide, size " + size.name + " " + compressionText(size.nominalMm, d.medianMm) +
                            "; below its least compression of " + percentText(size.compressionPercent.lo) +
                            " with a chance of " + chanceText(fit.undersizeChance) + ".",
                        {{"chance", plain(fit.undersizeChance)}, {"pressure_mmHg", plain(d.pressureMmHg)}}});
}

void addOverCompressed(const SizeFit& fit, const ChartSize& size, const WidthsAt& widths,
                       std::vector<Notice>& warnings) {
    if (fit.overcompressionChance < kWarningChance) return;
    const DiameterAt& d = widths.lowest;
    warnings.push_back(
        {"over-compressed",
         "Over-compressed at " + pressureText(d.pressureMmHg) +
             ", as after a lasting fall: the appendage is then " + widthAt(d) + " wide, size " + size.name +
             " " + compressionText(size.nominalMm, d.medianMm) + "; above its most of " +
             percentText(size.compressionPercent.hi) + " with a chance of " + chanceText(fit.overcompressionChance) + ". Oversizing is not harmless.",
         {{"chance", plain(fit.overcompressionChance)}, {"pressure_mmHg", plain(d.pressureMmHg)}}});
}

void addDepth(const SizeFit& fit, const ChartSize& size, const DeviceChart& chart, const DepthKnown& depth,
              std::vector<Notice>& warnings) {
    const std::string where =
        chart.depthFrom == DepthFrom::Ostium ? "from the ostium" : "from the landing plane";
    if (depth.lowerBound && fit.depthMm) {
        warnings.push_back({"depth-lower-bound",
                            "The tip was not filled: the depth " + where + " is at least " +
                                mmText(*fit.depthMm) + "; size " + size.name + " needs " +
                                mmText(size.leastDepthMm) + ". No verdict on depth.",
                            {}});
        return;
    }
    if (fit.depthOk.value_or(true)) return;
    warnings.push_back({"depth-short",
                        "Too shallow: size " + size.name + " needs " + mmText(size.leastDepthMm) + " " +
                            where + "; there are " + mmText(*fit.depthMm) + " (" + depth.basis + "), " +
                            mmText(size.leastDepthMm - *fit.depthMm) + " short.",
                        {{"short_mm", plain(size.leastDepthMm - *fit.depthMm)}}});
}

void addDisc(const SizeFit& fit, const ChartSize& size, const DeviceChart& chart,
             std::vector<Notice>& warnings) {
    if (fit.discCovers.value_or(true)) return;
    warnings.push_back({"disc-does-not-cover",
                        "The disc of size " + size.name + " (" + mmText(*size.discDiameterMm) +
                            ") does not cover the ostium: with an overlap of " + mmText(chart.discOverlapMm) +
                            " it is " + mmText(-*fit.discMarginMm) +
                            " too small for the ostium's longest diameter.",
                        {{"short_mm", plain(-*fit.discMarginMm)}}});
}

void addClearances(const SizeFit& fit, const ChartSize& size, std::vector<Notice>& warnings) {
    for (const ClearanceCheck& c : fit.clearances) {
        if (c.ok()) continue;
        warnings.push_back({"too-near",
                            "Size " + size.name + " would lie " + mmText(c.clearanceMm) + " from the " +
                                words(c.structure) + "; at least " + mmText(c.leastMm) + " is wanted.",
                            {{"structure", name(c.structure)}, {"clearance_mm", plain(c.clearanceMm)}}});
    }
}

std::string chartOnFolding(FoldedPlacement folded) {
    switch (folded) {
    case FoldedPlacement::Allowed:
        return "The chart allows folded placement.";
    case FoldedPlacement::NotAllowed:
        return "The chart does not allow folded placement.";
    case FoldedPlacement::Silent:
        break;
    }
    return "The chart is silent about folded placement.";
}

std::string reachWords(FoldedReach reach) {
    switch (reach) {
    case FoldedReach::NotNeeded:
        return "the neck alone offers its depth; no folding is needed";
    case FoldedReach::Full:
        return "a folded placement can be reached in full";
    case FoldedReach::Partial:
        return "a folded placement can be reached in part";
    case FoldedReach::None:
        return "a folded placement cannot be reached";
    case FoldedReach::Unknown:
        break;
    }
    return "whether a folded placement can be reached is not known: width or depth at the bend was not "
           "measured";
}

void addFolded(const SizeFit& fit, const ChartSize& size, const AppendageFacts& facts,
               std::vector<Notice>& warnings) {
    if (!fit.folded || *fit.folded == FoldedReach::NotNeeded) return;
    warnings.push_back({"folded-placement",
                        "The neck is " + mmText(facts.bend->neckLengthMm) +
                            " long before the bend; for size " + size.name + " " + reachWords(*fit.folded) +
                            ". " + chartOnFolding(size.folded),
                        {{"reach", name(*fit.folded)}}});
}

} // namespace

std::vector<Notice> sizeWarnings(const SizeFit& fit, const ChartSize& size, const DeviceChart& chart,
                                 const WidthsAt& widths, const AppendageFacts& facts,
                                 const DepthKnown& depth) {
    std::vector<Notice> warnings;
    addUndersized(fit, size, widths, warnings);
    addOverCompressed(fit, size, widths, warnings);
    addDepth(fit, size, chart, depth, warnings);
    addDisc(fit, size, chart, warnings);
    addClearances(fit, size, warnings);
    addFolded(fit, size, facts, warnings);
    return warnings;
}

} // namespace gauge::core
