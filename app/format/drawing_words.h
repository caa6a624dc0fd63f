// Drawings in words: their kinds, their roles, and the caption beside them.
#pragma once

#include "core/record/case_record.h"
#include "core/record/drawing_values.h"

#include <QString>

namespace gauge::app {

QString kindName(core::DrawingKind kind); ///< "straight line", "area"
QString roleName(core::DrawingRole role); ///< "width of the ostium"; "no part of the table" for None

/// "24.3 ± 0.7 mm": the leading value of a drawing as recorded; "–" when it has none.
QString drawingValueText(const core::CaseRecord& record, const std::string& id);
QString drawnValueText(const core::DrawnValue& value);

/// What stands beside a drawing: label or role, value, and whether its plane has moved. Up to two lines.
QString drawingCaption(const core::CaseRecord& record, const std::string& id);
/// The same with a given value text (while it is drawn).
QString drawingCaption(const core::Drawing& drawing, const QString& value);

/// The leading value of a drawing in the record; nullptr when there is none.
const core::RecordedValue* leadingValue(const core::CaseRecord& record, const std::string& id);

} // namespace gauge::app
