// What evidence is called on the screen. The trade's words: terms.h.
#pragma once

#include "core/record/case_record.h"

#include <QString>

namespace gauge::app {

/// The same text beginning with a capital: for headings and entries of a list.
QString capitalised(QString text);

/// "LA mean 12 mmHg, v wave 20 mmHg", or "pressure unknown": of the moment to which the evidence belongs.
QString pressureWords(const core::CaseRecord& record, const core::Evidence& evidence);

/// Day and time in the reader's own form, by the scanner's clock; what is not told is left out. Empty for text that is no time.
QString timeWords(const std::string& iso);

/// "Echo view 45°", "CT: Left atrium, gated": one line that tells evidence apart from its neighbours.
QString evidenceTitle(const core::Evidence& evidence);

/// What can be measured on evidence of this kind, and what not: a sentence or two.
QString measurableWords(core::EvidenceKind kind);

/// Name of a moment by which values are grouped (core/record/picture_readings.h): the moment's stage, with its id where several
/// moments share the stage.
QString momentWords(const core::CaseRecord& record, const std::string& key);

} // namespace gauge::app
