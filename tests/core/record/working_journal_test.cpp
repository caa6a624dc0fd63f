#include "core/record/working_journal.h"

#include "core/record/case_checksum.h"
#include "tests/core/record/random_edits.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge::core;
using ::testing::HasSubstr;

namespace {

CaseFile caseOf(Journal journal) {
    CaseFile file;
    file.record = replay(journal);
    file.journal = std::move(journal);
    return file;
}

/// A case that holds the first `inFile` entries, and the journal's text with the rest.
struct Split {
    CaseFile whole, file;
    std::string text;
    std::vector<std::size_t> lineEnds; ///< of the entries
};

Split split(const Journal& journal, std::size_t inFile) {
    Split made;
    made.whole = caseOf(journal);
    const auto& entries = journal.entries();
    made.file = caseOf(*Journal::fromEntries({entries.begin(), entries.begin() + static_cast<std::ptrdiff_t>(inFile)}));
    made.text = workingLine(headerBeside(made.file));
    for (std::size_t i = inFile; i < entries.size(); ++i) {
        made.text += workingLine(entries[i]);
        made.lineEnds.push_back(made.text.size());
    }
    return made;
}

} // namespace

TEST(WorkingJournal, BringsTheCaseToWhereItWas) {
    EXPECT_TRUE(rc::check("file and journal together", [] {
        const Journal journal = testing_edits::journal();
        const auto inFile = *rc::gen::inRange<std::size_t>(0, journal.entries().size() + 1);
        Split s = split(journal, inFile);
        const auto read = readWorkingJournal(s.text);
        RC_ASSERT(read.has_value() && read->header.has_value());
        RC_ASSERT(continues(*read->header, s.file));
        RC_ASSERT(addEntries(s.file, read->entries) == journal.entries().size() - inFile);
        RC_ASSERT(s.file == s.whole);
        // Also when the case file was saved after all and only the journal was not emptied.
        RC_ASSERT(continues(*read->header, s.whole));
        RC_ASSERT(addEntries(s.whole, read->entries) == 0u);
    }));
}

TEST(WorkingJournal, CutAnywhereLosesTheTornLineOnly) {
    EXPECT_TRUE(rc::check("cut", [] {
        const Split s = split(testing_edits::journal(), 0);
        const auto cut = *rc::gen::inRange<std::size_t>(0, s.text.size() + 1);
        const auto read = readWorkingJournal(std::string_view(s.text).substr(0, cut));
        RC_ASSERT(read.has_value());
        const auto whole = static_cast<std::size_t>(
            std::count_if(s.lineEnds.begin(), s.lineEnds.end(), [&](std::size_t end) { return end <= cut; }));
        RC_ASSERT(read->entries.size() == whole);
        RC_ASSERT(read->unusableLines == 0u);
        RC_ASSERT(read->goodBytes <= cut);
        RC_ASSERT(read->hasTornTail == (read->goodBytes < cut));
    }));
}

TEST(WorkingJournal, StopsAtADamagedLineAndCountsWhatItCouldNotTake) {
    Journal journal;
    for (int i = 0; i < 4; ++i)
        journal.append(SetLanding{}, "reader", "");
    Split s = split(journal, 0);
    s.text[s.lineEnds[1] + 80] ^= 1;
    const auto read = readWorkingJournal(s.text);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->entries.size(), 2u);
    EXPECT_EQ(read->unusableLines, 2u);
    EXPECT_EQ(read->goodBytes, s.lineEnds[1]);
}

TEST(WorkingJournal, DoesNotContinueAnotherCase) {
    Journal ours, theirs;
    ours.append(SetLanding{}, "reader", "today");
    theirs.append(SetLanding{}, "reader", "yesterday");
    const auto header = headerBeside(caseOf(ours));
    EXPECT_TRUE(continues(header, caseOf(ours)));
    EXPECT_FALSE(continues(header, caseOf(theirs)));
    EXPECT_FALSE(continues(header, CaseFile())) << "an older state of the case";
}

TEST(WorkingJournal, StandsAloneWithItsBase) {
    Journal journal = [] {
        Journal made;
        made.append(SetLanding{}, "reader", "");
        return made;
    }();
    CaseFile file = caseOf(journal);
    file.imagesFolder = "/invented/folder";
    const auto read = readWorkingJournal(workingLine(headerAlone(file, "/invented/x.case.json")));
    ASSERT_TRUE(read && read->header && read->header->base);
    EXPECT_TRUE(*read->header->base == file);
    EXPECT_EQ(read->header->casePath, "/invented/x.case.json");
}

TEST(WorkingJournal, OrderIsByNumberNotByClock) {
    Journal journal;
    journal.append(SetLanding{}, "reader", "2031-02-03T10:00:00+01:00");
    journal.append(SetLanding{}, "reader", "1999-01-01T00:00:00+00:00"); // the clock was set back
    const Split s = split(journal, 0);
    const auto read = readWorkingJournal(s.text);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->entries.size(), 2u);
    EXPECT_EQ(read->entries.back().time, "1999-01-01T00:00:00+00:00");
}

TEST(WorkingJournal, RefusesANewerFormatInWords) {
    const std::string content = R"({"format":"ostium-gauge/journal/2"})";
    const auto read = readWorkingJournal(R"({"sha256":")" + sha256(content) + R"(","line":)" + content + "}\n");
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().message, HasSubstr("its format is \"ostium-gauge/journal/2\""));
    EXPECT_THAT(read.error().message, HasSubstr("Open it with a newer Ostium Gauge."));
}
