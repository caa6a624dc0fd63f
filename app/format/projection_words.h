// Working projections in the screen's language.
#pragma once

#include "core/fluoro/working_views.h"
#include "core/record/case_record.h"

#include <QString>
#include <QStringList>
#include <string_view>

namespace gauge::app {

/// "longest width", "bend in profile", "one view for all"…
QString aimName(core::ViewAim aim);
/// "landing zone" or "ostium", of a section or the input id of its plane.
QString projectionSectionName(std::string_view section);

/// "24.3 mm (23.9 to 24.6 within 5°)"; "no width" for a view nearly en face.
QString viewWidthWords(const core::ViewReading& reading);

/// What the view does not show of its aim, each a part of a sentence: "1.2 mm of the longest not shown", "12° from edge-on". Of a
/// view that serves one aim what matters for it; of OneForAll, everything.
QStringList viewLossWords(const core::WorkingView& view);

/// Everything that a view shows of a section, one sentence or part a line; for the readout.
QStringList viewReadingWords(const core::ViewReading& reading);

/// "on the back (HFS)", "on the face (HFP)", "not told".
QString lyingWords(const std::string& patientPosition);

} // namespace gauge::app
