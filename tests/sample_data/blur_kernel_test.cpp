#include "sample-data/blur_kernel.h"

#include <gtest/gtest.h>

#include <numeric>

namespace gauge::sample_case {
namespace {

TEST(BlurKernel, HasUnitSumAndExactlyTheVarianceOfItsGaussian) {
    for (const double fwhm : {0.5, 0.7, 0.9})
        for (const double voxel : {0.35, 0.45, 0.6}) {
            const double sigma = gaussianSigmaFromFwhm(fwhm);
            const BlurKernel kernel = blurKernel(sigma, voxel / 2, 2);
            EXPECT_NEAR(std::accumulate(kernel.taps.begin(), kernel.taps.end(), 0.0), 1.0, 1e-6);
            EXPECT_NEAR(kernel.achievedVariance, sigma * sigma, 1e-6) << fwhm << " mm on " << voxel << " mm";
        }
}

TEST(BlurKernel, IsSymmetricAboutTheVoxelCentre) {
    for (const int factor : {1, 2, 3}) {
        const BlurKernel kernel = blurKernel(0.3, 0.2, factor);
        const std::size_t n = kernel.taps.size();
        EXPECT_EQ(2 * kernel.first + static_cast<int>(n) - 1, factor - 1);
        for (std::size_t i = 0; i < n; ++i)
            EXPECT_FLOAT_EQ(kernel.taps[i], kernel.taps[n - 1 - i]);
    }
}

TEST(GaussianSigma, HalvesAtHalfTheWidth) {
    const double sigma = gaussianSigmaFromFwhm(0.8);
    EXPECT_NEAR(std::exp(-0.5 * 0.4 * 0.4 / (sigma * sigma)), 0.5, 1e-12);
}

} // namespace
} // namespace gauge::sample_case
