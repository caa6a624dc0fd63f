// The case record: what the person decided (images, marks, ostium, landing planes) and the values that follow
// from it, each with its source. It changes only by edits (edit.h); its written form is in case_json.h.
//
// Every input carries the revision at which it got its present content. Revisions are sequence numbers of the
// journal (journal.h), so they are never reused, and undoing an edit brings the old revision back with the
// old content: a value computed before is then current again.
#pragma once

#include "core/geometry/plane.h"
#include "core/record/entries.h"
#include "core/record/recorded_value.h"

#include <algorithm>
#include <array>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Points that the person marks on images.
enum class MarkKind { Atrium, Tip, Circumflex, Ridge, Aorta, PulmonaryArtery };
inline constexpr std::array kMarkKinds{MarkKind::Atrium, MarkKind::Tip, MarkKind::Circumflex, MarkKind::Ridge,
                                       MarkKind::Aorta, MarkKind::PulmonaryArtery};

/// "atrium", "tip", "circumflex", "ridge", "aorta", "pulmonary-artery": the words of files and of input ids.
std::string_view name(MarkKind kind);
std::optional<MarkKind> markKindFrom(std::string_view name);

struct Mark {
    PatientPoint point; ///< LPS, mm
    Revision revision = 0;
    UnknownFields unknown = UnknownFields::object();
};

/// The series and phase that are measured.
struct ImagesUsed {
    std::string seriesUid;
    std::optional<double> phasePercent; ///< of the R-R interval
    std::string phaseLabel;             ///< for people
    std::string frameOfReferenceUid;
    Revision revision = 0;
    UnknownFields unknown = UnknownFields::object();
    std::string patientPosition{}; ///< how the patient lay, (0018,5100) PatientPosition: "HFS"…; empty when not told
};

/// An ostium plane that the person set.
struct OstiumPlane {
    Plane plane;            ///< normal towards the tip
    bool confirmed = false; ///< the person says: this is the ostium
    Revision revision = 0;
    UnknownFields unknown = UnknownFields::object();
};

struct LandingPlanes {
    std::vector<double> depthsMm{10.0}; ///< beyond the ostium along the axis, each > 0
    /// Unit normal of the first depth's plane towards the tip, when a hand tilted it; nothing: square to the axis.
    std::optional<PatientVector> normal;
    std::optional<double> plugMm;       ///< wall point beyond the ridge tip, > 0
    Revision revision = 0;
    UnknownFields unknown = UnknownFields::object();
};

struct CaseRecord {
    std::optional<ImagesUsed> images;
    std::map<MarkKind, Mark> marks;
    std::optional<OstiumPlane> ostium; ///< absent: landmarks or the program's proposal decide
    LandingPlanes landing;
    Entries<Evidence> evidence;
    Entries<Moment> moments;
    Entries<TypedReading> readings;
    Entries<Drawing> drawings;
    Entries<CorrectedContour> contours;
    Entries<PictureScale> scales;
    Entries<PoseLandmark> landmarks;
    Entries<ReleaseState> release;
    Entries<StasisFinding> stasis;
    std::optional<Entry<SizingChoice>> sizing;
    std::optional<Entry<ProjectionChoice>> projection;
    std::optional<Entry<Scores>> scores;
    std::optional<Entry<Patient>> patient;
    std::optional<Entry<Decision>> decision;
    std::optional<Entry<SeptumMarks>> septumMarks;
    std::optional<Entry<SeptumPlan>> septumPlan;
    std::vector<RecordedValue> values;
    UnknownFields unknown = UnknownFields::object();
};

bool operator==(const Mark& a, const Mark& b);
bool operator==(const ImagesUsed& a, const ImagesUsed& b);
bool operator==(const OstiumPlane& a, const OstiumPlane& b);
bool operator==(const LandingPlanes& a, const LandingPlanes& b);
bool operator==(const CaseRecord& a, const CaseRecord& b);

