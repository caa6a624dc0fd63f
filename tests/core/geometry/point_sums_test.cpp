#include "core/geometry/point_sums.h"

#include <cmath>
#include <cstring>
#include <gtest/gtest.h>
#include <limits>
#include <random>
#include <vector>

using namespace gauge::core;

namespace {

std::vector<double> randomPoints(std::size_t count, std::mt19937& random) {
    std::uniform_real_distribution<double> coordinate(-30.0, 500.0);
    std::vector<double> points(2 * count);
    for (double& c : points)
        c = coordinate(random);
    return points;
}

} // namespace

TEST(PointSumLoops, Avx2GivesThePortableBits) {
    if (pointSumLoopsAvx2() == nullptr || !__builtin_cpu_supports("avx2")) GTEST_SKIP() << "no AVX2 here";
    std::mt19937 random(3);
    for (std::size_t count = 1; count < 70; ++count)
        for (int round = 0; round < 20; ++round) {
            const auto points = randomPoints(count, random);
            double middle[2], fastMiddle[2];
            PointSums sums, fastSums;
            kPointSumLoops.mean(points.data(), count, middle);
            pointSumLoopsAvx2()->mean(points.data(), count, fastMiddle);
            kPointSumLoops.sums(points.data(), count, middle, sums);
            pointSumLoopsAvx2()->sums(points.data(), count, middle, fastSums);
            ASSERT_EQ(std::memcmp(middle, fastMiddle, sizeof(middle)), 0) << count << " points";
            ASSERT_EQ(std::memcmp(&sums, &fastSums, sizeof(sums)), 0) << count << " points";
        }
}

TEST(PointSumLoops, AreTheSumsThatTheirNamesSay) {
    std::mt19937 random(4);
    constexpr std::size_t kCount = 23;
    constexpr double kRounding = 1e-12; // of sums of tens of terms in another order
    const auto points = randomPoints(kCount, random);
    const double middle[2] = {200.0, 250.0};
    PointSums sums;
    kPointSumLoops.sums(points.data(), kCount, middle, sums);
    double x2y = 0.0, xy3 = 0.0, size = 0.0;
    for (std::size_t i = 0; i < kCount; ++i) {
        const double x = points[2 * i] - middle[0], y = points[2 * i + 1] - middle[1];
        x2y += x * x * y;
        xy3 += x * y * y * y;
        size += std::abs(x * y * y * y) + std::abs(x * x * y);
    }
    EXPECT_NEAR(sums.x2y, x2y, kRounding * size);
    EXPECT_NEAR(sums.xy3, xy3, kRounding * size);
}

TEST(PointSumLoops, MeanIsNotFiniteWhereAPointIsNot) {
    std::mt19937 random(5);
    auto points = randomPoints(11, random);
    points[13] = std::numeric_limits<double>::quiet_NaN();
    double middle[2];
    kPointSumLoops.mean(points.data(), 11, middle);
    EXPECT_FALSE(std::isfinite(middle[1]));
}
