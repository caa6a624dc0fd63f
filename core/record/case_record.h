// The case record: what the person decided (images, marks, ostium, landing planes) and the values that follow
// from it, each with its source. It changes only by edits (edit.h); its written form is in case_json.h.
//
// Every input carries the revision at which it got its present content. Revisions are sequence numbers of the
// journal (journal.h), so they are never reused, and undoing an edit brings the old revision back with the
// old content: a value computed before is then current again.
#pragma once

#include "core/geometry/plane.h"
#include "core/record/recorded_value.h"

#include <array>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// Points that the person marks on images.
enum class MarkKind { Atrium, Tip, Circumflex, Ridge, Aorta };
inline constexpr std::array kMarkKinds{MarkKind::Atrium, MarkKind::Tip, MarkKind::Circumflex, MarkKind::Ridge,
                                       MarkKind::Aorta};

/// "atrium", "tip", "circumflex", "ridge", "aorta": the words of files and of input ids.
std::string_view name(MarkKind kind);
std::optional<MarkKind> markKindFrom(std::string_view name);

/// Fields of a file that this version does not know; kept and written again.
using UnknownFields = nlohmann::json;

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
    std::optional<double> plugMm;       ///< wall point beyond the ridge tip, > 0
    Revision revision = 0;
    UnknownFields unknown = UnknownFields::object();
};

struct CaseRecord {
    std::optional<ImagesUsed> images;
    std::map<MarkKind, Mark> marks;
    std::optional<OstiumPlane> ostium; ///< absent: landmarks or the program's proposal decide
    LandingPlanes landing;
    std::vector<RecordedValue> values;
    UnknownFields unknown = UnknownFields::object();
};

bool operator==(const Mark& a, const Mark& b);
bool operator==(const ImagesUsed& a, const ImagesUsed& b);
bool operator==(const OstiumPlane& a, const OstiumPlane& b);
bool operator==(const LandingPlanes& a, const LandingPlanes& b);
bool operator==(const CaseRecord& a, const CaseRecord& b);

/// Ids under which inputs are known to values: "images", "ostium", "landing", and "mark/" + name(kind).
namespace input {
inline constexpr std::string_view kImages = "images";
inline constexpr std::string_view kOstium = "ostium";
inline constexpr std::string_view kLanding = "landing";
std::string mark(MarkKind kind);
} // namespace input

/// Present revision of an input; 0 when the record has none of it, or does not know the id.
Revision revisionOf(const CaseRecord& record, std::string_view inputId);

/// True when any input that the value was computed from has another revision now.
bool isStale(const CaseRecord& record, const RecordedValue& value);

} // namespace gauge::core
