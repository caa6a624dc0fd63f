// Agreement of two ways of measuring the same thing: bias and 95 % limits (Bland and Altman). Neighbours:
// intraclass.h, repeatability.h, line_fit.h; published limits to compare with: published_limits.h.
#pragma once

#include "core/result.h"

#include <span>

namespace gauge::core {

/// A confidence interval.
struct Interval {
    double lower = 0.0;
    double upper = 0.0;
    bool operator==(const Interval&) const = default;
};

/// In the unit of the readings. Differences are first minus second.
struct BlandAltman {
    int pairs = 0;
    double bias = 0.0;
    double sd = 0.0; ///< of the differences
    double biasStandardError = 0.0;
    Interval biasInterval;
    double lowerLimit = 0.0; ///< bias - 1.96 SD
    double upperLimit = 0.0;
    double limitStandardError = 0.0; ///< sqrt(3 / n) SD
    Interval lowerLimitInterval;
    Interval upperLimitInterval;
    /// Slope of the differences on the means of the pairs and its two-sided chance were there none: small, and one bias for
    /// all sizes is no fair account. Both are none (slope 0, chance 1) when all means are equal.
    double proportionalSlope = 0.0;
    double proportionalChance = 1.0;
};

/// @param first, second  the same number of readings, at least 3, in pairs.  @param confidence  above 0, below 1.
/// Intervals with Student's t on n - 1 degrees, exactly for the bias, approximately for the limits.
/// @errors TooFewPoints, NonFinite, InvalidArgument (unequal numbers, confidence).
/// Source: Bland and Altman, Lancet 1986;i:307-310 (limits with 1.96 in place of its rounded 2).
Result<BlandAltman> blandAltman(std::span<const double> first, std::span<const double> second,
                                double confidence = 0.95);

} // namespace gauge::core
