// Random edits for properties: every kind, with and without content, few distinct contents so that repeats
// occur.
#pragma once

#include "core/record/journal.h"
#include "tests/core/record/random_entries.h"

#include <rapidcheck.h>

namespace gauge::core::testing_edits {

inline RecordedValue value(int number, double mm, Revision revision,
                           std::shared_ptr<const Provenance> source) {
    RecordedValue made;
    made.id.append("value-").append(std::to_string(number));
    made.unit = "mm";
    made.estimate.value = mm;
    made.estimate.components.edge = 0.1;
    made.estimate.method = "contour";
    made.inputs.push_back({"images", revision});
    made.inputs.push_back({input::mark(MarkKind::Tip), revision});
    made.provenance = std::move(source);
    return made;
}

inline std::vector<RecordedValue> values(Revision revision) {
    const auto source = std::make_shared<const Provenance>(Provenance{{"2.25.1", "2.25.2"},
                                                                      "2.25.9",
                                                                      "45 %",
                                                                      "before the procedure",
                                                                      "reader",
                                                                      "2031-02-03T10:00:00+01:00",
                                                                      maybe([] { return 7; })});
    std::vector<RecordedValue> list;
    for (int n = *rc::gen::inRange(0, 4); n > 0; --n)
        list.push_back(value(n, *rc::gen::inRange(0, 500) / 10.0, revision, source));
    for (auto& one : list)
        one.unknown = unknown();
    return list;
}

inline void fillEdit(SetImages& edit, Revision revision) {
    const std::optional<double> phase = flip() ? std::optional(45.0) : std::nullopt;
    if (*rc::gen::inRange(0, 3) != 0) edit.images = ImagesUsed{"2.25.7", phase, "45 %", "2.25.9", revision, unknown()};
}
inline void fillEdit(SetOstium& edit, Revision revision) {
    const Eigen::Vector3d normal = point().mm.normalized();
    if (*rc::gen::inRange(0, 3) != 0) edit.ostium = OstiumPlane{{point(), {normal}}, flip(), revision, unknown()};
}
inline void fillEdit(SetLanding& edit, Revision revision) {
    edit.landing.depthsMm.assign(static_cast<std::size_t>(*rc::gen::inRange(0, 3)), *rc::gen::inRange(1, 200) / 10.0);
    if (flip()) edit.landing.normal = PatientVector{point().mm.normalized()};
    if (flip()) edit.landing.plugMm = 12.5;
    edit.landing.revision = revision;
}
inline void fillEdit(SetValues& edit, Revision revision) {
    edit.values = values(revision);
    static const std::string kGroups[] = {"ct", "drawing/1", "echo/after repair"};
    edit.group = kGroups[*rc::gen::inRange(0, 3)];
    for (auto& one : edit.values)
        one.group = edit.group;
}
inline void fillEdit(SetMark& edit, Revision revision) {
    edit.kind = kMarkKinds[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(kMarkKinds.size())))];
    if (*rc::gen::inRange(0, 3) != 0) edit.mark = Mark{point(), revision, unknown()};
}

template <std::size_t I = 0> Edit editOfKind(std::size_t kind, Revision revision) {
    if constexpr (I + 1 < std::variant_size_v<Edit>)
        if (kind != I) return editOfKind<I + 1>(kind, revision);
    std::variant_alternative_t<I, Edit> edit;
    fillEdit(edit, revision);
    return edit;
}

/// An edit of any kind whose content carries `revision`.
inline Edit edit(Revision revision) {
    return editOfKind(*rc::gen::inRange<std::size_t>(0, std::variant_size_v<Edit>), revision);
}

/// A journal of up to 30 random edits.
inline Journal journal() {
    Journal result;
    for (int n = *rc::gen::inRange(0, 30); n > 0; --n)
        result.append(edit(result.nextSequence()), "reader", "2031-02-03T10:00:00+01:00");
    return result;
}

} // namespace gauge::core::testing_edits
