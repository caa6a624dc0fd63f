// What the person says of evidence: its stage, moment, probe angle and phase. What measures it follows by itself.
#pragma once

#include "app/commands/entry_command.h"
#include "core/cine/probe_angle.h"

#include <optional>
#include <string>

namespace gauge::app {

/// Precondition of all: the record holds the evidence `id`.
class ChangeStage : public EntryCommand<core::Evidence> {
public:
    /// A moment of another stage is given up.
    ChangeStage(CaseDocument& document, const std::string& id, core::Stage stage);
};

class ChangeMoment : public EntryCommand<core::Evidence> {
public:
    /// @param moment  id of a Moment, whose stage becomes that of the evidence; empty for none.
    ChangeMoment(CaseDocument& document, const std::string& id, const std::string& moment);
};

class ChangeProbeAngle : public EntryCommand<core::Evidence> {
public:
    /// @param deg  taken modulo 180; nothing for an angle that is not known.
    ChangeProbeAngle(CaseDocument& document, const std::string& id, std::optional<double> deg);
};

class ChangeBeatPhase : public EntryCommand<core::Evidence> {
public:
    ChangeBeatPhase(CaseDocument& document, const std::string& id, core::BeatPhase phase);
};

} // namespace gauge::app
