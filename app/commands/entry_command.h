// Commands on what a case holds by id or once (core/record/entries.h). The commands of a kind derive from these and say in
// their names what the person did: PlaceDrawing, MoveDrawing, ChooseSize…
#pragma once

#include "app/commands/edit_command.h"
#include "app/document/case_document.h"

#include <utility>

namespace gauge::app {

/// Sets, or with nothing removes, the entry with this id. Commands of one kind on one id with the same gesture number (not 0)
/// become one step of undo.
template <class Content> class EntryCommand : public EditCommand {
public:
    EntryCommand(CaseDocument& document, const QString& text, std::string id, std::optional<Content> content,
                 int gesture = 0)
        : EditCommand(document, text, edit(document, std::move(id), std::move(content))), m_gesture(gesture) {}

    int id() const override { return 100 + static_cast<int>(editIndex<core::SetEntry<Content>>()); }
    bool mergeWith(const QUndoCommand* other) override {
        const auto* next = static_cast<const EntryCommand*>(other);
        if (m_gesture == 0 || next->m_gesture != m_gesture || next->entryId() != entryId()) return false;
        replaceEdit(next->EditCommand::edit());
        return true;
    }

private:
    template <class One, std::size_t I = 0> static constexpr std::size_t editIndex() {
        if constexpr (std::is_same_v<std::variant_alternative_t<I, core::Edit>, One>)
            return I;
        else
            return editIndex<One, I + 1>();
    }
    const std::string& entryId() const { return std::get<core::SetEntry<Content>>(EditCommand::edit()).id; }
    static core::Edit edit(CaseDocument& document, std::string id, std::optional<Content> content) {
        core::SetEntry<Content> set{std::move(id), std::nullopt};
        if (content) {
            set.entry.emplace();
            // Fields that another version wrote beside this content stay.
            const auto& present = core::entriesOf<Content>(document.record());
            if (const auto found = present.find(set.id); found != present.end()) set.entry->unknown = found->second.unknown;
            set.entry->content = std::move(*content);
            set.entry->revision = document.nextRevision();
        }
        return set;
    }

    int m_gesture;
};

/// The same for what a case holds once.
template <class Content> class SingleCommand : public EditCommand {
public:
    SingleCommand(CaseDocument& document, const QString& text, std::optional<Content> content)
        : EditCommand(document, text, edit(document, std::move(content))) {}

private:
    static core::Edit edit(CaseDocument& document, std::optional<Content> content) {
        core::SetSingle<Content> set;
        if (content) {
            set.entry.emplace();
            if (const auto& present = core::singleOf<Content>(document.record())) set.entry->unknown = present->unknown;
            set.entry->content = std::move(*content);
            set.entry->revision = document.nextRevision();
        }
        return set;
    }
};

} // namespace gauge::app
