// What the report of a case says, from the record and the answers that follow from it. Order: decision and what speaks
// against it, comparison of the readings, sizes, their seats, pressures, working projections,
// pictures, release, how it was measured, cautions.
#pragma once

#include "app/document/answers.h"
#include "app/format/patient_words.h"
#include "app/report/printed_report.h"

#include <memory>
#include <vector>

namespace gauge::app {

class ComparisonModel;

/// What a report is made of.
struct CaseReportSource {
    const Answers* answers = nullptr;               ///< never null; finished
    const ComparisonModel* comparison = nullptr; ///< the comparison table as on screen; null: the part is left out
    std::vector<ReportPicture> pictures;
    std::shared_ptr<const core::Volume> volume;  ///< null: without pictures cut from the images
    const core::LandingZone* landing = nullptr;  ///< the one that is shown; may be null
    bool namesHidden = false;
    QString program; ///< name and version
    QString time;    ///< when the report was made

    const core::CaseRecord& record() const { return answers->record(); }
};

PrintedReport caseReport(const CaseReportSource& source);

/// The comparison table as the screen shows it, without rows that have no value: each cell with the value carried to the
/// decision pressure and the difference from CT below it.
ReportTable tableOf(const ComparisonModel& model);

} // namespace gauge::app
