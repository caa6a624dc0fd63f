// Numbers to words: the one place that rounds. A shown number always carries its unit, and a measured one its
// standard uncertainty.
//
// Decimals are fixed by the unit, so that columns line up: mm 0.1, mm2 1, mL 0.1, degree 1, HU 1, index 0.01,
// cm/s 1, cm 0.1, ms 1, mmHg 0.1, 1/min 1.
// Uncertainties are rounded up, so that none is understated (JCGM 100:2008, 7.2.6, allows it). An uncertainty
// that was not evaluated (zero) is shown as "± ?".
#pragma once

#include "core/measure/estimate.h"

#include <QString>
#include <optional>

namespace gauge::app {

enum class Unit { Millimetre, SquareMillimetre, Millilitre, Degree, Hounsfield, Percent, Index,
    CentimetrePerSecond, Centimetre, Millisecond, MillimetreOfMercury, PerMinute };

/// "mm", "mm²", …; empty for an index.
QString symbol(Unit unit);

/// "24.3 mm". A value that is not finite reads "not measured". Never "-0.0".
QString quantity(double value, Unit unit);

/// "24.3 ± 0.4 mm". Spaces are non-breaking.
QString estimate(const core::Estimate& estimate, Unit unit);

/// The parts of an uncertainty in words, for a tooltip: "edge 0.2, plane 0.3 mm". Parts that are zero are
/// left out; empty when all are.
QString uncertaintyParts(const core::Estimate& estimate, Unit unit);

/// Spaces made ordinary, for the clipboard.
QString plainSpaces(QString text);

} // namespace gauge::app
