// The written form of a case: JSON, UTF-8, "ostium-gauge/case/1": a snapshot of the record and the journal
// that led to it. Fields that this version does not know are kept and written again; a newer version is
// refused.
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
    UnknownFields unknown = UnknownFields::object();

    bool operator==(const CaseFile&) const = default;
};

nlohmann::json toJson(const CaseFile& file);
/// The whole file as text, indented. Bytes that are no UTF-8 are replaced by U+FFFD.
std::string caseText(const CaseFile& file);
nlohmann::json toJson(const CaseRecord& record);
nlohmann::json toJson(const Edit& edit);

/// @param text  the whole file.
/// @errors RecordUnreadable: not JSON, not a case, a newer version, or a field of the wrong kind (the message
/// names it by its path and says what was found and what is needed).
Result<CaseFile> caseFromJson(std::string_view text);

/// One edit. @errors RecordUnreadable, as above; also for an edit of an unknown kind, since leaving it out
/// would silently change the case.
Result<Edit> editFromJson(const nlohmann::json& json);

} // namespace gauge::core
