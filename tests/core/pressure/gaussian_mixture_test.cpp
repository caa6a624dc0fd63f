#include "core/pressure/gaussian_mixture.h"

#include "core/pressure/truncated_normal.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;

TEST(GaussianMixture, OfOneIsTheNormalDistribution) {
    const GaussianMixture one({{2.0, 10.0, 3.0}});
    EXPECT_DOUBLE_EQ(one.mean(), 10.0);
    EXPECT_DOUBLE_EQ(one.sd(), 3.0);
    // Quantiles of the normal distribution: any table.
    EXPECT_NEAR(one.quantile(0.975), 10.0 + 3.0 * 1.959963984540054, 1e-8);
    EXPECT_NEAR(one.cdf(13.0), 0.841344746068543, 1e-12);
    EXPECT_EQ(one.probabilityWithin(5, 4), 0.0);
}

TEST(GaussianMixture, QuantileUndoesCdf) {
    const GaussianMixture m({{0.3, -5.0, 0.01}, {0.5, 0.0, 2.0}, {0.2, 30.0, 0.5}});
    for (const double p : {1e-6, 0.025, 0.1, 0.299, 0.5, 0.79, 0.81, 0.975, 1 - 1e-6})
        EXPECT_NEAR(m.cdf(m.quantile(p)), p, 1e-8) << p;
    // Mean and SD by hand: -1.5 + 0 + 6; 0.3 (90.25 + 1e-4) + 0.5 (20.25 + 4) + 0.2 (650.25 + 0.25).
    EXPECT_NEAR(m.mean(), 4.5, 1e-12);
    EXPECT_NEAR(m.sd(), std::sqrt(0.3 * 90.2501 + 0.5 * 24.25 + 0.2 * 650.5), 1e-12);
}

TEST(GaussianMixture, HoldsPointMasses) {
    const GaussianMixture m({{0.5, 1.0, 0.0}, {0.5, 2.0, 0.0}});
    EXPECT_EQ(m.cdf(1.5), 0.5);
    EXPECT_EQ(m.probabilityWithin(1.0, 1.0), 0.5);
    EXPECT_NEAR(m.quantile(0.75), 2.0, 1e-6);
}

TEST(GaussianMixture, JoiningComponentsMovesNothing) {
    std::mt19937 random(5);
    std::normal_distribution<double> normal;
    std::vector<GaussianMixture::Component> parts;
    for (int i = 0; i < 20000; ++i) {
        const double z = normal(random);
        parts.push_back({1.0 + 0.5 * std::sin(i), 20.0 + 2.0 * z + 0.5 * z * z, i % 3 ? 0.3 : 1.0 + 0.2 * z * z});
    }
    const GaussianMixture all(parts), joined = GaussianMixture::binned(parts);
    EXPECT_LT(joined.components().size(), 6000u);
    EXPECT_NEAR(joined.mean(), all.mean(), 1e-9);
    EXPECT_NEAR(joined.sd(), all.sd(), 1e-9);
    for (const double x : {12.0, 16.0, 18.0, 20.0, 22.0, 25.0, 30.0})
        EXPECT_NEAR(joined.cdf(x), all.cdf(x), 1e-4) << x;
}

TEST(TruncatedNormal, AgreesWithSummationAndStandsTheDeepTail) {
    for (const double mean : {2.0, 0.35, 0.0, -0.5, -3.0, -20.0}) {
        const double sd = 0.5;
        double s0 = 0, s1 = 0, s2 = 0;
        const double top = std::max(mean, 0.0) + 30 * sd * std::min(1.0, sd / std::max(sd, -mean));
        constexpr int kSteps = 200000;
        for (int i = 0; i < kSteps; ++i) {
            const double x = (i + 0.5) * top / kSteps;
            // relative to the density at 0, which does not underflow
            const double f = std::exp(-0.5 * (x * x - 2 * x * mean) / (sd * sd));
            s0 += f;
            s1 += f * x;
            s2 += f * x * x;
        }
        const auto m = truncated_normal::moments(mean, sd);
        // Beyond 30 SDs a series takes over, whose next term is below (10 / 40^2)^2.
        const double tolerance = mean < -15 ? 5e-5 : 1e-6;
        EXPECT_NEAR(m.mean, s1 / s0, tolerance * s1 / s0) << mean;
        EXPECT_NEAR(m.variance, s2 / s0 - s1 * s1 / s0 / s0, 4 * tolerance * m.variance) << mean;
        double average = 0;
        for (int i = 0; i < 4000; ++i)
            average += truncated_normal::quantile(mean, sd, (i + 0.5) / 4000) / 4000;
        EXPECT_NEAR(average, m.mean, 2e-3 * m.mean) << mean;
    }
    EXPECT_NEAR(truncated_normal::logNormalCdf(-29.9), truncated_normal::logNormalCdf(-30.1) + 30.0 * 0.2, 0.02);
}
