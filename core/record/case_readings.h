// From a case record to what core/sizing takes: the readings with the pressure of their moment, and the facts about the
// appendage. Each reading remembers the recorded values that it was made of, so that a size can be traced to a contour.
//
// Values that become readings, by their group:
//   "ct"                      landing-1/… and ostium/… (contours), depth/from-ostium-plane
//   "echo/" + moment          landing/…, ostium/… (ellipse from probe angles), landing/largest-of-views, depth
//   "echo-3d/" + moment       landing/…, ostium/… (contours)
//   "fluoroscopy/" + moment   landing/largest-of-views, landing/single-view, landing/…, depth
// where "moment" is the id of a Moment, or the name of a stage for pictures that belong to none. And every TypedReading. With an implant in the appendage its width is no longer its own: the model gives such a reading the
// weight 0 and says so.
#pragma once

#include "core/record/case_record.h"
#include "core/sizing/appendage_facts.h"

#include <string>
#include <vector>

namespace gauge::core {

/// Where a reading came from.
struct ReadingOrigin {
    std::string group;               ///< of the recorded values; empty for a typed reading
    std::vector<std::string> values; ///< their ids in that group
    std::string typed;               ///< id of the TypedReading; empty for a measured one
    std::string moment;              ///< id of the Moment; empty where nobody stated one

    bool operator==(const ReadingOrigin&) const = default;
};

struct CaseReadings {
    std::vector<Observation> observations;
    std::vector<ReadingOrigin> origins; ///< one per observation
    AppendageFacts facts;
    /// stale-value-left-out, reading-without-moment, moment-unknown, ct-phase-by-percent.
    std::vector<Notice> notices;
};

/// Never fails: what cannot be used is left out, and a notice says so. Order: CT, then groups by their names, then
/// typed readings by their ids.
CaseReadings caseReadings(const CaseRecord& record);

/// The reading that a recorded value becomes, as above; nothing for a value that is no reading (an area, a volume). Stale or
/// not makes no difference here.
std::optional<Observation> readingOf(const CaseRecord& record, const RecordedValue& value);

/// Part of a group's name after its kind: "m2" of "echo/m2"; empty for "ct" and where there is none.
std::string_view momentOfGroup(std::string_view group);

/// The state under which CT readings go when the images belong to no moment.
inline constexpr std::string_view kCtState = "CT";

/// Whether the mitral valve was repaired before a size is signed: a moment or finding after the repair, or a lasting change.
bool isRepaired(const CaseRecord& record);

} // namespace gauge::core
