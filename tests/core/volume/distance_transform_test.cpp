#include "core/volume/distance_transform.h"

#include "core/fast/fast_path.h"
#include "core/volume/distance_columns.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <random>
#include <vector>

using namespace gauge::core;

namespace {

// Squares are rounded to single floats, twice.
constexpr double kFloatShare = 3e-7;
constexpr float kGreatest = std::numeric_limits<float>::max();

struct OwnMask {
    std::vector<std::uint8_t> values;
    MaskBlock block;

    OwnMask(const Eigen::Vector3i& size, const Eigen::Vector3d& spacing, double share, unsigned seed)
        : values(static_cast<std::size_t>(size.prod())), block{nullptr, size, spacing} {
        std::mt19937 random(seed);
        for (auto& v : values)
            v = std::uniform_real_distribution<>()(random) < share ? 1 : 0;
        block.values = values.data();
    }
    Eigen::Vector3i node(std::size_t i) const {
        const int n = static_cast<int>(i), x = block.size.x(), y = block.size.y();
        return {n % x, n / x % y, n / x / y};
    }
    /// Brute force: the nearest node of the other kind.
    double toOther(std::size_t at) const {
        double best = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < values.size(); ++i)
            if (values[i] != values[at])
                best = std::min(best, (node(i) - node(at)).cast<double>().cwiseProduct(block.spacingMm).norm());
        return best;
    }
};

std::vector<float> insideOf(const OwnMask& mask) {
    std::vector<float> out(mask.values.size(), -1.0f);
    distanceInsideMm(mask.block, out.data());
    return out;
}
std::vector<float> signedOf(const OwnMask& mask) {
    std::vector<float> out(mask.values.size(), -1.0f);
    signedDistanceMm(mask.block, out.data());
    return out;
}

const Eigen::Vector3i kSizes[] = {{19, 9, 11}, {16, 7, 3}, {1, 12, 5}, {33, 1, 6}, {5, 4, 1}, {1, 1, 1}};

template <class Body> void forEachMask(const Body& body) {
    unsigned seed = 1;
    for (const auto& size : kSizes)
        for (const Eigen::Vector3d& spacing : {Eigen::Vector3d(0.37, 0.37, 0.37), Eigen::Vector3d(0.4, 0.45, 0.7)})
            for (const double share : {0.0, 0.05, 0.4, 0.9, 0.995, 1.0})
                body(OwnMask(size, spacing, share, seed++));
}

} // namespace

TEST(SignedDistance, EqualsItsBruteForceTwinOnBothSides) {
    forEachMask([](const OwnMask& mask) {
        const auto distance = signedOf(mask), inside = insideOf(mask);
        for (std::size_t i = 0; i < distance.size(); ++i) {
            const double expected = mask.toOther(i), sign = mask.values[i] ? 1.0 : -1.0;
            if (std::isinf(expected))
                ASSERT_EQ(distance[i], static_cast<float>(sign) * kGreatest);
            else
                ASSERT_NEAR(distance[i], sign * expected, kFloatShare * expected) << i;
            ASSERT_EQ(inside[i], mask.values[i] ? distance[i] : 0.0f);
        }
    });
}

TEST(SignedDistance, GivesTheSameBitsOnEveryPath) {
    forEachMask([](const OwnMask& mask) {
        const auto fast = signedOf(mask), fastInside = insideOf(mask);
        const FastPathScope portable(FastPath::Portable);
        ASSERT_EQ(signedOf(mask), fast);
        ASSERT_EQ(insideOf(mask), fastInside);
    });
}

// The definition without any stop: every sum of every lane.
TEST(DistanceColumns, GiveTheLeastSumOnEveryPath) {
    constexpr int kLength = 41;
    std::mt19937 random(5);
    std::vector<const DistanceColumns*> tables{&kDistanceColumns};
    if (distanceColumnsAvx2() != nullptr && bestFastPath() == FastPath::Avx2) tables.push_back(distanceColumnsAvx2());
    for (int round = 0; round < 20; ++round) {
        std::vector<float> in(kLength * kDistanceLanes), squares;
        for (auto& v : in)
            v = random() % 4 == 0 ? kUnreachedSquare : static_cast<float>(random() % 900) * (round % 2 ? 0.37f : 1.0f);
        for (int d = 0; d < kLength; ++d)
            squares.push_back(static_cast<float>(d * d) * 0.21f);
        std::vector<float> expected(in.size(), kGreatest);
        for (int y = 0; y < kLength; ++y)
            for (int i = 0; i < kLength; ++i)
                for (int l = 0; l < kDistanceLanes; ++l) {
                    auto& best = expected[static_cast<std::size_t>(y * kDistanceLanes + l)];
                    best = std::min(best, in[static_cast<std::size_t>(i * kDistanceLanes + l)] +
                                              squares[static_cast<std::size_t>(std::abs(y - i))]);
                }
        for (const DistanceColumns* table : tables) {
            std::vector<float> out(in.size()), roots(in.size());
            table->lowest(in.data(), kLength, squares.data(), out.data());
            EXPECT_EQ(out, expected);
            table->roots(in.data(), static_cast<int>(in.size()), 0.37, roots.data());
            for (std::size_t i = 0; i < in.size(); ++i)
                EXPECT_EQ(roots[i], in[i] >= kUnreachedSquare
                                        ? kGreatest
                                        : static_cast<float>(std::sqrt(static_cast<double>(in[i])) * 0.37));
        }
    }
}
