#pragma once

#include "app/commands/edit_command.h"

namespace gauge::app {

/// Makes a plane (as a rule the program's proposal) the person's own ostium.
class ConfirmOstium : public EditCommand {
public:
    ConfirmOstium(CaseDocument& document, const core::Plane& plane);
};

/// The ostium plane moved along its normal or within the picture: the person's own from then on. Moves (or tilts) of one
/// gesture are one step of undo; so are a move and a tilt of one gesture.
class MoveOstiumPlane : public EditCommand {
public:
    MoveOstiumPlane(CaseDocument& document, const core::Plane& plane, int gesture);

    int id() const override { return 2; }
    bool mergeWith(const QUndoCommand* other) override;

protected:
    MoveOstiumPlane(CaseDocument& document, const QString& text, const core::Plane& plane, int gesture);

private:
    int m_gesture;
};

/// The ostium plane tilted about its point.
class TiltOstiumPlane : public MoveOstiumPlane {
public:
    TiltOstiumPlane(CaseDocument& document, const core::Plane& plane, int gesture);
};

/// Gives the person's plane up: landmarks or the proposal decide again.
class ReleaseOstium : public EditCommand {
public:
    explicit ReleaseOstium(CaseDocument& document);
};

} // namespace gauge::app
