#include "core/cine/echo_region.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;

namespace {

EchoRegion boxed(int minX, int minY, int maxX, int maxY, bool high = false) {
    EchoRegion region;
    region.box = {minX, minY, maxX, maxY};
    region.highPriority = high;
    return region;
}

} // namespace

TEST(RegionAt, CoversTheWholePixelsOfBothCorners) {
    const std::vector<EchoRegion> regions{boxed(10, 20, 30, 40)};
    EXPECT_EQ(regionAt(regions, {10, 20}), 0u);
    EXPECT_EQ(regionAt(regions, {30.5, 40.5}), 0u);
    EXPECT_EQ(regionAt(regions, {9.5, 19.5}), 0u);
    EXPECT_EQ(regionAt(regions, {30.51, 30}), std::nullopt);
    EXPECT_EQ(regionAt(regions, {20, 19.4}), std::nullopt);
    EXPECT_EQ(regionAt({}, {0, 0}), std::nullopt);
}

TEST(RegionAt, PriorityComesBeforeSizeAndSizeBeforeOrder) {
    const std::vector<EchoRegion> nested{boxed(0, 0, 100, 100), boxed(40, 40, 60, 60)};
    EXPECT_EQ(regionAt(nested, {50, 50}), 1u) << "the smaller one is the more specific";
    EXPECT_EQ(regionAt(nested, {10, 10}), 0u);
    const std::vector<EchoRegion> raised{boxed(0, 0, 100, 100, true), boxed(40, 40, 60, 60)};
    EXPECT_EQ(regionAt(raised, {50, 50}), 0u) << "high priority covers";
    const std::vector<EchoRegion> equal{boxed(0, 0, 10, 10), boxed(5, 5, 15, 15)};
    EXPECT_EQ(regionAt(equal, {7, 7}), 0u) << "the first listed";
}

TEST(RegionAt, AgreesWithTheRuleSpelledOut) {
    for (unsigned seed = 1; seed <= 200; ++seed) {
        std::mt19937 random(seed);
        const auto pick = [&](int low, int high) {
            return std::uniform_int_distribution<int>(low, high)(random);
        };
        std::vector<EchoRegion> regions;
        for (int i = 0, n = pick(0, 6); i < n; ++i) {
            const int x = pick(0, 50), y = pick(0, 50);
            regions.push_back(boxed(x, y, x + pick(1, 40), y + pick(1, 40), pick(0, 1) == 1));
        }
        const Eigen::Vector2d p(pick(-5, 100), pick(-5, 100));
        const auto found = regionAt(regions, p);
        for (std::size_t i = 0; i < regions.size(); ++i) {
            if (!regions[i].box.contains(p)) continue;
            ASSERT_TRUE(found) << "seed " << seed;
            const auto& best = regions[*found];
            ASSERT_TRUE(best.box.contains(p)) << "seed " << seed;
            const bool beats =
                (regions[i].highPriority && !best.highPriority) ||
                (regions[i].highPriority == best.highPriority && regions[i].box.area() < best.box.area());
            EXPECT_FALSE(beats) << "seed " << seed << ", region " << i;
        }
    }
}

TEST(PhysicalUnit, HasTheNumbersOfTheStandard) {
    // PS3.3 C.8.5.5.1.15: 3 = cm, 4 = seconds, 5 = hertz, 7 = cm/sec.
    EXPECT_EQ(words(static_cast<PhysicalUnit>(3)), "cm");
    EXPECT_EQ(words(static_cast<PhysicalUnit>(4)), "s");
    EXPECT_EQ(words(static_cast<PhysicalUnit>(5)), "Hz");
    EXPECT_EQ(words(static_cast<PhysicalUnit>(7)), "cm/s");
    EXPECT_EQ(words(PhysicalUnit::Unknown), "not known");
}

TEST(EchoRegionKind, HasTheWordsOfTheIndex) {
    EXPECT_EQ(words(EchoRegionKind::Tissue), "tissue");
    EXPECT_EQ(words(EchoRegionKind::Colour), "colour");
    EXPECT_EQ(words(EchoRegionKind::MMode), "m-mode");
    EXPECT_EQ(words(EchoRegionKind::Spectral), "spectral");
    EXPECT_EQ(words(EchoRegionKind::Ecg), "ecg");
    EXPECT_EQ(words(EchoRegionKind::Other), "other");
}
