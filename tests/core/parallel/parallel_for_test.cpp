#include "core/parallel/parallel_for.h"

#include <atomic>
#include <gtest/gtest.h>
#include <numeric>
#include <thread>
#include <vector>

using gauge::core::parallelFor;

TEST(ParallelFor, VisitsEachItemOnceForAnyGrain) {
    for (const std::size_t count : {0u, 1u, 2u, 7u, 64u, 1001u}) {
        for (const std::size_t grain : {1u, 3u, 64u, 5000u}) {
            std::vector<std::atomic<int>> visits(count);
            parallelFor(count, grain, [&](std::size_t begin, std::size_t end) {
                ASSERT_LE(end - begin, grain);
                for (std::size_t i = begin; i < end; ++i)
                    ++visits[i];
            });
            for (const auto& v : visits)
                ASSERT_EQ(v.load(), 1) << count << " items, grain " << grain;
        }
    }
}

TEST(ParallelFor, NestedCallsFinish) {
    std::atomic<int> total{0};
    parallelFor(16, 1, [&](std::size_t, std::size_t) {
        parallelFor(16, 1, [&](std::size_t begin, std::size_t end) { total += static_cast<int>(end - begin); });
    });
    EXPECT_EQ(total.load(), 256);
}

TEST(ParallelFor, ServesSeveralCallersAtOnce) {
    std::atomic<int> total{0};
    std::vector<std::jthread> callers;
    for (int c = 0; c < 4; ++c)
        callers.emplace_back([&] {
            for (int round = 0; round < 50; ++round)
                parallelFor(100, 1, [&](std::size_t begin, std::size_t end) { total += static_cast<int>(end - begin); });
        });
    callers.clear();
    EXPECT_EQ(total.load(), 4 * 50 * 100);
}
