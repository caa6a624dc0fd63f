// What a case is found by in the library, read off its record.
#pragma once

#include "app/library/case_library.h"
#include "core/record/case_record.h"

namespace gauge::app {

/// Patient, title and tags as the record has them; the study date and the stage are those of the latest evidence.
CaseFacts factsOf(const core::CaseRecord& record);

} // namespace gauge::app
