#include "core/record/edit.h"

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

Edit applyTo(CaseRecord& record, SetValues&& edit) {
    return SetValues{std::exchange(record.values, std::move(edit.values))};
}

template <class T> T withoutRevision(T content) {
    content.revision = 0;
    return content;
}

template <class T> std::optional<T> withoutRevision(std::optional<T> content) {
    if (content) content->revision = 0;
    return content;
}

} // namespace

Edit apply(CaseRecord& record, Edit edit) {
    return std::visit([&](auto& one) { return applyTo(record, std::move(one)); }, edit);
}

bool changesNothing(const CaseRecord& record, const Edit& edit) {
    CaseRecord copy = record;
    apply(copy, edit);
    const auto sameMarks = [&] {
        for (const MarkKind kind : kMarkKinds) {
            const auto a = record.marks.find(kind);
            const auto b = std::as_const(copy).marks.find(kind);
            const bool has = a != record.marks.end();
            if (has != (b != std::as_const(copy).marks.end()) ||
                (has && !(withoutRevision(a->second) == withoutRevision(b->second))))
                return false;
        }
        return true;
    };
    return withoutRevision(record.images) == withoutRevision(copy.images) && sameMarks() &&
           withoutRevision(record.ostium) == withoutRevision(copy.ostium) &&
           withoutRevision(record.landing) == withoutRevision(copy.landing) && record.values == copy.values;
}

} // namespace gauge::core
