// A case without identity, for teaching and for asking others: who it is about, who worked on it, when, and every word that
// a person typed are gone or replaced; what was measured, where on which image, at which pressure, stays.
#pragma once

#include "core/record/case_json.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// What stands in the place of identity; the images of the case must be exported with the same ones
/// (dicomio/deidentify/pseudonyms.h).
struct IdentityReplacement {
    std::function<std::string(std::string_view)> uid;  ///< new UID of an old one
    std::function<std::string(std::string_view)> time; ///< ISO 8601 in and out; "" for what cannot be moved
    std::string patientId;
};

struct CaseWithoutIdentity {
    CaseFile file;
    /// `words-left-out`: which words of the person were left out (decision, labels, notes), counted.
    std::vector<Notice> notices;
};

/// Kept: numbers, points, planes, contours, UIDs (new), stages, pressures, the chart, sex, age within the scores. Ids of
/// moments become "moment-1" and so on in the order of their stages. Words of people go: labels, notes, titles, tags, the
/// decision's text and signature (it becomes a draft), who saw or did something ("a reader"), fields of other versions.
/// The journal is made anew, one edit for each thing that the record holds, without author and time, so that earlier states
/// (which may hold a wrong name) are not passed on. Values that were current stay current.
CaseWithoutIdentity withoutIdentity(const CaseRecord& record, const IdentityReplacement& replacement);

} // namespace gauge::core
