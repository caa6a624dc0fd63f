// What a folder holds, as evidence of the record: kind, proposed stage, probe angle, time. Only ever proposed: what the
// person set stays. Images of evidence: evidence_images.h.
#pragma once

#include "app/document/case_document.h"
#include "dicomio/index/series_index.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gauge::app {

struct ProposedEvidence {
    std::string id; ///< in CaseRecord::evidence: SOP Instance UID of a picture, Series UID of a CT or volume
    core::Evidence evidence;
    bool stageIsGuess = false; ///< of the procedure's day: only a person knows whether before or after a repair
    std::string stageReason;   ///< in words; may be empty
};

/// The evidence of one patient (dicomio::patientKey) in the order of the index; refused series and those set aside give none.
/// Echo and X-ray of the procedure's day count as before the repair until the person says otherwise.
std::vector<ProposedEvidence> proposedEvidence(const dicomio::SeriesIndex& index, const std::string& patientKey);

/// Enters into the record what it does not hold yet. No undoable act (as setFirstImages): it follows from the folder.
void proposeEvidence(CaseDocument& document, const dicomio::SeriesIndex& index, const std::string& patientKey);

/// The series of the index that holds the images of this evidence.
std::optional<std::size_t> seriesOf(const dicomio::SeriesIndex& index, const core::Evidence& evidence);

/// The file of a picture; nothing when the index does not hold it.
std::optional<std::filesystem::path> fileOf(const dicomio::SeriesIndex& index, const core::Evidence& evidence);

} // namespace gauge::app
