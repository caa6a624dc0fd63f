#pragma once

#include "app/commands/edit_command.h"

namespace gauge::app {

/// Moves the first landing plane along the axis. Moves with the same gesture number become one step of undo.
class MoveLanding : public EditCommand {
public:
    MoveLanding(CaseDocument& document, double depthMm, int gesture);

    int id() const override { return 1; }
    bool mergeWith(const QUndoCommand* other) override;

private:
    int m_gesture;
};

} // namespace gauge::app
