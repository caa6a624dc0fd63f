// The sections of a case's report, one function each; a section without blocks is left out. Private to app/report.
#pragma once

#include "app/report/case_report.h"

namespace gauge::app {

ReportSection decisionPart(const CaseReportSource& source);
ReportSection comparisonPart(const CaseReportSource& source);
ReportSection sizesPart(const CaseReportSource& source);
ReportSection seatPart(const CaseReportSource& source);
ReportSection pressurePart(const CaseReportSource& source);
ReportSection projectionPart(const CaseReportSource& source);
ReportSection picturesPart(const CaseReportSource& source);
ReportSection septumPart(const CaseReportSource& source);
ReportSection releasePart(const CaseReportSource& source);
ReportSection methodPart(const CaseReportSource& source);

} // namespace gauge::app
