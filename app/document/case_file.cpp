#include "app/document/case_file.h"

#include "core/record/case_checksum.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <unistd.h>

namespace gauge::app {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kLoneSuffix = ".edits";

core::Revision lastOf(const core::Journal& journal) {
    return journal.nextSequence() - 1;
}

/// ".case.json.1" and so on.
bool isEarlierVersion(const fs::path& file) {
    const std::string name = file.filename().string();
    const std::size_t dot = name.rfind('.');
    return dot != std::string::npos && dot + 1 < name.size() && name.size() - dot <= 3 &&
           name.find_first_not_of("0123456789", dot + 1) == std::string::npos && name.substr(0, dot).ends_with(kCaseSuffix);
}

std::string adviceOnEarlier(const fs::path& file) {
    if (const auto earlier = earlierVersion(file))
        return " An earlier version is sound and can be opened: " + earlier->string() + ".";
    return " There is no earlier version of it here; look for a copy elsewhere.";
}

void judgeChecksum(OpenedCase& opened, const fs::path& file, std::string_view text) {
    const core::Checksum checksum = core::checksumOf(text);
    if (checksum == core::Checksum::Differs) {
        opened.readOnlyReason = "The case in " + file.string() +
                                " was damaged, or altered by another program: its checksum does not match its content.";
        opened.notices.push_back({"case-file-altered",
                                  opened.readOnlyReason +
                                      " It was opened for reading only. Compare every number with the images before you "
                                      "rely on it; save it under another name to go on with it." +
                                      adviceOnEarlier(file),
                                  {{"path", file.string()}}});
    } else if (checksum == core::Checksum::Absent) {
        opened.notices.push_back({"case-file-without-checksum",
                                  "The case in " + file.string() +
                                      " carries no checksum, so whether it is as it was written cannot be told.",
                                  {{"path", file.string()}}});
    }
    if (!isEarlierVersion(file)) return;
    if (opened.readOnlyReason.empty())
        opened.readOnlyReason = file.string() + " is an earlier version of a case.";
    opened.notices.push_back({"earlier-version",
                              file.string() + " is an earlier version of a case: it was opened for reading only. Save it "
                                              "under another name to go on with it.",
                              {{"path", file.string()}}});
}

std::string editCount(std::size_t count) {
    return count == 1 ? "One edit" : std::to_string(count) + " edits";
}

void tell(OpenedCase& opened, const core::WorkingJournal& journal, const fs::path& working) {
    const std::vector<core::Fact> path{{"path", working.string()}};
    if (opened.recoveredEdits > 0)
        opened.notices.push_back({"edits-recovered",
                                  editCount(opened.recoveredEdits) +
                                      " that had not reached the case file before the program ended " +
                                      (opened.recoveredEdits == 1 ? "was" : "were") + " taken from " + working.string() + ".",
                                  path});
    if (journal.hasTornTail)
        opened.notices.push_back({"edit-torn",
                                  "The last edit was being written when the program ended and is left out; it had not been "
                                  "reported as saved.",
                                  path});
    if (journal.unusableLines > 0)
        opened.notices.push_back({"edits-damaged",
                                  "In " + working.string() + " a line is damaged: " + editCount(journal.unusableLines) +
                                      " from there on could not be taken. The file is kept as it is beside the case. Go "
                                      "through the case before you rely on it.",
                                  path});
}

/// Takes what the working journal holds beyond the case.
core::Result<void> takeWorking(OpenedCase& opened, const fs::path& working) {
    std::error_code code;
    if (!fs::exists(working, code) || fs::file_size(working, code) == 0) return {};
    const auto text = readWhole(working);
    if (!text) return tl::unexpected(text.error());
    auto journal = core::readWorkingJournal(*text);
    if (!journal) return tl::unexpected(journal.error());
    if (!journal->header) {
        if (journal->unusableLines == 0) return {}; // ended while the first line was being written
        opened.working = WorkingState::Damaged;
        tell(opened, *journal, working);
        return {};
    }
    if (!core::continues(*journal->header, opened.file)) {
        opened.working = WorkingState::Foreign;
        opened.notices.push_back({"edits-of-another-case",
                                  "The edits in " + working.string() +
                                      " belong to another case or another version of it. None was taken; the file is kept.",
                                  {{"path", working.string()}}});
        return {};
    }
    opened.recoveredEdits = core::addEntries(opened.file, journal->entries);
    opened.working = journal->unusableLines > 0 ? WorkingState::Damaged : WorkingState::Continues;
    opened.workingGoodBytes = journal->goodBytes;
    tell(opened, *journal, working);
    return {};
}

} // namespace

