#include "core/agreement/quantiles.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace gauge::core::agreement {

double studentQuantile(double probability, double degrees) {
    return boost::math::quantile(boost::math::students_t(degrees), probability);
}

double fisherQuantile(double probability, double degrees1, double degrees2) {
    return boost::math::quantile(boost::math::fisher_f(degrees1, degrees2), probability);
}

double chiSquareQuantile(double probability, double degrees) {
    return boost::math::quantile(boost::math::chi_squared(degrees), probability);
}

double studentTwoSided(double t, double degrees) {
    return 2.0 * boost::math::cdf(boost::math::complement(boost::math::students_t(degrees), std::abs(t)));
}

} // namespace gauge::core::agreement
