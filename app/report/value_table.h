// The record's values, and after them the readings that were typed in, as a flat table, one line a value: CSV for a spreadsheet and JSON for programs. Numbers are the
// record's own, with all their digits; nothing is rounded here.
#pragma once

#include "core/record/case_record.h"

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace gauge::app {

/// Columns of the table, in their order: the heads of the CSV and the keys of the JSON.
const std::vector<std::string>& valueColumns();

/// Comma-separated, UTF-8 with byte order mark, CRLF (RFC 4180). Texts that a spreadsheet would take for a formula (=, +, -,
/// @, tab or carriage return first) get an apostrophe in front; numbers stay numbers. A value that is not finite is empty.
std::string valuesCsv(const core::CaseRecord& record);

/// The same lines as objects: {"group", "id", "value", "unit", "standard_uncertainty", "components": {…}, "method", "stale",
/// "phase", "state", "sop_instance_uids", "frame", "frame_of_reference_uid", "author", "time"}; null where there is none.
nlohmann::ordered_json valuesJson(const core::CaseRecord& record);

/// Takes out who measured and what was noted about typed readings (a note may name the person who wrote a report).
void forgetPersons(core::CaseRecord& record);

/// One cell of CSV: quoted where needed, made harmless where a spreadsheet would calculate.
std::string csvText(std::string text);

} // namespace gauge::app
