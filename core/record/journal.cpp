#include "core/record/journal.h"

#include <algorithm>
#include <cassert>

namespace gauge::core {

Result<Journal> Journal::fromEntries(std::vector<JournalEntry> entries) {
    std::sort(entries.begin(), entries.end(),
              [](const JournalEntry& a, const JournalEntry& b) { return a.sequence < b.sequence; });
    if (!entries.empty() && entries.front().sequence == 0)
        return failure(
            ErrorCode::RecordUnreadable,
            "Cannot read the case: an entry of its journal has the sequence number 0; they start at 1.");
    const auto twice = std::adjacent_find(entries.begin(), entries.end(), [](const auto& a, const auto& b) {
        return a.sequence == b.sequence;
    });
    if (twice != entries.end())
        return failure(ErrorCode::RecordUnreadable,
                       "Cannot read the case: two entries of its journal have the sequence "
                       "number " +
                           std::to_string(twice->sequence) + "; the order of the edits is not known.");
    Journal journal;
    journal.m_entries = std::move(entries);
    return journal;
}

void Journal::append(Edit edit, std::string author, std::string time) {
    JournalEntry entry;
    entry.sequence = nextSequence();
    entry.edit = std::move(edit);
    entry.author = std::move(author);
    entry.time = std::move(time);
    m_entries.push_back(std::move(entry));
}

void Journal::append(JournalEntry entry) {
    assert(entry.sequence >= nextSequence());
    m_entries.push_back(std::move(entry));
}

CaseRecord replay(const Journal& journal) {
    CaseRecord record;
    for (const auto& entry : journal.entries())
        apply(record, entry.edit);
    return record;
}

} // namespace gauge::core
