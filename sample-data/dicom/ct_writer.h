// Writes volumes as classic CT images (CT Image Storage, one file a slice, explicit little endian), complete
// after PS3.3 A.3 and with geometry to the last digit that a decimal string of 16 characters holds.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace gauge::sample_case {

/// One cardiac phase: a volume of Hounsfield units. All phases of a series share the frame of reference.
struct CtPhase {
    std::shared_ptr<const core::Volume> volume;
    std::optional<double> percent; ///< of the R-R interval: Nominal Percentage of Cardiac Phase (0020,9241)
};

struct CtSeries {
    /// UIDs come from this text and the place of the image, so that the same text gives the same UIDs.
    std::string uidText = "gauge";
    std::string patientName = "Invented^Patient"; ///< UTF-8, written as ISO_IR 192
    std::string patientId = "INVENTED";
    std::string birthDate; ///< YYYYMMDD or empty
    std::string sex;       ///< M, F, O or empty
    std::string studyDescription = "Invented study";
    std::string seriesDescription = "Invented CT";
    std::string date = "20260105"; ///< of study, series and acquisition, YYYYMMDD
    std::string time = "101500";   ///< HHMMSS
    std::string comments = "Invented images made by formula; no patient.";
    double heartRatePerMin = 60.0;
    double windowCenterHu = 250.0;
    double windowWidthHu = 900.0;
    /// true: two's complement with intercept 0; false: unsigned with intercept -1024.
    bool signedPixels = true;
};

/// A UID under 2.25 (PS3.5 B.2) that depends on the text alone.
std::string uidFrom(const std::string& text);

/// A number as DICOM decimal string: the closest of at most 16 characters.
std::string decimalString(double value);

/// The files that `writeCtSeries` makes for phases of these sizes, relative to its folder.
std::vector<std::filesystem::path> ctSeriesFiles(const std::vector<CtPhase>& phases);

/// Writes every slice into `folder` (made when absent): one subfolder a phase when there are several phases.
/// Existing files of the same names are replaced. Parallel over slices.
/// @param phases  at least one, of HU volumes without shear, at most 65535 rows and columns.
/// @errors InvalidArgument for phases that cannot be written so; OutputUnwritable naming the file and the
/// reason; Cancelled (files written so far stay). Accuracy: values outside -1024..31743 HU are held at those
/// ends when pixels are unsigned.
core::Result<std::vector<std::filesystem::path>> writeCtSeries(const std::vector<CtPhase>& phases,
                                                               const CtSeries& series,
                                                               const std::filesystem::path& folder,
                                                               const core::WorkContext& work = {});

} // namespace gauge::sample_case
