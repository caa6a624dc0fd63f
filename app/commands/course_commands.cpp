#include "app/commands/course_commands.h"

#include <QCoreApplication>
#include <algorithm>

namespace gauge::app {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Command)
};

core::Moment named(core::Moment moment, const std::string& id) {
    moment.circulation.state = id;
    return moment;
}

core::SetValues confirmed(const CaseDocument& document, const std::string& group, const std::vector<std::string>& ids) {
    const core::CaseRecord& record = document.record();
    core::SetValues edit{{}, group};
    for (core::RecordedValue value : record.values) {
        if (value.group != group) continue;
        if (std::find(ids.begin(), ids.end(), value.id) != ids.end())
            for (core::InputRevision& input : value.inputs)
                input.revision = core::revisionOf(record, input.id);
        edit.values.push_back(std::move(value));
    }
    return edit;
}

} // namespace

SetMoment::SetMoment(CaseDocument& document, const std::string& id, core::Moment moment)
    : EntryCommand(document,
                   document.record().moments.contains(id) ? Words::tr("Change a moment of the course")
                                                          : Words::tr("Add a moment to the course"),
                   id, named(std::move(moment), id)) {}

RemoveMoment::RemoveMoment(CaseDocument& document, const std::string& id)
    : EntryCommand(document, Words::tr("Remove a moment of the course"), id, std::nullopt) {}

SetTypedReading::SetTypedReading(CaseDocument& document, const std::string& id, core::TypedReading reading)
    : EntryCommand(document, Words::tr("Type a reading in"), id, std::move(reading)) {}

RemoveTypedReading::RemoveTypedReading(CaseDocument& document, const std::string& id)
    : EntryCommand(document, Words::tr("Remove a typed reading"), id, std::nullopt) {}

SetStasis::SetStasis(CaseDocument& document, const std::string& id, core::StasisFinding finding)
    : EntryCommand(document, Words::tr("Record stasis"), id, std::move(finding)) {}

RemoveStasis::RemoveStasis(CaseDocument& document, const std::string& id)
    : EntryCommand(document, Words::tr("Remove a finding of stasis"), id, std::nullopt) {}

SetReleaseLook::SetReleaseLook(CaseDocument& document, const std::string& id, core::ReleaseState look)
    : EntryCommand(document, Words::tr("Record a look at the implant"), id, std::move(look)) {}

RemoveReleaseLook::RemoveReleaseLook(CaseDocument& document, const std::string& id)
    : EntryCommand(document, Words::tr("Remove a look at the implant"), id, std::nullopt) {}

ConfirmValues::ConfirmValues(CaseDocument& document, const std::string& group, const std::vector<std::string>& ids)
    : EditCommand(document, Words::tr("Confirm a value"), confirmed(document, group, ids)) {}

} // namespace gauge::app
