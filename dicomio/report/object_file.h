// What all objects that we write have in common: patient, study, series, equipment, and the way into a file.
// Private to dicomio/report.
#pragma once

#include "core/result.h"
#include "dicomio/report/new_object.h"

#include <filesystem>
#include <string>

class DcmFileFormat;
class DcmItem;

namespace gauge::dicomio {

struct ObjectKind {
    const char* sopClassUid;
    const char* modality;
    const char* seriesDescription;
    int seriesNumber;
};

/// Fills in what is empty: this program and its version; a UID for both.
ReportDevice completed(ReportDevice device);

/// Patient, study, series, equipment, SOP common and content date of a new instance.
/// @errors InvalidArgument when the study has no UID or the time cannot be read.
core::Result<WrittenObject> putCommon(DcmItem& into, const ObjectContext& context, const ObjectKind& kind);

/// Puts a text; empty texts become empty (type 2) attributes.
void putText(DcmItem& into, unsigned group, unsigned element, const std::string& text,
             std::size_t longest = 64);

/// Study, series and instance of every image, as an evidence sequence of that tag wants it.
void putEvidence(DcmItem& into, unsigned group, unsigned element, const std::vector<SourceImage>& images);

/// Common Instance Reference module: the images by series, those of other studies apart.
void putInstanceReferences(DcmItem& into, const std::string& studyUid,
                           const std::vector<SourceImage>& images);

/// Writes beside the file and renames. @errors OutputUnwritable.
core::Result<void> save(DcmFileFormat& file, const std::filesystem::path& path);
core::Result<void> save(std::span<const std::uint8_t> bytes, const std::filesystem::path& path);

} // namespace gauge::dicomio
