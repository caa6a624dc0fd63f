#include "core/record/journal.h"

#include "tests/core/record/random_edits.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace gauge::core;

TEST(Journal, NumbersItsEntriesFromOneOn) {
    Journal journal;
    EXPECT_EQ(journal.nextSequence(), 1u);
    journal.append(SetLanding{}, "reader", "");
    journal.append(SetLanding{}, "reader", "");
    EXPECT_EQ(journal.entries().back().sequence, 2u);
    EXPECT_EQ(journal.nextSequence(), 3u);
}

TEST(Journal, OrderFollowsTheNumbersNotTheFileNorTheClock) {
    EXPECT_TRUE(rc::check("shuffled entries", [] {
        const Journal journal = testing_edits::journal();
        auto entries = journal.entries();
        std::reverse(entries.begin(), entries.end());
        const auto read = Journal::fromEntries(entries);
        RC_ASSERT(read.has_value());
        RC_ASSERT(*read == journal);
        RC_ASSERT(replay(*read) == replay(journal));
    }));
}

TEST(Journal, RefusesANumberUsedTwice) {
    JournalEntry entry;
    entry.sequence = 4;
    const auto read = Journal::fromEntries({entry, entry});
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().message,
              "Cannot read the case: two entries of its journal have the sequence number 4; the "
              "order of the edits is not known.");
    entry.sequence = 0;
    EXPECT_FALSE(Journal::fromEntries({entry}));
}
