// What noise does to the ovality of a fitted ellipse, and how it is undone.
//
// Noise on the widths adds to the vector (p, q) of a WidthEllipse; its length only grows by that. Noise of 1 mm on four
// views of a round 20 mm neck reads it as 20.9 x 19.1 mm on average. No estimator that keeps longest >= shortest can
// be free of that bias everywhere (the length of a vector is not smooth at 0): the least that can be reached is a bias
// of 0.34 of the noise of one component, both ways [computed: linear programme over all monotone estimators]. The
// gate below stays within 0.43 of it everywhere, 0.30 at the round neck (before: 1.25), and within 0.10 once the
// ovality is more than four times its noise.
#pragma once

#include "core/echo/width_ellipse.h"

namespace gauge::core {

/// Ends of the gate, in units of the noise (root of how much better the ellipse fits than a circle,
/// in chi-square; for four evenly spread views the length of (p, q) over its standard uncertainty). Chances of a larger ovality on a round
/// neck: 20 % and 5.6 % (chi-square, two degrees of freedom).
inline constexpr double kRoundBelow = 1.8, kOvalAbove = 2.4;

enum class OvalityVerdict {
    AsRead,       ///< clearly oval, or nothing to correct: left to the last digit
    Reduced,      ///< between: part of it is likely noise
    Round,        ///< cannot be told from noise: reported round
    NotCorrected, ///< three widths whose noise nobody stated: nothing to judge it by
};

struct OvalityCorrection {
    double factor = 1.0; ///< of (p, q)
    OvalityVerdict verdict = OvalityVerdict::AsRead;
    double noiseRatio = 0.0; ///< ovality in units of its noise
};

/// @param widths  those of the fit.
/// @param uncertaintyStated  false: their uncertainties are an assumption.
/// @param varianceFactor  by which the residual shows the variances to be larger than stated, >= 1.
/// Widths that lie on one ellipse far better than their stated noise allows (a chance below 1e-5) are numbers that
/// were computed, not read: they are left as they are.
OvalityCorrection correctOvality(const WidthEllipseFit& fit, std::span<const AngledWidth> widths,
                                 bool uncertaintyStated, double varianceFactor = 1.0);

/// The fit with its ovality corrected and its mean diameter fitted again; unchanged, to the last digit, for factor 1.
WidthEllipse corrected(const WidthEllipseFit& fit, const OvalityCorrection& correction,
                       std::span<const AngledWidth> widths);

} // namespace gauge::core
