#pragma once

#include "app/commands/edit_command.h"

#include <optional>

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

/// The plug plane's distance beyond the ridge tip, or none. Changes of one gesture become one step of undo.
class SetPlugPlane : public EditCommand {
public:
    SetPlugPlane(CaseDocument& document, std::optional<double> beyondRidgeMm, int gesture);

    int id() const override { return 3; }
    bool mergeWith(const QUndoCommand* other) override;

private:
    int m_gesture;
};

} // namespace gauge::app
