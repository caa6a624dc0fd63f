// Sentences of core/ name moments by their ids; people know them by their words.
#pragma once

#include "core/record/case_record.h"

#include <string>

namespace gauge::app {

/// The sentence with the id in each `state "echo-2"` replaced by the moment's words (evidence_words.h).
std::string withMomentWords(const core::CaseRecord& record, const std::string& sentence);

} // namespace gauge::app
