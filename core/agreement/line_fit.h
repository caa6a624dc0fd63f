// Straight lines through readings: ordinary least squares, and errors in both variables (calibration of one modality against
// another).
#pragma once

#include "core/result.h"

#include <span>

namespace gauge::core {

struct LineFit {
    double intercept = 0.0;
    double slope = 0.0;
    double interceptStandardError = 0.0;
    double slopeStandardError = 0.0;
    double residualSquares = 0.0; ///< sum; weighted for fitLineWithErrors (chi-square on n - 2 degrees)
    int points = 0;
};

/// y = intercept + slope x by least squares; x without error. At least 3 points.
/// @errors TooFewPoints, NonFinite, InvalidArgument (unequal numbers), Degenerate (all x equal).
/// Accuracy: 12 digits of the certified values of NIST's Norris set.
Result<LineFit> fitLine(std::span<const double> x, std::span<const double> y);

/// The same where both variables have independent errors of known standard uncertainties (> 0). Standard errors follow
/// from these uncertainties, not from the scatter.
/// @errors as fitLine; InvalidArgument for an uncertainty not above 0; Degenerate when the iteration does not settle.
/// Source: York, Evensen, Martinez and De Basabe Delgado, Am J Phys 2004;72:367-375.
Result<LineFit> fitLineWithErrors(std::span<const double> x, std::span<const double> xUncertainty,
                                  std::span<const double> y, std::span<const double> yUncertainty);

} // namespace gauge::core
