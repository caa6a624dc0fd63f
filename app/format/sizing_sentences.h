// The sentences that go with an answer of core/sizing, in the screen's language: the width and what it rests on, the size
// with the greatest fit chance and what would change it. Never a bare recommendation.
#pragma once

#include "core/sizing/sizing.h"

#include <QString>

namespace gauge::app {

/// "The longest diameter of the landing zone at 12 mmHg is 22.1 mm, with a chance of 95 % from 20.1 to 24.9 mm. …"
QString widthSentence(const core::SizingAnswer& answer);
/// "Near 12 mmHg it widens by 0.38 mm per mmHg (± 0.12; 40 % of that is this patient's own, the rest assumed)."
QString slopeSentence(const core::SizingAnswer& answer);
/// "Widths to live with, 95 %: if the change of pressure passes (12 to 20 mmHg) …"
QString livingSentence(const core::SizingAnswer& answer);
/// "Size 25.5 has the greatest fit chance, 63 %, at 12 mmHg; over … It rests on 3 readings; it would change with …"
QString leadingSentence(const core::SizingAnswer& answer);
/// "enough: 24.3 mm of 14.0 mm", "2.1 mm short", "not known".
QString depthWords(const core::SizeFit& fit);
/// "9.1 to 27.3 %" of the nominal size over the widths to live with; ends beyond the size are said as narrower.
QString compressionRangeWords(const core::SizeFit& fit, const core::Band& widthsMm);
/// What the acts of "what next" are called: "Measure the left atrial pressure".
QString actWords(core::Act act);

} // namespace gauge::app
