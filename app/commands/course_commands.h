// Commands on the patient's course: moments, typed readings, stasis, looks at the implant; and on values that are confirmed
// although something that they were measured on has changed.
#pragma once

#include "app/commands/entry_command.h"

namespace gauge::app {

/// Adds a moment, or changes it; its id is what readings name.
class SetMoment : public EntryCommand<core::Moment> {
public:
    SetMoment(CaseDocument& document, const std::string& id, core::Moment moment);
};

class RemoveMoment : public EntryCommand<core::Moment> {
public:
    RemoveMoment(CaseDocument& document, const std::string& id);
};

class SetTypedReading : public EntryCommand<core::TypedReading> {
public:
    SetTypedReading(CaseDocument& document, const std::string& id, core::TypedReading reading);
};

class RemoveTypedReading : public EntryCommand<core::TypedReading> {
public:
    RemoveTypedReading(CaseDocument& document, const std::string& id);
};

class SetStasis : public EntryCommand<core::StasisFinding> {
public:
    SetStasis(CaseDocument& document, const std::string& id, core::StasisFinding finding);
};

class RemoveStasis : public EntryCommand<core::StasisFinding> {
public:
    RemoveStasis(CaseDocument& document, const std::string& id);
};

/// Adds a look at the implant, or changes its findings.
class SetReleaseLook : public EntryCommand<core::ReleaseState> {
public:
    SetReleaseLook(CaseDocument& document, const std::string& id, core::ReleaseState look);
};

class RemoveReleaseLook : public EntryCommand<core::ReleaseState> {
public:
    RemoveReleaseLook(CaseDocument& document, const std::string& id);
};

/// The person says that stale values still hold: they count as made from their inputs as these are now.
class ConfirmValues : public EditCommand {
public:
    /// @param ids  values of that group; those that are not stale stay as they are.
    ConfirmValues(CaseDocument& document, const std::string& group, const std::vector<std::string>& ids);
};

/// An id that no entry of that kind has: "m1", "m2"… for prefix "m".
template <class Content> std::string freeId(const core::CaseRecord& record, const std::string& prefix) {
    const auto& entries = core::entriesOf<Content>(record);
    for (int number = 1;; ++number)
        if (std::string id = prefix + std::to_string(number); !entries.contains(id)) return id;
}

} // namespace gauge::app
