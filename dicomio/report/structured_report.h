// A report as a DICOM Structured Report by TID 1500 "Measurement Report": Comprehensive 3D SR where a region
// lies in the patient, else Comprehensive SR. Its reader: report_reader.h. Other objects of the same study:
// new_object.h.
//
// Template rows: PS3.16 TID 1500 with 1204 (language), 1001–1004 (observers), 1600 (image library), 1410 and
// 1501 (groups), 300, 310, 311 and 320 (measurements), 1502 (time point). Uncertainty: one standard
// deviation, (386136009, SCT, "Standard Deviation") as a property of the number. What the standard has no
// code for has one of scheme 99OSTIUM (report_codes.h).
#pragma once

#include "core/result.h"
#include "dicomio/report/report_content.h"

#include <filesystem>
#include <string>

namespace gauge::dicomio {

/// What identifies a written object.
struct WrittenObject {
    std::filesystem::path file;
    std::string sopClassUid;
    std::string sopInstanceUid;
    std::string seriesUid;
};

/// Writes `content` as a new instance in a new series of its study. The file appears complete or not at all.
/// Numbers are exact to the double (FloatingPointValue) beside a decimal string of at most 16 characters.
/// @errors InvalidArgument, naming what is missing or contradicts itself: no study UID, no title, a reference
/// to an image that is not among `content.images`, a region with too few points, a number that is not finite,
/// a unit without code. OutputUnwritable for the file.
core::Result<WrittenObject> writeStructuredReport(const ReportContent& content,
                                                  const std::filesystem::path& file);

/// A new UID, "2.25." and a random UUID (PS3.5 B.2).
std::string newUid();

/// The UID that stands for `text` within `scope`: the same for the same two texts. It is derived without a
/// key and hides nothing.
std::string derivedUid(const std::string& scope, const std::string& text);

} // namespace gauge::dicomio
