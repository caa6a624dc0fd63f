#pragma once

#include "app/commands/edit_command.h"

namespace gauge::app {

/// Places a mark, or moves it when it is there.
class PlaceMark : public EditCommand {
public:
    PlaceMark(CaseDocument& document, core::MarkKind kind, const core::PatientPoint& point);
};

class RemoveMark : public EditCommand {
public:
    RemoveMark(CaseDocument& document, core::MarkKind kind);
};

} // namespace gauge::app
