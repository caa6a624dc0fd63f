// What the report of a case says, from the record and the answers that follow from it. Order: decision and what speaks
// against it, comparison of the readings, sizes, pressures, pictures, release, how it was measured, cautions.
#pragma once

#include "app/report/printed_report.h"
#include "core/record/case_record.h"
#include "core/release/release_check.h"
#include "core/release/stasis.h"
#include "core/sizing/sizing.h"

#include <vector>

class QAbstractItemModel;

namespace gauge::app {

/// A look at the implant and what the check said of it.
struct CheckedLook {
    core::ReleaseState state;
    core::ReleaseReport report;
};

/// What a report is made of. Pointers may be null: the part is then left out, or said to be missing.
struct CaseReportSource {
    const core::CaseRecord* record = nullptr; ///< never null
    const core::DeviceChart* chart = nullptr;
    const core::SizingAnswer* sizing = nullptr;
    QString whyNoSizing;                            ///< in words, when there is no answer
    const QAbstractItemModel* comparison = nullptr; ///< the comparison table as on screen
    std::vector<CheckedLook> looks;
    core::StasisJudgement stasis;
    std::vector<ReportPicture> pictures;
    std::vector<core::Notice> notices; ///< of images, geometry and readings
    bool namesHidden = false;
    QString program; ///< name and version
    QString time;    ///< when the report was made
};

PrintedReport caseReport(const CaseReportSource& source);

/// A table as the model shows it: header, DisplayRole of every cell. Rows whose `headingRole` is true head a group.
ReportTable tableOf(const QAbstractItemModel& model, int headingRole);

/// A DICOM person name for people: "Nemo, Ines". Empty for an empty name.
QString personName(const std::string& dicomName);

/// "1951-02-03" from "19510203"; anything else as it is.
QString isoDate(const std::string& dicomDate);

} // namespace gauge::app
