#include "app/commands/edit_command.h"

#include "app/document/case_document.h"

namespace gauge::app {

EditCommand::EditCommand(CaseDocument& document, const QString& text, core::Edit edit)
    : QUndoCommand(text), m_document(document), m_edit(std::move(edit)) {}

void EditCommand::redo() {
    m_inverse = m_document.apply(m_edit);
}

void EditCommand::undo() {
    m_document.apply(m_inverse);
}

} // namespace gauge::app
