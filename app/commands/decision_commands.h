// Commands on the chart, the pressures to size for, the chosen size, scores and the decision.
#pragma once

#include "app/commands/entry_command.h"

namespace gauge::app {

/// Base of the commands on the choice: each changes its own fields and leaves the others.
class SizingCommand : public SingleCommand<core::SizingChoice> {
public:
    /// What is set now; defaults when nothing is.
    static core::SizingChoice present(const CaseDocument& document);

protected:
    using SingleCommand::SingleCommand;
};

/// Loads a chart; a size that was chosen in another chart is given up.
class LoadChart : public SizingCommand {
public:
    LoadChart(CaseDocument& document, std::string chartText, std::string source);
};

/// Sets decision pressure and living range; nothing: the chart's, or the defaults of core/sizing.
class SetSizingPressures : public SizingCommand {
public:
    SetSizingPressures(CaseDocument& document, std::optional<double> decisionMmHg, std::optional<double> lowestMmHg,
                       std::optional<double> highestMmHg);
};

/// Says why the pressures differ, and whether regurgitation may come back.
class SetPressureCause : public SizingCommand {
public:
    SetPressureCause(CaseDocument& document, core::PressureChange cause, bool regurgitationMayRecur);
};

/// Chooses a size; an empty name gives the choice up.
class ChooseSize : public SizingCommand {
public:
    ChooseSize(CaseDocument& document, const std::string& size);
};

class SetStrokeItems : public SingleCommand<core::Scores> {
public:
    SetStrokeItems(CaseDocument& document, std::optional<core::StrokeItems> items);
};

class SetBleedingItems : public SingleCommand<core::Scores> {
public:
    SetBleedingItems(CaseDocument& document, std::optional<core::BleedingItems> items);
};

/// Changes the words of the decision; a signature on other words is taken off.
class WriteDecision : public SingleCommand<core::Decision> {
public:
    WriteDecision(CaseDocument& document, const std::string& text);
};

/// Signs the words and the size as they stand. Whether it may be signed, Answers::whyNotSigned says.
class SignDecision : public SingleCommand<core::Decision> {
public:
    SignDecision(CaseDocument& document, const std::string& signedBy, const std::string& time);
};

/// Takes the signature off; the words stay.
class WithdrawSignature : public SingleCommand<core::Decision> {
public:
    explicit WithdrawSignature(CaseDocument& document);
};

} // namespace gauge::app
