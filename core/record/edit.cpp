#include "core/record/edit.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace gauge::core {
namespace {

Edit applyTo(CaseRecord& record, SetImages&& edit) {
    return SetImages{std::exchange(record.images, std::move(edit.images))};
}

Edit applyTo(CaseRecord& record, SetMark&& edit) {
    SetMark inverse{edit.kind, std::nullopt};
    if (const auto found = record.marks.find(edit.kind); found != record.marks.end())
        inverse.mark = found->second;
    if (edit.mark)
        record.marks.insert_or_assign(edit.kind, std::move(*edit.mark));
    else
        record.marks.erase(edit.kind);
    return inverse;
}

Edit applyTo(CaseRecord& record, SetOstium&& edit) {
    return SetOstium{std::exchange(record.ostium, std::move(edit.ostium))};
}

Edit applyTo(CaseRecord& record, SetLanding&& edit) {
    return SetLanding{std::exchange(record.landing, std::move(edit.landing))};
}

template <class Content> Edit applyTo(CaseRecord& record, SetEntry<Content>&& edit) {
    auto& entries = entriesOf<Content>(record);
    SetEntry<Content> inverse{edit.id, std::nullopt};
    if (const auto found = entries.find(edit.id); found != entries.end()) inverse.entry = found->second;
    if (edit.entry)
        entries.insert_or_assign(std::move(edit.id), std::move(*edit.entry));
    else
        entries.erase(edit.id);
    return inverse;
}

template <class Content> Edit applyTo(CaseRecord& record, SetSingle<Content>&& edit) {
    return SetSingle<Content>{std::exchange(singleOf<Content>(record), std::move(edit.entry))};
}

/// Values stay ordered by group, so that applying the inverse brings the same order back.
Edit applyTo(CaseRecord& record, SetValues&& edit) {
    auto& values = record.values;
    const auto first = std::find_if(values.begin(), values.end(),
                                    [&](const RecordedValue& value) { return value.group >= edit.group; });
    const auto last = std::find_if(first, values.end(),
                                   [&](const RecordedValue& value) { return value.group != edit.group; });
    SetValues inverse{{std::make_move_iterator(first), std::make_move_iterator(last)}, edit.group};
    const auto at = values.erase(first, last);
    values.insert(at, std::make_move_iterator(edit.values.begin()), std::make_move_iterator(edit.values.end()));
    return inverse;
}

template <class T> std::optional<T> withoutRevision(std::optional<T> content) {
    if (content) content->revision = 0;
    return content;
}

template <class Map, class Key> auto found(const Map& map, const Key& key) {
    const auto at = map.find(key);
    return at == map.end() ? std::nullopt : std::optional(at->second);
}

/// What the record has in the place that the edit sets.
struct Present {
    const CaseRecord& record;

    bool sameAs(const SetImages& e) const { return same(record.images, e.images); }
    bool sameAs(const SetMark& e) const { return same(found(record.marks, e.kind), e.mark); }
    bool sameAs(const SetOstium& e) const { return same(record.ostium, e.ostium); }
    bool sameAs(const SetLanding& e) const {
        return same(std::optional(record.landing), std::optional(e.landing));
    }
    bool sameAs(const SetValues& e) const {
        CaseRecord copy;
        copy.values = record.values;
        applyTo(copy, SetValues(e));
        return copy.values == record.values;
    }
    template <class Content> bool sameAs(const SetEntry<Content>& e) const {
        return same(found(entriesOf<Content>(record), e.id), e.entry);
    }
    template <class Content> bool sameAs(const SetSingle<Content>& e) const {
        return same(singleOf<Content>(record), e.entry);
    }

private:
    template <class T> static bool same(std::optional<T> a, std::optional<T> b) {
        return withoutRevision(std::move(a)) == withoutRevision(std::move(b));
    }
};

} // namespace

Edit apply(CaseRecord& record, Edit edit) {
    return std::visit([&](auto& one) { return applyTo(record, std::move(one)); }, edit);
}

bool changesNothing(const CaseRecord& record, const Edit& edit) {
    return std::visit([&](const auto& one) { return Present{record}.sameAs(one); }, edit);
}

} // namespace gauge::core
