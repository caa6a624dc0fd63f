// Every change of a case is a value: it can be applied, undone, written down and replayed.
#pragma once

#include "core/record/case_record.h"

#include <optional>
#include <variant>
#include <vector>

namespace gauge::core {

/// Each edit sets one thing to a content that carries its own revision (or removes it).
struct SetImages {
    std::optional<ImagesUsed> images;
    bool operator==(const SetImages&) const = default;
};
struct SetMark {
    MarkKind kind = MarkKind::Atrium;
    std::optional<Mark> mark;
    bool operator==(const SetMark&) const = default;
};
struct SetOstium {
    std::optional<OstiumPlane> ostium;
    bool operator==(const SetOstium&) const = default;
};
struct SetLanding {
    LandingPlanes landing;
    bool operator==(const SetLanding&) const = default;
};
/// Replaces all values; they follow from the inputs and are no decision of the person, but belong to the
/// trail.
struct SetValues {
    std::vector<RecordedValue> values;
    bool operator==(const SetValues&) const = default;
};

using Edit = std::variant<SetImages, SetMark, SetOstium, SetLanding, SetValues>;

/// Changes the record and returns the edit that takes it back: apply(r, apply(r, e)) leaves r as it was.
/// (By value: a reference would lose against std::apply, which argument-dependent lookup finds for a
/// variant.)
Edit apply(CaseRecord& record, Edit edit);

/// True when the edit would leave everything but the revision as it is: nothing worth recording.
bool changesNothing(const CaseRecord& record, const Edit& edit);

} // namespace gauge::core
