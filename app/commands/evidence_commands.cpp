#include "app/commands/evidence_commands.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("EvidenceCommands", text);
}

template <class Change> core::Evidence changed(const CaseDocument& document, const std::string& id, Change&& change) {
    core::Evidence evidence = document.record().evidence.at(id).content;
    change(evidence);
    return evidence;
}

} // namespace

ChangeStage::ChangeStage(CaseDocument& document, const std::string& id, core::Stage stage)
    : EntryCommand(document, tr("Change the stage"), id, changed(document, id, [&](core::Evidence& e) {
                       e.stage = stage;
                       const auto moment = document.record().moments.find(e.moment);
                       if (moment == document.record().moments.end() || moment->second.content.circulation.stage != stage)
                           e.moment.clear();
                   })) {}

ChangeMoment::ChangeMoment(CaseDocument& document, const std::string& id, const std::string& moment)
    : EntryCommand(document, tr("Change the moment"), id, changed(document, id, [&](core::Evidence& e) {
                       e.moment = moment;
                       if (const auto found = document.record().moments.find(moment);
                           found != document.record().moments.end())
                           e.stage = found->second.content.circulation.stage;
                   })) {}

ChangeProbeAngle::ChangeProbeAngle(CaseDocument& document, const std::string& id, std::optional<double> deg)
    : EntryCommand(document, tr("Change the probe angle"), id, changed(document, id, [&](core::Evidence& e) {
                       const auto angle = deg ? core::probeAngle(*deg, core::ProbeAngleSource::Person) : std::nullopt;
                       e.probeAngleDeg = angle ? std::optional(angle->deg) : std::nullopt;
                   })) {}

ChangeBeatPhase::ChangeBeatPhase(CaseDocument& document, const std::string& id, core::BeatPhase phase)
    : EntryCommand(document, tr("Change the phase"), id,
                   changed(document, id, [&](core::Evidence& e) { e.phase = phase; })) {}

} // namespace gauge::app