/// Ids under which inputs are known to values: "images", "ostium", "landing", "mark/" + name(kind), and those of
/// entryInput() (entries.h).
namespace input {
inline constexpr std::string_view kImages = "images";
inline constexpr std::string_view kOstium = "ostium";
inline constexpr std::string_view kLanding = "landing";
std::string mark(MarkKind kind);
/// Where a plane lies, "plane/ostium" or "plane/landing" for kOstium or kLanding: its revision is another one as soon as
/// anything has changed that decides the plane's place (the plane itself; while the program places it, the images and the
/// marks too), and the old one again after undo. A fingerprint of the revisions of all these, below 2^53; 0 for other ids.
std::string placeOf(std::string_view plane);
} // namespace input

/// The entries of a kind: entriesOf<Drawing>(record) is record.drawings.
template <class Content> Entries<Content>& entriesOf(CaseRecord& record);
template <> inline Entries<Evidence>& entriesOf(CaseRecord& record) { return record.evidence; }
template <> inline Entries<Moment>& entriesOf(CaseRecord& record) { return record.moments; }
template <> inline Entries<TypedReading>& entriesOf(CaseRecord& record) { return record.readings; }
template <> inline Entries<Drawing>& entriesOf(CaseRecord& record) { return record.drawings; }
template <> inline Entries<CorrectedContour>& entriesOf(CaseRecord& record) { return record.contours; }
template <> inline Entries<PictureScale>& entriesOf(CaseRecord& record) { return record.scales; }
template <> inline Entries<PoseLandmark>& entriesOf(CaseRecord& record) { return record.landmarks; }
template <> inline Entries<ReleaseState>& entriesOf(CaseRecord& record) { return record.release; }
template <> inline Entries<StasisFinding>& entriesOf(CaseRecord& record) { return record.stasis; }
template <class Content> const Entries<Content>& entriesOf(const CaseRecord& record) {
    return entriesOf<Content>(const_cast<CaseRecord&>(record));
}

/// What a record holds once: singleOf<SizingChoice>(record) is record.sizing.
template <class Content> std::optional<Entry<Content>>& singleOf(CaseRecord& record);
template <> inline std::optional<Entry<SizingChoice>>& singleOf(CaseRecord& record) { return record.sizing; }
template <> inline std::optional<Entry<ProjectionChoice>>& singleOf(CaseRecord& record) { return record.projection; }
template <> inline std::optional<Entry<Scores>>& singleOf(CaseRecord& record) { return record.scores; }
template <> inline std::optional<Entry<Patient>>& singleOf(CaseRecord& record) { return record.patient; }
template <> inline std::optional<Entry<Decision>>& singleOf(CaseRecord& record) { return record.decision; }
template <> inline std::optional<Entry<SeptumMarks>>& singleOf(CaseRecord& record) { return record.septumMarks; }
template <> inline std::optional<Entry<SeptumPlan>>& singleOf(CaseRecord& record) { return record.septumPlan; }
template <class Content> const std::optional<Entry<Content>>& singleOf(const CaseRecord& record) {
    return singleOf<Content>(const_cast<CaseRecord&>(record));
}

/// An id for a new entry: the least whole number above all that are in use as ids, as text.
template <class Content> std::string freshId(const CaseRecord& record) {
    unsigned long greatest = 0;
    for (const auto& [id, entry] : entriesOf<Content>(record))
        if (!id.empty() && id.size() < 10 && id.find_first_not_of("0123456789") == std::string::npos)
            greatest = std::max(greatest, std::stoul(id));
    return std::to_string(greatest + 1);
}

/// Present revision of an input; 0 when the record has none of it, or does not know the id.
Revision revisionOf(const CaseRecord& record, std::string_view inputId);

/// True when any input that the value was computed from has another revision now.
bool isStale(const CaseRecord& record, const RecordedValue& value);

} // namespace gauge::core
