// Quantiles of the distributions behind confidence intervals (Boost.Math). Private to core/agreement.
#pragma once

namespace gauge::core::agreement {

/// Student's t with that many degrees of freedom; probability above 0 and below 1.
double studentQuantile(double probability, double degrees);
double fisherQuantile(double probability, double degrees1, double degrees2);
double chiSquareQuantile(double probability, double degrees);
/// P(T > |t|) on both sides.
double studentTwoSided(double t, double degrees);

} // namespace gauge::core::agreement
