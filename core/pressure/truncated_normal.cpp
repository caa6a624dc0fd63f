#include "core/pressure/truncated_normal.h"

#include "core/pressure/gaussian_mixture.h"

#include <algorithm>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <numbers>

namespace gauge::core::truncated_normal {

namespace {

// Below, the tail beyond 0 is exponential to 1e-3 of itself and the closed forms begin to cancel.
constexpr double kDeepTail = -30.0;
// Boost would compute in long double, several times slower.
using InDouble = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

} // namespace

Moments moments(double mean, double sd) {
    const double a = mean / sd;
    if (a < kDeepTail) return {-sd / a * (1.0 - 2.0 / (a * a)), sd * sd / (a * a) * (1.0 - 6.0 / (a * a))};
    const double density = std::exp(-0.5 * a * a) / std::sqrt(2.0 * std::numbers::pi);
    const double hazard = density / normalCdf(a);
    return {mean + sd * hazard, sd * sd * (1.0 - hazard * a - hazard * hazard)};
}

double quantile(double mean, double sd, double probability) {
    const double a = mean / sd;
    if (a < kDeepTail) return std::log1p(-probability) * sd / a;
    const double upperTail = (1.0 - probability) * normalCdf(a);
    return std::max(0.0, mean + sd * std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * upperTail, InDouble{}));
}

double logNormalCdf(double z) {
    if (z > kDeepTail) return std::log(normalCdf(z));
    return -0.5 * z * z - std::log(-z * std::sqrt(2.0 * std::numbers::pi)) - 1.0 / (z * z);
}

} // namespace gauge::core::truncated_normal
