// A whole invented course beside the synthetic CT: moments with pressures, echo before and after a repair, fluoroscopy, a typed
// reading, stasis, a chart, and a look at the implant. Everything enters as edits.
#pragma once

#include "app/document/case_document.h"

namespace gauge::fixture {

/// Text of the invented plug chart.
std::string demoChartText();

/// Values of a group as a measurement would record them, resting on these inputs as they are now.
void recordValues(app::CaseDocument& document, const std::string& group,
                  const std::vector<std::pair<std::string, double>>& values, const std::vector<std::string>& inputs);

/// Moments "ct-day" (17 mmHg by echo), "start" (19 mmHg, v 36) and "clipped" (9 mmHg, v 13); four echo views with drawings at
/// each of the last two, one fluoroscopy run, a typed 3D echo, stasis before and after.
void addCourse(app::CaseDocument& document);

/// CT values from the formula of the synthetic case, for documents without a session.
void addCtValues(app::CaseDocument& document);

/// Loads the invented plug chart at 12 mmHg.
void addChart(app::CaseDocument& document);

/// Items of both scores.
void addScores(app::CaseDocument& document);

/// Two looks at the implant, attached and after release.
void addRelease(app::CaseDocument& document);

} // namespace gauge::fixture
