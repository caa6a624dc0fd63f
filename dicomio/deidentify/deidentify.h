// Images without identity: PS3.15 Annex E, Basic Application Level Confidentiality Profile with the options of profile.h.
// What cannot be made safe is refused, not written.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "dicomio/deidentify/profile.h"
#include "dicomio/deidentify/pseudonyms.h"

#include <filesystem>
#include <string>
#include <vector>

namespace gauge::dicomio {

struct DeidentifiedFile {
    std::filesystem::path file;
    std::string sopInstanceUid; ///< the new one
    /// `burned-in-text`: pixels outside the calibrated regions were blanked; look at the picture all the same.
    std::vector<core::Notice> notices;
};

/// Writes one image without identity. Pixels stay as they are coded, unless they must be cleaned: then they are written
/// uncompressed, with everything outside the calibrated ultrasound regions black.
/// The file that would leave is searched for every name, number, place and UID of the original; nothing is written where one
/// is found.
/// @errors those of scanFile; ObjectUnsupported for what is no image (reports and documents hold words), and for pictures
/// whose burned-in text cannot be told from the image (BurnedInAnnotation says YES or nothing for ultrasound, and no region
/// is given); OutputUnwritable. Messages name files, never the patient.
core::Result<DeidentifiedFile> deidentifyFile(const std::filesystem::path& original, const std::filesystem::path& target,
                                              const Pseudonyms& pseudonyms, const DeidentifyOptions& options);

struct DeidentifiedFolder {
    std::vector<DeidentifiedFile> written;
    std::vector<core::Notice> refused; ///< `not-exported`: one per file that was not written, with the reason
};

/// Every DICOM file of a folder and below it, as 000001.dcm and so on (names of files can be names of people).
/// @param target  made when absent; must be empty, so that nothing of another patient stands beside it.
/// @errors InvalidArgument when `target` holds anything; OutputUnwritable; FileUnreadable; Cancelled.
core::Result<DeidentifiedFolder> deidentifyFolder(const std::filesystem::path& original, const std::filesystem::path& target,
                                                  const Pseudonyms& pseudonyms, const DeidentifyOptions& options,
                                                  const core::WorkContext& work);

} // namespace gauge::dicomio
