// A weighted mixture of normal distributions in one dimension.
#pragma once

#include <vector>

namespace gauge::core {

class GaussianMixture {
public:
    struct Component {
        double weight = 0.0; ///< >= 0
        double mean = 0.0;
        double sd = 0.0; ///< >= 0; 0 is a point mass
    };

    /// At least one component; the sum of the weights is above 0 and need not be 1. Asserted.
    explicit GaussianMixture(std::vector<Component>);

    /// The same from many components: those of nearly the same SD whose means lie within 1/100 of the whole SD become one of
    /// their common mean and variance. Chances move by less than 1e-4; answers come several times faster.
    static GaussianMixture binned(const std::vector<Component>&);

    double mean() const { return m_mean; }
    double sd() const { return m_sd; }
    /// P(X <= x); 0 and 1 at minus and plus infinity.
    double cdf(double x) const;
    /// P(lowest <= X <= highest); 0 where highest < lowest.
    double probabilityWithin(double lowest, double highest) const;
    /// @param probability above 0 and below 1 (asserted). Error below 1e-9 of the SD, where the density is not 0.
    double quantile(double probability) const;
    const std::vector<Component>& components() const { return m_components; }

private:
    std::vector<Component> m_components;
    double m_mean = 0.0;
    double m_sd = 0.0;
};

/// P(Z <= z) of the standard normal distribution.
double normalCdf(double z);
/// Its inverse, for probabilities above 0 and below 1.
double normalQuantile(double probability);

} // namespace gauge::core
