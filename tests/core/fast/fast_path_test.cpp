#include "core/fast/fast_path.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <string_view>

using namespace gauge::core;

namespace {

struct Answer {
    int value;
};

constexpr Answer kPortable{1}, kAvx2{2};

} // namespace

TEST(FastPath, IsTheBestUnlessAScopeSaysOtherwise) {
    EXPECT_EQ(fastPath(), bestFastPath());
    {
        const FastPathScope portable(FastPath::Portable);
        EXPECT_EQ(fastPath(), FastPath::Portable);
        {
            const FastPathScope best(FastPath::Avx2);
            EXPECT_EQ(fastPath(), bestFastPath()); // never more than the processor can
        }
        EXPECT_EQ(fastPath(), FastPath::Portable);
    }
    EXPECT_EQ(fastPath(), bestFastPath());
}

TEST(FastPath, FollowsTheProcessorAndTheWishForThePortableForm) {
#if defined(__x86_64__)
    const char* wish = std::getenv("OSTIUM_GAUGE_FAST_PATH");
    const bool held = wish != nullptr && std::string_view(wish) == "portable";
    EXPECT_EQ(bestFastPath() == FastPath::Avx2, !held && __builtin_cpu_supports("avx2"));
#else
    EXPECT_EQ(bestFastPath(), FastPath::Portable);
#endif
}

TEST(FastPath, ChoosesATableOnlyWhereThereIsOne) {
    EXPECT_EQ(fastOr<Answer>(kPortable, nullptr).value, 1);
    EXPECT_EQ(fastOr(kPortable, &kAvx2).value, bestFastPath() == FastPath::Avx2 ? 2 : 1);
    const FastPathScope portable(FastPath::Portable);
    EXPECT_EQ(fastOr(kPortable, &kAvx2).value, 1);
}
