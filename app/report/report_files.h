// Everything that leaves with a case's report, into one folder:
//
//   report.pdf          the printed report             report-pdf.dcm    the same as Encapsulated PDF
//   report-sr.dcm       Structured Report, TID 1500    values.csv        every value, a line each
//   report.json         values, answer and decision    pictures/         key images: NAME.png, NAME.dcm
//   surface.stl         surface of the blood, mm       surface-stl.dcm   the same as Encapsulated STL
//
// With names hidden nothing is written as DICOM: an object without its patient could not be filed (there is
// export_without_identity.h for passing images on).
#pragma once

#include "app/document/answers.h"
#include "app/report/report_pages.h"

#include <filesystem>
#include <vector>

namespace gauge::app {

struct ReportRequest {
    Paper paper = Paper::A4;
    bool namesHidden = false;
};

struct ReportFiles {
    std::vector<std::filesystem::path> written;
    /// `report-without-images`: the images of the case are not at hand, so there are no pictures and no DICOM objects;
    /// `image-not-referred`.
    std::vector<core::Notice> notices;
};

/// @param answers  finished (Answers::finishNow). Precondition: a GUI application exists.
/// @param folder  made when absent; files of those names are replaced, others stay.
/// @errors OutputUnwritable, naming the file; those of dicomio/report.
core::Result<ReportFiles> writeReportFiles(Answers& answers, const std::filesystem::path& folder, const ReportRequest& request);

/// The printed report alone, for preview, printer and PDF.
PrintedReport printedReport(Answers& answers, bool namesHidden);

} // namespace gauge::app
