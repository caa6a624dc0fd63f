// Case files on disk: X.case.json, the working journal X.case.json.edits beside it, and earlier versions
// X.case.json.1 (the youngest) to .3. Plain functions; the open case is CaseDocument. No window, no Qt.
#pragma once

#include "app/document/disk_files.h"
#include "core/record/working_journal.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gauge::app {

inline constexpr int kEarlierVersions = 3;
inline constexpr char kCaseSuffix[] = ".case.json";

/// What lies in the working journal beside a case file.
enum class WorkingState {
    None,      ///< no journal, or nothing in it
    Continues, ///< it can be continued from `workingGoodBytes` on
    Foreign,   ///< it belongs to another case; nothing was taken from it
    Damaged,   ///< a line in its middle is damaged; what came before was taken
};

struct OpenedCase {
    core::CaseFile file;                ///< with the edits of the working journal
    core::Revision inCaseFile = 0;      ///< last edit that the case file itself holds
    std::size_t recoveredEdits = 0;     ///< taken from the working journal
    std::string digest;                 ///< SHA-256 of the case file's bytes: tells whether somebody else wrote it since
    WorkingState working = WorkingState::None;
    std::uintmax_t workingGoodBytes = 0;
    /// Why it may be looked at but not changed under this name; empty: it may.
    std::string readOnlyReason;
    /// case-file-altered, case-file-without-checksum, earlier-version, edits-recovered, edit-torn, edits-damaged,
    /// edits-of-another-case.
    std::vector<core::Notice> notices;
};

/// Reads a case and what its working journal holds beyond it. Changes nothing on disk.
/// @errors FileUnreadable; RecordUnreadable: the message says what is wrong, and names the youngest earlier version that
/// is sound, if there is one.
core::Result<OpenedCase> readCaseFile(const std::filesystem::path& file);

/// A journal that stands alone: of a case that was never saved, or whose folder could not be written.
core::Result<OpenedCase> readLoneJournal(const std::filesystem::path& journal);

/// Writes the case in one step and keeps what was there as the earlier version 1. @errors OutputUnwritable.
/// @return the digest of what was written.
core::Result<std::string> writeCaseFile(const std::filesystem::path& file, const core::CaseFile& content);

std::filesystem::path workingPath(const std::filesystem::path& caseFile);

/// The youngest of the earlier versions whose checksum matches.
std::optional<std::filesystem::path> earlierVersion(const std::filesystem::path& caseFile);

/// A name for the journal of a case without a file, in `folder`, which is made where needed.
std::filesystem::path freshLoneJournal(const std::filesystem::path& folder);

/// A case that was never saved and whose program has ended.
struct LeftCase {
    std::filesystem::path journal;
    std::string casePath; ///< of a case that has a file but could not be written there; else empty
    std::string patientName;
    std::string lastEdit; ///< ISO 8601, for people
    std::size_t edits = 0;
};

/// Those in `folder`, by name. Journals that are held by a running program, or cannot be read, are left out.
std::vector<LeftCase> leftCases(const std::filesystem::path& folder);

} // namespace gauge::app
