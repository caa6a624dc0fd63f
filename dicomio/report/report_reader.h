// Reads measurement reports: our own back into values, and others' TID 1500 reports into rows of a comparison
// table. Every file passes the scanner first (dicomio/scan/scanner.h); the toolkit never sees what that
// refuses.
#pragma once

#include "core/result.h"
#include "dicomio/report/report_content.h"
#include "dicomio/scan/scanner.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// A report's own levels of content; deeper ones are refused.
inline constexpr int kMaxReportLevels = 20;
inline constexpr std::size_t kMaxReportItems = 200000;

/// A report as read. Of a report that is not ours the groups hold what TID 1500 has a place for; concepts
/// that nobody here knows keep their code and meaning.
struct ReadReport {
    ReportContent content;
    std::string sopClassUid;
    std::string sopInstanceUid;
    std::string seriesUid;
    std::string characterSet;
    bool ours = false; ///< written by this program: device observer and private codes say so
    bool complete = false;
    bool verified = false;
    std::vector<core::Notice> notices;
};

/// @errors those of scanFile(); ObjectUnsupported when it is no Enhanced, Comprehensive or Comprehensive 3D
/// SR, or no measurement report (no group of measurements in it); FileDamaged for content that is nested too
/// deeply or is too much; AttributeInvalid for a number, code or coordinate that cannot be read, naming its
/// concept. Notices: `report-item-ignored` for content items that have no place here (counted, not lost in
/// silence).
core::Result<ReadReport> readReport(const std::filesystem::path& file);

/// One number of a report for a table, with what is said of it.
struct ReportRow {
    std::string group; ///< tracking identifier of its group, or a running number
    Code name;
    std::string site; ///< meanings, joined by ", "
    double value = 0.0;
    Code unit;
    std::optional<double> standardUncertainty;
    std::string method;
    std::string derivation;
    std::string stage;
    std::string phase;
    std::string observer; ///< who, as far as stated
    std::string time;     ///< of the observation, else of the report
};

/// All numbers of a report in its order.
std::vector<ReportRow> rowsOf(const ReadReport& report);

} // namespace gauge::dicomio
