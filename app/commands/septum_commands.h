// Commands on the crossing of the septum: what is marked, the limits, the chosen place.
#pragma once

#include "app/commands/entry_command.h"
#include "app/models/septum_point.h"

namespace gauge::app {

/// Base of the commands on the marks. Moves of one gesture (not 0) become one step of undo.
class SeptumMarksCommand : public SingleCommand<core::SeptumMarks> {
public:
    int id() const override { return 900; }
    bool mergeWith(const QUndoCommand* other) override;

protected:
    SeptumMarksCommand(CaseDocument& document, const QString& text, core::SeptumMarks marks, int gesture = 0);

private:
    int m_gesture;
};

/// Adds a point of a kind; the aortic root is replaced.
class AddSeptumPoint : public SeptumMarksCommand {
public:
    AddSeptumPoint(CaseDocument& document, SeptumPoint kind, const core::PatientPoint& point);
};

/// Precondition: there is such a point.
class MoveSeptumPoint : public SeptumMarksCommand {
public:
    MoveSeptumPoint(CaseDocument& document, SeptumPoint kind, std::size_t index, const core::PatientPoint& to, int gesture);
};

/// Precondition: there is such a point.
class RemoveSeptumPoint : public SeptumMarksCommand {
public:
    RemoveSeptumPoint(CaseDocument& document, SeptumPoint kind, std::size_t index);
};

class ClearSeptumPoints : public SeptumMarksCommand {
public:
    ClearSeptumPoints(CaseDocument& document, SeptumPoint kind);
};

class SetCrossingLimits : public SingleCommand<core::SeptumPlan> {
public:
    SetCrossingLimits(CaseDocument& document, const core::CrossingLimits& limits);
};

/// Chooses the crossing, or with nothing gives the choice up. Calls of one gesture (not 0) become one step of undo.
class ChooseCrossing : public SingleCommand<core::SeptumPlan> {
public:
    ChooseCrossing(CaseDocument& document, const std::optional<core::PatientPoint>& place, int gesture = 0);

    int id() const override { return 901; }
    bool mergeWith(const QUndoCommand* other) override;

private:
    int m_gesture;
};

} // namespace gauge::app
