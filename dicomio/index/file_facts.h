// What the index needs to know of one file, taken from its scan; everything else of the scan is let go.
#pragma once

#include "core/result.h"
#include "dicomio/ct/slice_facts.h"
#include "dicomio/index/acquisition_time.h"
#include "dicomio/index/picture_facts.h"
#include "dicomio/scan/scanner.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

struct FileFacts {
    std::filesystem::path path;
    std::string sopInstanceUid;
    std::string seriesUid;
    std::string studyUid;
    std::string patientId; ///< UTF-8
    std::string issuerOfPatientId;
    std::string patientName; ///< UTF-8
    std::string patientBirthDate, patientSex;
    std::string patientPosition; ///< (0018,5100) as in the file, or empty
    std::string modality;
    std::string kind;        ///< see SeriesEntry::kind
    std::string description; ///< UTF-8
    std::string frameOfReferenceUid;
    TransferSyntax syntax;
    bool lossy = false; ///< compressed with loss, now or earlier
    std::optional<PixelFormat> format;
    std::optional<PixelLocation> pixels; ///< of encapsulated files only the lengths matter here
    int frames = 0;                      ///< 0 for files without pixels
    std::optional<AcquisitionTime> acquired;
    bool doseReport = false;             ///< a report of radiation dose
    std::optional<PictureFacts> picture; ///< of ultrasound and X-ray with pixels
    /// Frames with their geometry; empty for kinds without one, or when `geometryError` says why not.
    std::vector<SliceFacts> slices;
    std::optional<core::Error> geometryError;
    std::vector<core::Notice> notices;
};

/// "ct", "ct-enhanced", "ultrasound", "x-ray", "report", "secondary-capture" or "other" of a SOP class (PS3.4
/// B.5).
std::string kindOf(std::string_view sopClassUid);

/// @errors AttributeMissing when the file does not say to which series it belongs.
core::Result<FileFacts> fileFacts(const ScannedFile& scanned);

} // namespace gauge::dicomio
