// The journal of edits: the truth of a case. Undoing appends the inverse; nothing is ever removed. Ordered by
// sequence number, never by clock.
#pragma once

#include "core/record/edit.h"
#include "core/result.h"

#include <string>
#include <vector>

namespace gauge::core {

struct JournalEntry {
    Revision sequence = 0;
    Edit edit;
    std::string author;
    std::string time; ///< ISO 8601 with offset; for people, decides nothing
    UnknownFields unknown = UnknownFields::object();

    bool operator==(const JournalEntry&) const = default;
};

class Journal {
public:
    Journal() = default;

    /// @errors RecordUnreadable when a sequence number is 0 or used twice; the order of `entries` does not
    /// matter.
    static Result<Journal> fromEntries(std::vector<JournalEntry> entries);

    /// The sequence number that the next entry will have, and so the revision of what it sets. Starts at 1.
    Revision nextSequence() const { return m_entries.empty() ? 1 : m_entries.back().sequence + 1; }
    void append(Edit edit, std::string author, std::string time);
    /// An entry with its number. Precondition: the number is at least nextSequence().
    void append(JournalEntry entry);
    const std::vector<JournalEntry>& entries() const { return m_entries; }

    bool operator==(const Journal&) const = default;

private:
    std::vector<JournalEntry> m_entries; ///< ascending sequence
};

/// The record that the journal builds from an empty one.
CaseRecord replay(const Journal& journal);

} // namespace gauge::core
