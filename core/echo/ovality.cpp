#include "core/echo/ovality.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

constexpr double kComputedChance = 1e-5;

/// Chance of a chi-square below `x` << 1: the leading term of the incomplete gamma function.
double chanceBelow(double x, int freedom) {
    const double k = 0.5 * freedom;
    return std::pow(0.5 * x, k) / std::tgamma(k + 1.0);
}

} // namespace

OvalityCorrection correctOvality(const WidthEllipseFit& fit, std::span<const AngledWidth> widths,
                                 bool uncertaintyStated, double varianceFactor) {
    OvalityCorrection c;
    const double round = chiSquared(withOvality(fit.ellipse, Eigen::Vector2d::Zero(), widths), widths);
    c.noiseRatio = std::sqrt(std::max(round - fit.chiSquared, 0.0) / varianceFactor);
    if (fit.freedom > 0 && chanceBelow(fit.chiSquared, fit.freedom) < kComputedChance) return c;
    if (c.noiseRatio >= kOvalAbove) return c;
    if (fit.freedom == 0 && !uncertaintyStated) {
        c.verdict = OvalityVerdict::NotCorrected;
        return c;
    }
    if (c.noiseRatio <= kRoundBelow) {
        c.factor = 0.0;
        c.verdict = OvalityVerdict::Round;
        return c;
    }
    c.factor = kOvalAbove * (c.noiseRatio - kRoundBelow) / ((kOvalAbove - kRoundBelow) * c.noiseRatio);
    c.verdict = OvalityVerdict::Reduced;
    return c;
}

WidthEllipse corrected(const WidthEllipseFit& fit, const OvalityCorrection& correction,
                       std::span<const AngledWidth> widths) {
    if (correction.factor == 1.0) return fit.ellipse;
    return withOvality(fit.ellipse, correction.factor * fit.ellipse.ovalityMm, widths);
}

} // namespace gauge::core
