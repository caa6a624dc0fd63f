// The written form of a case: JSON, UTF-8, "ostium-gauge/case/2": a snapshot of the record, the journal that led to it
// and the file's SHA-256 (case_checksum.h). Version 1, which knew the CT's inputs and values only, is read too; a newer
// version is refused. Fields that this version does not know are kept and written again, those of an entry also within
// its objects. The schema: resources/schemas/case.schema.json.
#pragma once

#include "core/record/journal.h"
#include "core/result.h"

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

namespace gauge::core {

struct CaseFile {
    CaseRecord record;
    Journal journal;
    /// Where the images were last seen, a hint only: relative to the case file's folder when below it. Not part of what was
    /// decided, so no edit sets it; left out when a case is given away without identity.
    std::string imagesFolder;
    UnknownFields unknown = UnknownFields::object();

    bool operator==(const CaseFile&) const = default;
};

nlohmann::json toJson(const CaseFile& file);
/// The whole file as text, indented, with its checksum. Bytes that are no UTF-8 are replaced by U+FFFD.
std::string caseText(const CaseFile& file);
nlohmann::json toJson(const CaseRecord& record);
nlohmann::json toJson(const Edit& edit);
nlohmann::json toJson(const JournalEntry& entry);

/// @param text  the whole file. Its checksum is not looked at: ask checksumOf().
/// @errors RecordUnreadable: not JSON, not a case, a newer version, or a field of the wrong kind (the message
/// names it by its path and says what was found and what is needed).
Result<CaseFile> caseFromJson(std::string_view text);

/// One edit. @errors RecordUnreadable, as above; also for an edit of an unknown kind, since leaving it out
/// would silently change the case.
Result<Edit> editFromJson(const nlohmann::json& json);
Result<JournalEntry> journalEntryFromJson(const nlohmann::json& json);

} // namespace gauge::core
