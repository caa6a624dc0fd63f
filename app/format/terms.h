// The trade's words for what core counts, in the screen's language. The English ones are those of core (plainName, words).
#pragma once

#include "app/format/quantity.h"
#include "core/pressure/haemodynamics.h"
#include "core/record/case_record.h"

#include <QString>

namespace gauge::app {

QString stageName(core::Stage stage);               ///< "before the procedure"
QString modalityName(core::Modality modality);      ///< "CT", "2D echo"
QString derivationName(core::Derivation derivation); ///< "contour", "ellipse from probe angles"
QString quantityName(core::Quantity quantity);      ///< "longest diameter of the landing zone"
QString evidenceName(core::EvidenceKind kind);      ///< "CT", "echo view", "fluoroscopy"
QString beatPhaseName(core::BeatPhase phase);       ///< "end-systole"
QString conditionName(core::Condition condition);
QString rhythmName(core::Rhythm rhythm);
QString ventilationName(core::Ventilation ventilation);
QString regurgitationName(core::RegurgitationGrade grade);
QString veinFlowName(core::PulmonaryVeinFlow flow);
QString pressureSourceName(core::PressureSource source);
QString releaseQuantityName(core::ReleaseQuantity quantity);

/// The unit of a recorded value ("mm", "mm2", "mL", "deg", "HU", "1", "%"); Index for one that is not known.
Unit unitOf(const std::string& recordUnit);

/// What a recorded value is, without its place: "longest diameter" of "landing-1/longest-diameter". An id that is not known
/// is shown as it is.
QString metricName(const std::string& valueId);

/// Where it was measured: "ostium", "landing zone", "landing zone 2", "appendage".
QString placeName(const std::string& valueId);

} // namespace gauge::app
