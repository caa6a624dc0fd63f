// A normal distribution N(mean, sd) cut at 0 and renormalised. Private to core/pressure. Good for any mean / sd, also
// where nearly all of the normal lies below 0.
#pragma once

namespace gauge::core::truncated_normal {

struct Moments {
    double mean = 0.0;
    double variance = 0.0;
};
Moments moments(double mean, double sd);

/// @param probability in [0, 1).
double quantile(double mean, double sd, double probability);

/// log P(Z <= z) of the standard normal distribution, without underflow.
double logNormalCdf(double z);

} // namespace gauge::core::truncated_normal
