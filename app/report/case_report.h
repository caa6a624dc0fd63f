// What the report of a case says, from the record and the answers that follow from it. Order: decision and what speaks
// against it, comparison of the readings, sizes, pressures, pictures, release, how it was measured, cautions.
#pragma once

#include "app/document/answers.h"
#include "app/report/printed_report.h"

#include <vector>

class QAbstractItemModel;

namespace gauge::app {

/// What a report is made of.
struct CaseReportSource {
    const Answers* answers = nullptr;               ///< never null; finished
    const QAbstractItemModel* comparison = nullptr; ///< the comparison table as on screen; null: the part is left out
    int comparisonHeadingRole = -1;                 ///< of its model: true for rows that head a group
    std::vector<ReportPicture> pictures;
    bool namesHidden = false;
    QString program; ///< name and version
    QString time;    ///< when the report was made

    const core::CaseRecord& record() const { return answers->record(); }
};

PrintedReport caseReport(const CaseReportSource& source);

/// A table as the model shows it: header, DisplayRole of every cell. Rows whose `headingRole` is true head a group.
ReportTable tableOf(const QAbstractItemModel& model, int headingRole);

/// A DICOM person name for people: "Nemo, Ines". Empty for an empty name.
QString personName(const std::string& dicomName);

/// "1951-02-03" from "19510203"; anything else as it is.
QString isoDate(const std::string& dicomDate);

} // namespace gauge::app
