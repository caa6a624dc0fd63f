// Release findings as JSON, format "ostium-gauge/release/1":
//
//   {"format", "states": [{"stage", "time", "inner_catheter_withdrawn",
//     "findings": [{"quantity", "value", "standard_uncertainty", "view", "side", "seen_by", "source"}]}]}
//
// Readers ignore keys they do not know.
#pragma once

#include "core/release/release_check.h"

#include <nlohmann/json.hpp>
#include <string_view>
#include <vector>

namespace gauge::core {

nlohmann::ordered_json releaseJson(const std::vector<ReleaseState>& states);

/// @errors RecordUnreadable naming the state and finding for what is no such document; those of `validate`.
Result<std::vector<ReleaseState>> releaseFromJson(std::string_view text);

/// The checked rows and sentences of one state: {"stage", "rows": [{"view", "what", "value", "unit", "least",
/// "greatest", "basis", "verdict": "within|outside|no-range", "near_limit", "seen_by"}], "not_seen": [...], "notices": [...]}
nlohmann::ordered_json reportJson(const ReleaseState& state, const ReleaseReport& report);

} // namespace gauge::core
