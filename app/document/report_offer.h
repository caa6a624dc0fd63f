// Readings of somebody's DICOM Structured Report for the open case: what would be new, what the case holds already, what the
// comparison table has no place for, and whether the report is about another patient. Taking them is one step of undo.
#pragma once

#include "app/document/case_document.h"
#include "core/result.h"
#include "dicomio/report/readings_from_report.h"

#include <QString>
#include <QStringList>
#include <filesystem>
#include <vector>

namespace gauge::app {

struct ReportOffer {
    std::vector<dicomio::ReportReading> fresh; ///< with notes that say where they come from
    int present = 0;                           ///< that the case holds already, by the same value of the same moment
    std::vector<dicomio::LeftOutNumber> leftOut;
    /// What speaks against it that the report is about this patient: "The patient's ID is “A-1” here and “B-2” in the report."
    QStringList otherPatient;
    bool patientUnknown = false; ///< the case or the report names nobody: neither name nor ID
    core::Patient patient;       ///< as the report has it
    QString source;              ///< "report of 2030-01-02 by Fremde, Ärztin (Invented Echo Lab)"
};

/// Whether a file looks like a structured report: by its SOP class, which is read without the toolkit.
bool isReportFile(const QString& path);

/// @errors those of dicomio::readReport.
core::Result<ReportOffer> offerOf(const core::CaseRecord& record, const std::filesystem::path& report);
ReportOffer offerOf(const core::CaseRecord& record, const dicomio::ReadReport& report);

/// Enters all fresh readings, and moments for the pressures that they state, as one undoable step. A moment of the case with the
/// same stage, pressure and v wave is used as it is. A case without a patient gets that of the report.
/// @return how many readings; 0 when the case may only be read (the document then says why).
int takeReadings(CaseDocument& document, const ReportOffer& offer);

/// "3 readings were taken from …; 2 are in the case already; 4 numbers have no place in the table."
QString takenSentence(const ReportOffer& offer, int taken);

/// One line for each number that was left out: "Left Atrial Appendage Minor Axis, 18.2 mm: the table has no row for it."
QStringList leftOutLines(const ReportOffer& offer);

} // namespace gauge::app
