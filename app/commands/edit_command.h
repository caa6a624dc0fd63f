// The undoable form of an edit: redo applies it, undo applies its inverse, and both enter the journal. The
// commands of the program derive from it: mark_commands.h, ostium_commands.h, landing_commands.h,
// images_commands.h.
#pragma once

#include "core/record/edit.h"

#include <QUndoCommand>

namespace gauge::app {

class CaseDocument;

class EditCommand : public QUndoCommand {
public:
    EditCommand(CaseDocument& document, const QString& text, core::Edit edit);

    const core::Edit& edit() const { return m_edit; }
    void redo() override;
    void undo() override;

protected:
    void replaceEdit(core::Edit edit) { m_edit = std::move(edit); }

private:
    CaseDocument& m_document;
    core::Edit m_edit;
    core::Edit m_inverse;
};

} // namespace gauge::app
