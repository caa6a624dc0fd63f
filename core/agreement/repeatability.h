// How well one way of measuring repeats itself.
#pragma once

#include "core/agreement/bland_altman.h"
#include "core/result.h"

#include <span>
#include <vector>

namespace gauge::core {

struct Repeatability {
    int subjects = 0;           ///< with at least two readings
    double degrees = 0.0;       ///< readings less subjects
    double withinSubjectSd = 0.0;
    Interval withinSubjectSdInterval;
    /// 1.96 sqrt(2) within-subject SDs: two readings of one subject differ by less in 95 of 100 cases.
    double coefficient = 0.0;
};

/// @param readings  one list per subject; subjects read once say nothing and are left out.
/// Within-subject variance: sums of squares about each subject's mean, pooled by degrees; its interval by chi-square.
/// @errors TooFewPoints when no subject was read twice; NonFinite; InvalidArgument (confidence).
/// Source: Bland and Altman, Lancet 1986;i:307-310 and BMJ 1996;313:744.
Result<Repeatability> repeatability(const std::vector<std::vector<double>>& readings, double confidence = 0.95);

/// The same from pairs with no shift expected between first and second: sqrt(sum of squared differences / 2n), as in the
/// 1986 paper; for two readings a subject it equals `repeatability`.
Result<Repeatability> repeatabilityOfPairs(std::span<const double> first, std::span<const double> second,
                                           double confidence = 0.95);

} // namespace gauge::core
