// Commands on the working projections: how far the C-arm can be turned, how the patient will lie, which views are chosen.
#pragma once

#include "app/commands/entry_command.h"

namespace gauge::app {

/// Base of the commands: each changes its own fields and leaves the others.
class ProjectionCommand : public SingleCommand<core::ProjectionChoice> {
public:
    /// What is set now; defaults when nothing is.
    static core::ProjectionChoice present(const CaseDocument& document);

protected:
    using SingleCommand::SingleCommand;
};

/// Precondition: core::validate(reach).
class SetCArmReach : public ProjectionCommand {
public:
    SetCArmReach(CaseDocument& document, const core::CArmReach& reach);
};

/// Nothing: the patient will lie as at CT. Precondition: core::validate(*turn).
class SetPatientTurn : public ProjectionCommand {
public:
    SetPatientTurn(CaseDocument& document, const std::optional<core::PatientTurn>& turn);
};

/// Takes a view; one chosen for the same aim and plane before gives way to it, and the same view is not taken twice.
class ChooseView : public ProjectionCommand {
public:
    ChooseView(CaseDocument& document, const core::ChosenView& view);
};

/// Gives up the view with this place in the list.
class DropView : public ProjectionCommand {
public:
    DropView(CaseDocument& document, std::size_t place);
};

} // namespace gauge::app
