#include "core/record/working_journal.h"

#include "core/record/case_checksum.h"

#include <algorithm>

namespace gauge::core {
namespace {

using Json = nlohmann::json;

constexpr std::string_view kJournalFormat = "ostium-gauge/journal/1";
constexpr std::string_view kLineStart = R"({"sha256":")";
constexpr std::string_view kBetween = R"(","line":)";
constexpr std::string_view kAfter = "}";

std::string line(const Json& json) {
    const std::string text = json.dump(-1, ' ', false, Json::error_handler_t::replace);
    return std::string(kLineStart).append(sha256(text)).append(kBetween).append(text).append(kAfter).append("\n");
}

/// The object's text when the line is sound.
std::optional<std::string_view> soundContent(std::string_view line) {
    const std::size_t start = kLineStart.size() + kChecksumDigits + kBetween.size();
    if (line.size() < start + kAfter.size() || !line.starts_with(kLineStart) || !line.ends_with(kAfter) ||
        line.substr(kLineStart.size() + kChecksumDigits, kBetween.size()) != kBetween)
        return std::nullopt;
    const std::string_view content = line.substr(start, line.size() - start - kAfter.size());
    if (sha256(content) != line.substr(kLineStart.size(), kChecksumDigits)) return std::nullopt;
    return content;
}

std::string digestOf(const JournalEntry& entry) {
    return sha256(toJson(entry).dump(-1, ' ', false, Json::error_handler_t::replace));
}

tl::unexpected<Error> unreadable(const std::string& finding) {
    return failure(ErrorCode::RecordUnreadable, "Cannot read the journal of edits: " + finding);
}

std::string textOf(const Json& json, const char* key) {
    const auto found = json.find(key);
    return found != json.end() && found->is_string() ? found->get<std::string>() : std::string();
}

Result<WorkingHeader> headerFrom(const Json& json) {
    const std::string format = json.is_object() ? textOf(json, "format") : std::string();
    if (format != kJournalFormat)
        return unreadable("its format is \"" + format + "\", and this program reads \"" + std::string(kJournalFormat) +
                          "\". Open it with a newer Ostium Gauge.");
    WorkingHeader header;
    const auto after = json.find("after");
    if (after == json.end() || !after->is_number_unsigned())
        return unreadable("its header does not tell which edit it continues.");
    header.after = after->get<Revision>();
    header.head = textOf(json, "head");
    header.casePath = textOf(json, "case_path");
    if (const auto base = json.find("base"); base != json.end() && !base->is_null()) {
        auto file = caseFromJson(base->dump());
        if (!file) return tl::unexpected(file.error());
        header.base = std::move(*file);
    }
    return header;
}

/// Reads one sound line; false when it does not follow what was read before.
Result<bool> take(WorkingJournal& journal, const Json& json) {
    if (!journal.header) {
        auto header = headerFrom(json);
        if (!header) return tl::unexpected(header.error());
        journal.header = std::move(*header);
        return true;
    }
    auto entry = journalEntryFromJson(json);
    if (!entry) return tl::unexpected(entry.error());
    const Revision last = journal.entries.empty() ? journal.header->after : journal.entries.back().sequence;
    if (entry->sequence != last + 1) return false;
    journal.entries.push_back(std::move(*entry));
    return true;
}

} // namespace

WorkingHeader headerBeside(const CaseFile& file) {
    WorkingHeader header;
    if (file.journal.entries().empty()) return header;
    header.after = file.journal.entries().back().sequence;
    header.head = digestOf(file.journal.entries().back());
    return header;
}

WorkingHeader headerAlone(CaseFile file, std::string casePath) {
    WorkingHeader header = headerBeside(file);
    header.base = std::move(file);
    header.casePath = std::move(casePath);
    return header;
}

std::string workingLine(const WorkingHeader& header) {
    return line({{"format", std::string(kJournalFormat)},
                 {"after", header.after},
                 {"head", header.head},
                 {"base", header.base ? toJson(*header.base) : Json(nullptr)},
                 {"case_path", header.casePath}});
}

std::string workingLine(const JournalEntry& entry) {
    return line(toJson(entry));
}

Result<WorkingJournal> readWorkingJournal(std::string_view text) {
    WorkingJournal journal;
    std::size_t at = 0;
    bool isSound = true;
    while (at < text.size()) {
        const std::size_t end = text.find('\n', at);
        if (end == std::string_view::npos) {
            journal.hasTornTail = true;
            break;
        }
        const auto content = isSound ? soundContent(text.substr(at, end - at)) : std::nullopt;
        const Json json = content ? Json::parse(*content, nullptr, false) : Json(Json::value_t::discarded);
        if (json.is_discarded()) {
            isSound = false;
        } else {
            auto taken = take(journal, json);
            if (!taken) return tl::unexpected(taken.error());
            isSound = *taken;
        }
        at = end + 1;
        if (isSound)
            journal.goodBytes = at;
        else
            ++journal.unusableLines;
    }
    return journal;
}

bool continues(const WorkingHeader& header, const CaseFile& file) {
    if (header.after == 0) return true;
    const auto& entries = file.journal.entries();
    const auto found = std::lower_bound(entries.begin(), entries.end(), header.after,
                                        [](const JournalEntry& e, Revision sequence) { return e.sequence < sequence; });
    return found != entries.end() && found->sequence == header.after && digestOf(*found) == header.head;
}

std::size_t addEntries(CaseFile& file, const std::vector<JournalEntry>& entries) {
    std::size_t added = 0;
    for (const auto& entry : entries) {
        if (entry.sequence < file.journal.nextSequence()) continue;
        apply(file.record, entry.edit);
        file.journal.append(entry);
        ++added;
    }
    return added;
}

} // namespace gauge::core
