// Random edits for properties: every kind, with and without content, few distinct contents so that repeats
// occur.
#pragma once

#include "core/record/journal.h"

#include <rapidcheck.h>

namespace gauge::core::testing_edits {

inline PatientPoint point() {
    const auto mm = [] { return *rc::gen::inRange(-3000, 3000) / 8.0 + 0.1; };
    return {Eigen::Vector3d(mm(), mm(), mm())};
}

inline UnknownFields unknown() {
    UnknownFields fields = UnknownFields::object();
    if (*rc::gen::inRange(0, 4) == 0)
        fields["from_a_later_version"] = {{"depth", *rc::gen::inRange(0, 100)}, {"words", {"a", "b"}}};
    return fields;
}

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
                                                                      "2031-02-03T10:00:00+01:00"});
    std::vector<RecordedValue> list;
    for (int n = *rc::gen::inRange(0, 4); n > 0; --n)
        list.push_back(value(n, *rc::gen::inRange(0, 500) / 10.0, revision, source));
    for (auto& one : list)
        one.unknown = unknown();
    return list;
}

/// An edit whose content carries `revision`.
inline Edit edit(Revision revision) {
    const bool present = *rc::gen::inRange(0, 3) != 0;
    switch (*rc::gen::inRange(0, 5)) {
    case 0: {
        const std::optional<double> phase = *rc::gen::inRange(0, 2) ? std::optional(45.0) : std::nullopt;
        return SetImages{
            present ? std::optional(ImagesUsed{"2.25.7", phase, "45 %", "2.25.9", revision, unknown()})
                    : std::nullopt};
    }
    case 1: {
        Eigen::Vector3d normal = point().mm.normalized();
        return SetOstium{present
                             ? std::optional(OstiumPlane{
                                   {point(), {normal}}, *rc::gen::inRange(0, 2) == 1, revision, unknown()})
                             : std::nullopt};
    }
    case 2: {
        LandingPlanes landing;
        landing.depthsMm.assign(static_cast<std::size_t>(*rc::gen::inRange(0, 3)),
                                *rc::gen::inRange(1, 200) / 10.0);
        if (present) landing.plugMm = 12.5;
        landing.revision = revision;
        return SetLanding{landing};
    }
    case 3:
        return SetValues{values(revision)};
    default:
        return SetMark{kMarkKinds[static_cast<std::size_t>(*rc::gen::inRange(0, 5))],
                       present ? std::optional(Mark{point(), revision, unknown()}) : std::nullopt};
    }
}

/// A journal of up to 20 random edits.
inline Journal journal() {
    Journal result;
    for (int n = *rc::gen::inRange(0, 20); n > 0; --n)
        result.append(edit(result.nextSequence()), "reader", "2031-02-03T10:00:00+01:00");
    return result;
}

} // namespace gauge::core::testing_edits