fs::path workingPath(const fs::path& caseFile) {
    return fs::path(caseFile).concat(kLoneSuffix);
}

std::optional<fs::path> earlierVersion(const fs::path& caseFile) {
    for (int number = 1; number <= kEarlierVersions; ++number) {
        const fs::path file = fs::path(caseFile).concat("." + std::to_string(number));
        const auto text = readWhole(file);
        if (text && core::checksumOf(*text) == core::Checksum::Matches && core::caseFromJson(*text)) return file;
    }
    return std::nullopt;
}

core::Result<OpenedCase> readCaseFile(const fs::path& file) {
    const auto text = readWhole(file);
    if (!text) return tl::unexpected(text.error());
    auto content = core::caseFromJson(*text);
    if (!content) {
        core::Error error = content.error();
        error.message = "In " + file.string() + ": " + error.message;
        // A newer version of the format is no damage.
        if (core::checksumOf(*text) != core::Checksum::Matches) error.message += adviceOnEarlier(file);
        error.facts.push_back({"path", file.string()});
        return tl::unexpected(std::move(error));
    }
    OpenedCase opened;
    opened.file = std::move(*content);
    opened.inCaseFile = lastOf(opened.file.journal);
    opened.digest = core::sha256(*text);
    judgeChecksum(opened, file, *text);
    if (!isEarlierVersion(file))
        if (const auto taken = takeWorking(opened, workingPath(file)); !taken) return tl::unexpected(taken.error());
    return opened;
}

core::Result<OpenedCase> readLoneJournal(const fs::path& journal) {
    const auto text = readWhole(journal);
    if (!text) return tl::unexpected(text.error());
    auto read = core::readWorkingJournal(*text);
    if (!read) return tl::unexpected(read.error());
    if (!read->header)
        return core::failure(core::ErrorCode::RecordUnreadable,
                             "Cannot read the journal of edits " + journal.string() +
                                 ": its first line is damaged, so no edit can be taken from it.",
                             {{"path", journal.string()}});
    OpenedCase opened;
    if (read->header->base) opened.file = std::move(*read->header->base);
    opened.recoveredEdits = core::addEntries(opened.file, read->entries);
    opened.working = read->unusableLines > 0 ? WorkingState::Damaged : WorkingState::Continues;
    opened.workingGoodBytes = read->goodBytes;
    tell(opened, *read, journal);
    return opened;
}

core::Result<std::string> writeCaseFile(const fs::path& file, const core::CaseFile& content) {
    const std::string text = core::caseText(content);
    // Written first under the name of the next version, so that a full disk leaves the earlier versions alone too.
    const fs::path fresh = fs::path(file).concat(".next");
    if (auto written = writeWhole(fresh, text); !written) {
        core::Error error = written.error();
        error.message = "Cannot save the case as " + file.string() + ". " + error.message;
        return tl::unexpected(std::move(error));
    }
    keepEarlier(file, kEarlierVersions);
    if (auto placed = putInPlace(fresh, file); !placed) return tl::unexpected(placed.error());
    return core::sha256(text);
}

fs::path freshLoneJournal(const fs::path& folder) {
    static std::atomic<int> count{0};
    std::error_code code;
    fs::create_directories(folder, code);
    // The time is part of the name only to make it new; nothing is ordered by it.
    const auto ticks = std::chrono::system_clock::now().time_since_epoch().count();
    return folder / ("case-" + std::to_string(ticks) + "-" + std::to_string(::getpid()) + "-" +
                     std::to_string(++count) + std::string(kLoneSuffix));
}

std::vector<LeftCase> leftCases(const fs::path& folder) {
    std::vector<LeftCase> found;
    std::error_code code;
    for (const auto& item : fs::directory_iterator(folder, code)) {
        const fs::path& file = item.path();
        if (!item.is_regular_file(code) || file.extension() != kLoneSuffix || isHeld(file)) continue;
        const auto text = readWhole(file);
        const auto journal = text ? core::readWorkingJournal(*text) : tl::unexpected(text.error());
        if (!journal || !journal->header || journal->entries.empty()) continue;
        LeftCase left{file, journal->header->casePath, {}, journal->entries.back().time, 0};
        core::CaseFile content = journal->header->base.value_or(core::CaseFile());
        left.edits = core::addEntries(content, journal->entries);
        if (content.record.patient) left.patientName = content.record.patient->content.name;
        found.push_back(std::move(left));
    }
    std::sort(found.begin(), found.end(), [](const LeftCase& a, const LeftCase& b) { return a.journal < b.journal; });
    return found;
}

} // namespace gauge::app
