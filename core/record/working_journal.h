// The working journal: edits on disk before they are in the case file. One line each, written and synchronised before an
// edit counts as saved; folded into the case file by saving.
//
//   {"sha256":"<64 digits>","line":{…}}\n
//
// The digest is that of the bytes of the object under "line". The first line's object is the header:
//   {"format":"ostium-gauge/journal/1","after":N,"head":"<64 digits>"|"","base":{case}|null,"case_path":"…"}
// N is the sequence number of the last edit in the case file that this journal continues and `head` the digest of that
// entry (so that a journal left beside another case of the same name is not mixed into it); a journal that stands alone
// carries what it continues as `base`. Every other line's object is an entry as in the case file's journal, with
// sequence numbers N + 1, N + 2, … A line that was torn by the end of the program fails its digest.
#pragma once

#include "core/record/case_json.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

struct WorkingHeader {
    Revision after = 0;
    std::string head;
    std::optional<CaseFile> base;
    std::string casePath; ///< where the case file was, when the journal could not be beside it
};

/// Continues `file`, which lies beside it.
WorkingHeader headerBeside(const CaseFile& file);
/// Stands alone and carries `file` as its base.
WorkingHeader headerAlone(CaseFile file, std::string casePath);

/// Each with its line feed.
std::string workingLine(const WorkingHeader& header);
std::string workingLine(const JournalEntry& entry);

struct WorkingJournal {
    std::optional<WorkingHeader> header; ///< absent: not even the header was written whole
    std::vector<JournalEntry> entries;
    std::size_t goodBytes = 0;     ///< up to the end of the last good line
    std::size_t unusableLines = 0; ///< whole lines from the first that is damaged on
    bool hasTornTail = false;      ///< ends in a line that was never finished; such an edit was not reported saved
};

/// Takes every good line up to the first that is not. @errors RecordUnreadable: a newer format; a sound line whose content
/// this version cannot read.
Result<WorkingJournal> readWorkingJournal(std::string_view text);

/// Whether the journal belongs to this case: it continues it, or edits that it already holds.
bool continues(const WorkingHeader& header, const CaseFile& file);

/// Adds the entries that the case does not have yet. Returns how many. Precondition: continues().
std::size_t addEntries(CaseFile& file, const std::vector<JournalEntry>& entries);

} // namespace gauge::core
