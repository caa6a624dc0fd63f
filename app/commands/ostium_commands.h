#pragma once

#include "app/commands/edit_command.h"

namespace gauge::app {

/// Makes a plane (as a rule the program's proposal) the person's own ostium.
class ConfirmOstium : public EditCommand {
public:
    ConfirmOstium(CaseDocument& document, const core::Plane& plane);
};

/// Gives the person's plane up: landmarks or the proposal decide again.
class ReleaseOstium : public EditCommand {
public:
    explicit ReleaseOstium(CaseDocument& document);
};

} // namespace gauge::app
