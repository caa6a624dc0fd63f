// From marks of the record to their colours and words, and to the input of the measurement.
#pragma once

#include "app/drawing/palette.h"
#include "app/drawing/scanner_section_drawing.h"
#include "core/anatomy/appendage.h"
#include "core/record/case_record.h"

#include <optional>
#include <vector>

namespace gauge::app {

Role roleOf(core::MarkKind kind);

std::vector<PlacedMark> placedMarks(const core::CaseRecord& record);

/// What the measurement needs; nothing while atrium or tip is not marked.
std::optional<core::AppendageMarks> appendageMarks(const core::CaseRecord& record);

} // namespace gauge::app
