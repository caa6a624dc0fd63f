#include "core/record/case_record.h"

#include <algorithm>

namespace gauge::core {
namespace {

constexpr std::string_view kMarkPrefix = "mark/";
constexpr std::string_view kPlacePrefix = "plane/";
constexpr std::array<std::string_view, kMarkKinds.size()> kMarkNames{"atrium", "tip", "circumflex", "ridge",
                                                                     "aorta", "pulmonary-artery"};

bool equal(const Estimate& a, const Estimate& b) {
    const auto parts = [](const UncertaintyComponents& c) {
        return std::array{c.edge, c.plane, c.observer, c.scale};
    };
    return a.value == b.value && parts(a.components) == parts(b.components) && a.method == b.method;
}

template <class Content> std::optional<Revision> revisionAmong(const CaseRecord& record, std::string_view inputId) {
    constexpr std::string_view prefix = kEntryName<Content>;
    if (!inputId.starts_with(prefix)) return std::nullopt;
    const auto& entries = entriesOf<Content>(record);
    const auto found = entries.find(inputId.substr(prefix.size()));
    return found == entries.end() ? 0 : found->second.revision;
}

/// Nothing when the id is of none of these kinds.
template <class... Contents>
std::optional<Revision> entryRevision(const CaseRecord& record, std::string_view inputId) {
    std::optional<Revision> revision;
    ((revision = revisionAmong<Contents>(record, inputId)) || ...);
    return revision;
}

template <class... Contents>
std::optional<Revision> singleRevision(const CaseRecord& record, std::string_view inputId) {
    std::optional<Revision> revision;
    const auto look = [&]<class Content>(const std::optional<Entry<Content>>& entry) {
        if (inputId == kEntryName<Content>) revision = entry ? entry->revision : 0;
    };
    (look(singleOf<Contents>(record)), ...);
    return revision;
}

/// What decides the place of a plane.
std::vector<std::string> decidersOf(const CaseRecord& record, std::string_view plane) {
    if (plane != input::kOstium && plane != input::kLanding) return {};
    std::vector<std::string> ids{std::string(input::kImages), std::string(input::kOstium)};
    if (plane == input::kOstium && record.ostium) return ids;
    for (const MarkKind kind : {MarkKind::Atrium, MarkKind::Tip, MarkKind::Circumflex, MarkKind::Ridge})
        ids.push_back(input::mark(kind));
    if (plane == input::kLanding) ids.emplace_back(input::kLanding);
    return ids;
}

/// Fowler, Noll and Vo's hash (FNV-1a) of the revisions, kept below 2^53 so that any reader of JSON can hold it.
Revision placeRevision(const CaseRecord& record, std::string_view plane) {
    const auto ids = decidersOf(record, plane);
    if (ids.empty()) return 0;
    std::uint64_t hash = 14695981039346656037ull;
    for (const auto& id : ids)
        for (std::uint64_t rest = revisionOf(record, id), byte = 0; byte < 8; ++byte, rest >>= 8)
            hash = (hash ^ (rest & 0xff)) * 1099511628211ull;
    return (hash & ((1ull << 53) - 1)) | 1;
}

} // namespace

std::string_view name(MarkKind kind) {
    return kMarkNames[static_cast<std::size_t>(kind)];
}

std::optional<MarkKind> markKindFrom(std::string_view text) {
    const auto found = std::find(kMarkNames.begin(), kMarkNames.end(), text);
    if (found == kMarkNames.end()) return std::nullopt;
    return kMarkKinds[static_cast<std::size_t>(found - kMarkNames.begin())];
}

bool operator==(const RecordedValue& a, const RecordedValue& b) {
    const bool sameSource =
        a.provenance == b.provenance || (a.provenance && b.provenance && *a.provenance == *b.provenance);
    return a.id == b.id && a.group == b.group && a.unit == b.unit && equal(a.estimate, b.estimate) && a.inputs == b.inputs &&
           sameSource && a.unknown == b.unknown;
}

bool operator==(const Mark& a, const Mark& b) {
    return a.point.mm == b.point.mm && a.revision == b.revision && a.unknown == b.unknown;
}

bool operator==(const ImagesUsed& a, const ImagesUsed& b) {
    return a.seriesUid == b.seriesUid && a.phasePercent == b.phasePercent && a.phaseLabel == b.phaseLabel &&
           a.frameOfReferenceUid == b.frameOfReferenceUid && a.revision == b.revision &&
           a.unknown == b.unknown && a.patientPosition == b.patientPosition;
}

bool operator==(const OstiumPlane& a, const OstiumPlane& b) {
    return a.plane.point.mm == b.plane.point.mm && a.plane.normal.mm == b.plane.normal.mm &&
           a.confirmed == b.confirmed && a.revision == b.revision && a.unknown == b.unknown;
}

bool operator==(const LandingPlanes& a, const LandingPlanes& b) {
    return a.depthsMm == b.depthsMm && a.normal == b.normal && a.plugMm == b.plugMm && a.revision == b.revision &&
           a.unknown == b.unknown;
}

bool operator==(const CaseRecord& a, const CaseRecord& b) {
    return a.images == b.images && a.marks == b.marks && a.ostium == b.ostium && a.landing == b.landing &&
           a.evidence == b.evidence && a.moments == b.moments && a.readings == b.readings &&
           a.drawings == b.drawings && a.contours == b.contours && a.scales == b.scales &&
           a.landmarks == b.landmarks && a.release == b.release && a.stasis == b.stasis && a.sizing == b.sizing &&
           a.scores == b.scores && a.patient == b.patient && a.decision == b.decision &&
           a.septumMarks == b.septumMarks && a.septumPlan == b.septumPlan && a.projection == b.projection && a.values == b.values &&
           a.unknown == b.unknown;
}

std::string input::mark(MarkKind kind) {
    return std::string(kMarkPrefix).append(name(kind));
}

std::string input::placeOf(std::string_view plane) {
    return std::string(kPlacePrefix).append(plane);
}

Revision revisionOf(const CaseRecord& record, std::string_view inputId) {
    if (inputId.starts_with(kPlacePrefix)) return placeRevision(record, inputId.substr(kPlacePrefix.size()));
    if (inputId == input::kImages) return record.images ? record.images->revision : 0;
    if (inputId == input::kOstium) return record.ostium ? record.ostium->revision : 0;
    if (inputId == input::kLanding) return record.landing.revision;
    if (const auto revision = entryRevision<Evidence, Moment, TypedReading, Drawing, CorrectedContour, PictureScale,
                                            PoseLandmark, ReleaseState, StasisFinding>(record, inputId))
        return *revision;
    if (const auto revision = singleRevision<SizingChoice, Scores, Patient, Decision, SeptumMarks, SeptumPlan, ProjectionChoice>(
            record, inputId))
        return *revision;
    if (!inputId.starts_with(kMarkPrefix)) return 0;
    const auto kind = markKindFrom(inputId.substr(kMarkPrefix.size()));
    const auto found = kind ? record.marks.find(*kind) : record.marks.end();
    return found == record.marks.end() ? 0 : found->second.revision;
}

bool isStale(const CaseRecord& record, const RecordedValue& value) {
    return std::any_of(value.inputs.begin(), value.inputs.end(), [&](const InputRevision& used) {
        return revisionOf(record, used.id) != used.revision;
    });
}

} // namespace gauge::core
