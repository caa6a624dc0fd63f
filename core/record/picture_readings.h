// Widths and depths that were drawn on pictures (echo views, X-ray frames), gathered by the moment of the patient's course to
// which the pictures belong. Neighbours: echo_values.h and fluoro_values.h make values of them.
#pragma once

#include "core/record/case_record.h"

#include <string>
#include <string_view>
#include <vector>

namespace gauge::core {

/// By what name a picture's moment is known in the groups of values ("echo/" + key): the id of its Moment; while it has none,
/// the name of its stage, so that pictures before and after a repair are never mixed.
std::string momentKey(const Evidence& evidence);

/// A drawing with the part it plays, the evidence it was drawn on and its length.
struct DrawnReading {
    std::string drawing;  ///< id in CaseRecord::drawings
    std::string evidence; ///< id in CaseRecord::evidence
    DrawingRole role = DrawingRole::None;
    Estimate lengthMm;
    std::vector<InputRevision> inputs; ///< those of the drawing's own value, and evidence and drawing
};

/// What is drawn on evidence of `kind` in the moment `key` as ostium width, landing-zone width or depth. The length is
/// the drawing's own recorded value (the one in mm of the group "drawing/" + id). A drawing without a value, or whose
/// value is stale, is left out: it is measured again before it counts. In the order of the drawings' ids.
std::vector<DrawnReading> drawnReadings(const CaseRecord& record, EvidenceKind kind, std::string_view key);

/// Keys of all moments in which something of the kind is drawn, each once, in the order of their names.
std::vector<std::string> drawnMoments(const CaseRecord& record, EvidenceKind kind);

/// In words for a provenance: the stage, and the moment's id where there is one.
std::string stateWords(const CaseRecord& record, EvidenceKind kind, std::string_view key);

/// The union of the inputs of readings, each once, in the order of their first mention.
std::vector<InputRevision> unionOfInputs(const std::vector<const DrawnReading*>& readings);

} // namespace gauge::core
