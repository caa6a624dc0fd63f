#include "core/fast/large_vector.h"

#include "core/fast/spare_memory.h"

#include <cstdint>
#include <gtest/gtest.h>
#include <limits>
#include <numeric>
#include <vector>

using namespace gauge::core;

namespace {

constexpr std::size_t kPage = std::size_t{2} << 20;

} // namespace

TEST(LargeVector, HoldsWhatIsPutIntoIt) {
    for (const std::size_t count : {std::size_t{1}, std::size_t{1000}, kPage / 4 * 2, kPage + 77}) {
        LargeVector<std::uint32_t> values(count, 7u);
        EXPECT_EQ(values.front() + values.back(), 14u);
        std::iota(values.begin(), values.end(), 0u);
        const LargeVector<std::uint32_t> copy = values;
        EXPECT_EQ(copy.back(), count - 1);
        EXPECT_EQ(copy, values);
    }
}

TEST(LargeVector, StartsBigArraysOnALargePage) {
    const LargeVector<char> big(3 * kPage);
    EXPECT_EQ(reinterpret_cast<std::uintptr_t>(big.data()) % kPage, 0u);
}

TEST(LargeVector, SaysWhenThereIsNoMemory) {
    LargeAllocator<double> allocator;
    EXPECT_THROW((void)allocator.allocate(std::numeric_limits<std::size_t>::max() / 2), std::bad_alloc);
    // The address sanitizer ends the program instead of letting operator new or aligned_alloc fail.
    if (!kKeepsSpareLarge) GTEST_SKIP() << "the address sanitizer allows no failing allocation";
    EXPECT_THROW((void)allocator.allocate(std::size_t{1} << 58), std::bad_alloc);
}

TEST(LargeVector, TakesTheBlockOfTheLastOneOfItsSize) {
    releaseSpareLarge();
    const void* first = nullptr;
    {
        const LargeVector<char> values(40 * kPage);
        first = values.data();
    }
    if (!kKeepsSpareLarge) GTEST_SKIP() << "nothing is kept under the address sanitizer";
    EXPECT_EQ(spareLargeBytes(), 40 * kPage);
    {
        const LargeVector<char> smaller(20 * kPage); // the kept block is far too large for it
        EXPECT_NE(static_cast<const void*>(smaller.data()), first);
        const LargeVector<char> alike(39 * kPage);
        EXPECT_EQ(static_cast<const void*>(alike.data()), first);
        EXPECT_EQ(spareLargeBytes(), 0u);
    }
    releaseSpareLarge();
    EXPECT_EQ(spareLargeBytes(), 0u);
}

TEST(LargeVector, KeepsNoMoreThanItSays) {
    releaseSpareLarge();
    {
        std::vector<LargeVector<char>> many;
        for (int n = 0; n < 20; ++n)
            many.emplace_back(10 * kPage); // 400 MiB, not touched
        const LargeVector<char> tooLarge(kMostSpareBytes + 1), small(4 * kPage);
    }
    EXPECT_LE(spareLargeBytes(), kMostSpareBytes);
    releaseSpareLarge();
}
