#pragma once

#include "app/commands/edit_command.h"

#include <optional>

namespace gauge::app {

/// Changes of the landing planes. Those of the first plane with the same gesture number become one step of undo.
class LandingCommand : public EditCommand {
public:
    int id() const override { return m_id; }
    bool mergeWith(const QUndoCommand* other) override;

protected:
    LandingCommand(CaseDocument& document, const QString& text, core::LandingPlanes landing, int id, int gesture);

private:
    int m_id, m_gesture;
};

/// Moves the first landing plane along the axis; a tilt stays.
class MoveLanding : public LandingCommand {
public:
    MoveLanding(CaseDocument& document, double depthMm, int gesture);
};

/// Gives the first landing plane a normal of its own, at the depth where it is.
class TiltLanding : public LandingCommand {
public:
    /// @param normal  towards the tip, of any length but 0.
    TiltLanding(CaseDocument& document, const core::PatientVector& normal, int gesture);
};

/// Takes the tilt back: the plane is square to the axis again.
class SquareLanding : public LandingCommand {
public:
    explicit SquareLanding(CaseDocument& document);
};

/// A second landing plane along the axis, mm beyond the ostium, or none. Further ones stay. Changes of one gesture become one step
/// of undo.
class SetSecondLanding : public LandingCommand {
public:
    SetSecondLanding(CaseDocument& document, std::optional<double> depthMm, int gesture);
};

/// The plug plane's distance beyond the ridge tip, or none. Changes of one gesture become one step of undo.
class SetPlugPlane : public LandingCommand {
public:
    SetPlugPlane(CaseDocument& document, std::optional<double> beyondRidgeMm, int gesture);
};

} // namespace gauge::app
