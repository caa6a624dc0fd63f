#include "core/sizing/judged.h"
#include "core/sizing/wording.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

// Two sizes are close when the second has at least this chance, and this share of the first's.
constexpr double kSecondChance = 0.2;
constexpr double kSecondShare = 0.5;

void addNothingFits(const Judged& j, const DiameterAt& d, std::vector<Notice>& warnings) {
    const ChartSize* nearest = nullptr;
    double least = 0.0;
    for (const ChartSize& size : j.question.chart.sizes) {
        if (size.acceptsMm.holds(d.medianMm)) return;
        const double off =
            d.medianMm < size.acceptsMm.lo ? d.medianMm - size.acceptsMm.lo : d.medianMm - size.acceptsMm.hi;
        if (nearest && std::abs(off) >= std::abs(least)) continue;
        nearest = &size;
        least = off;
    }
    warnings.push_back({"nothing-fits",
                        "No size of \"" + j.question.chart.name + "\" accepts " + mmText(d.medianMm) +
                            " at " + pressureText(d.pressureMmHg) + ": it is " + mmText(std::abs(least)) +
                            (least < 0.0 ? " below" : " above") + " the nearest band, " +
                            mmRange(nearest->acceptsMm.lo, nearest->acceptsMm.hi) + " of size " +
                            nearest->name + ".",
                        {{"missing_mm", std::to_string(std::abs(least))}, {"size", nearest->name}}});
}

void addBetween(const Judged& j, std::vector<Notice>& warnings) {
    if (!j.leading) return;
    const SizeFit* first = &j.fits[*j.leading];
    const SizeFit* second = nullptr;
    for (const SizeFit& fit : j.fits)
        if (&fit != first && (!second || fit.fitChance > second->fitChance)) second = &fit;
    if (!second || second->fitChance < kSecondChance || second->fitChance < kSecondShare * first->fitChance)
        return;
    warnings.push_back({"between-two-sizes",
                        "Between two sizes: " + first->name + " fits with a chance of " +
                            chanceText(first->fitChance) + ", " + second->name + " with " +
                            chanceText(second->fitChance) + "; over the living pressures " +
                            chanceText(first->lastingFit) + " and " + chanceText(second->lastingFit) + ".",
                        {{"sizes", first->name + ", " + second->name}}});
}

/// Sizes that the width may ask for, all of them too long for this appendage.
void addDepthForAll(const Judged& j, std::vector<Notice>& warnings) {
    const SizeFit* least = nullptr;
    for (const SizeFit& fit : j.fits) {
        if (!fit.depthOk.has_value() || *fit.depthOk) return;
        if (!least || fit.leastDepthMm - *fit.depthMm < least->leastDepthMm - *least->depthMm) least = &fit;
    }
    if (!least) return;
    warnings.push_back({"depth-short-for-all",
                        "No size of \"" + j.question.chart.name + "\" finds its depth: size " + least->name +
                            " needs " + mmText(least->leastDepthMm) + ", which is " +
                            mmText(least->leastDepthMm - *least->depthMm) + " more than there is.",
                        {{"missing_mm", std::to_string(least->leastDepthMm - *least->depthMm)}}});
}

} // namespace

void addChoice(const Judged& j, std::vector<Notice>& warnings) {
    addNothingFits(j, j.widths.decision, warnings);
    addBetween(j, warnings);
    addDepthForAll(j, warnings);
}

} // namespace gauge::core
