#include "app/commands/decision_commands.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Command)
};

template <class Content, class Change> Content changed(const std::optional<core::Entry<Content>>& entry, Change change) {
    Content content = entry ? entry->content : Content{};
    change(content);
    return content;
}

core::SizingChoice withChart(const CaseDocument& document, std::string text, std::string source) {
    return changed(document.record().sizing, [&](core::SizingChoice& c) {
        if (c.chartText != text) c.size.clear();
        c.chartText = std::move(text);
        c.chartSource = std::move(source);
    });
}

} // namespace

core::SizingChoice SizingCommand::present(const CaseDocument& document) {
    return document.record().sizing ? document.record().sizing->content : core::SizingChoice{};
}

LoadChart::LoadChart(CaseDocument& document, std::string chartText, std::string source)
    : SizingCommand(document, Words::tr("Load a device chart"), withChart(document, std::move(chartText), std::move(source))) {}

SetSizingPressures::SetSizingPressures(CaseDocument& document, std::optional<double> decisionMmHg,
                                       std::optional<double> lowestMmHg, std::optional<double> highestMmHg)
    : SizingCommand(document, Words::tr("Set the pressures to size for"),
                    changed(document.record().sizing, [&](core::SizingChoice& c) {
                        c.decisionPressureMmHg = decisionMmHg;
                        c.lowestMmHg = lowestMmHg;
                        c.highestMmHg = highestMmHg;
                    })) {}

SetPressureCause::SetPressureCause(CaseDocument& document, core::PressureChange cause, bool regurgitationMayRecur)
    : SizingCommand(document, Words::tr("Say why the pressures differ"),
                    changed(document.record().sizing, [&](core::SizingChoice& c) {
                        c.cause = cause;
                        c.regurgitationMayRecur = regurgitationMayRecur;
                    })) {}

ChooseSize::ChooseSize(CaseDocument& document, const std::string& size)
    : SizingCommand(document, size.empty() ? Words::tr("Give up the chosen size") : Words::tr("Choose a size"),
                    changed(document.record().sizing, [&](core::SizingChoice& c) { c.size = size; })) {}

SetStrokeItems::SetStrokeItems(CaseDocument& document, std::optional<core::StrokeItems> items)
    : SingleCommand(document, Words::tr("Change the items of the stroke score"),
                    changed(document.record().scores, [&](core::Scores& s) { s.stroke = std::move(items); })) {}

SetBleedingItems::SetBleedingItems(CaseDocument& document, std::optional<core::BleedingItems> items)
    : SingleCommand(document, Words::tr("Change the items of the bleeding score"),
                    changed(document.record().scores, [&](core::Scores& s) { s.bleeding = std::move(items); })) {}

WriteDecision::WriteDecision(CaseDocument& document, const std::string& text)
    : SingleCommand(document, Words::tr("Write the decision"), changed(document.record().decision, [&](core::Decision& decision) {
                        if (decision.text == text) return;
                        decision = core::Decision{};
                        decision.text = text;
                    })) {}

SignDecision::SignDecision(CaseDocument& document, const std::string& signedBy, const std::string& time)
    : SingleCommand(document, Words::tr("Sign the decision"), changed(document.record().decision, [&](core::Decision& decision) {
                        decision.size = SizingCommand::present(document).size;
                        decision.signedBy = signedBy;
                        decision.time = time;
                    })) {}

WithdrawSignature::WithdrawSignature(CaseDocument& document)
    : SingleCommand(document, Words::tr("Take the signature off"), changed(document.record().decision, [](core::Decision& decision) {
                        decision.size.clear();
                        decision.signedBy.clear();
                        decision.time.clear();
                    })) {}

} // namespace gauge::app
