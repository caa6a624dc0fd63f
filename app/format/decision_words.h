// Words and numbers of the decision for people: pressures, chances, percentages and the names of what is chosen in lists.
// Sentences with a judgement come from core (Notice::text); the trade's words: terms.h.
#pragma once

#include "core/pressure/carried_value.h"
#include "core/record/entries.h"
#include "core/release/release_check.h"
#include "core/sizing/device_chart.h"

#include <QString>
#include <optional>

namespace gauge::app {

/// "12 mmHg", "7.5 mmHg".
QString pressureWords(double mmHg);
/// "63 %", "below 1 %", "above 99 %" of a chance in [0, 1].
QString chanceWords(double chance);
/// "11.8 %".
QString percentWords(double percent);
/// "+1.3 mm", "−0.4 mm": a difference.
QString differenceWords(double mm);
/// "22.1 ± 0.9 mm at 12 mmHg".
QString carriedWords(const core::CarriedValue& carried);
/// "11.8 % compression", or "narrower than the appendage by 1.6 mm" (core/sizing/wording.h).
QString compressionWords(double nominalMm, double diameterMm);
/// A number of the person's as short as it is: "4", "27.5".
QString plainNumber(double value);

QString phaseWords(core::Phase phase);
QString gradientSourceWords(core::GradientSource source);
QString enhancementPhaseWords(core::EnhancementPhase phase);
QString causeWords(core::PressureChange cause);
QString verdictWords(core::RangeVerdict verdict);
/// "at least 10 mm (the chart)", "8 to 20 % (published)"; empty without a range.
QString rangeWords(const std::optional<core::ReleaseRange>& range, const QString& unit);
/// The value of a finding with its unit; "yes" and "no" where it is one.
QString findingWords(core::ReleaseQuantity quantity, double value);

} // namespace gauge::app
