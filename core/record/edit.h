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
/// One of many: sets, or without `entry` removes, what has this id (not empty).
template <class Content> struct SetEntry {
    std::string id;
    std::optional<Entry<Content>> entry;
    bool operator==(const SetEntry&) const = default;
};
/// What exists at most once.
template <class Content> struct SetSingle {
    std::optional<Entry<Content>> entry;
    bool operator==(const SetSingle&) const = default;
};
/// Replaces all values of one group (RecordedValue::group); they follow from the inputs and are no decision of the
/// person, but belong to the trail. The other groups stay as they are.
struct SetValues {
    std::vector<RecordedValue> values; ///< each of this group
    std::string group = std::string(kCtValues);
    bool operator==(const SetValues&) const = default;
};

using Edit = std::variant<SetImages, SetMark, SetOstium, SetLanding, SetValues, SetEntry<Evidence>, SetEntry<Moment>,
                          SetEntry<TypedReading>, SetEntry<Drawing>, SetEntry<CorrectedContour>, SetEntry<PictureScale>,
                          SetEntry<PoseLandmark>, SetEntry<ReleaseState>, SetEntry<StasisFinding>, SetSingle<SizingChoice>,
                          SetSingle<Scores>, SetSingle<Patient>, SetSingle<Decision>, SetSingle<SeptumMarks>, SetSingle<SeptumPlan>,
                          SetSingle<ProjectionChoice>>;

/// Changes the record and returns the edit that takes it back: apply(r, apply(r, e)) leaves r as it was.
/// (By value: a reference would lose against std::apply, which argument-dependent lookup finds for a
/// variant.)
Edit apply(CaseRecord& record, Edit edit);

/// True when the edit would leave everything but the revision as it is: nothing worth recording.
bool changesNothing(const CaseRecord& record, const Edit& edit);

} // namespace gauge::core
