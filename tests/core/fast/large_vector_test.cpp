#include "core/fast/large_vector.h"

#include <cstdint>
#include <gtest/gtest.h>
#include <limits>
#include <numeric>

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
    EXPECT_THROW((void)allocator.allocate(std::size_t{1} << 58), std::bad_alloc);
}
