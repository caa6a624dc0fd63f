// DICOM objects that leave the case beside its report (structured_report.h): the printed report as
// Encapsulated PDF, key images as Secondary Capture, a surface as Encapsulated STL. Each becomes a new
// instance in a series of its own, in the study that `ObjectContext` names. Files appear complete or not at
// all.
#pragma once

#include "core/result.h"
#include "dicomio/report/report_content.h"
#include "dicomio/report/structured_report.h"

#include <array>
#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace gauge::dicomio {

struct ObjectContext {
    ReportPatient patient;
    ReportStudy study;
    ReportDevice device;
    std::string time;        ///< ISO 8601 with offset
    std::string seriesUid;   ///< empty: a new one. Key images of one report share one.
    std::string description; ///< of the series
    int instanceNumber = 1;
    std::vector<SourceImage> sources; ///< images that it was made from; may be empty
};

/// @param pdf  the file's bytes. @param title  of the document, in words.
/// @errors InvalidArgument when the bytes are no PDF or the study has no UID; OutputUnwritable.
core::Result<WrittenObject> writeEncapsulatedPdf(const ObjectContext& context,
                                                 std::span<const std::uint8_t> pdf, const std::string& title,
                                                 const std::filesystem::path& file);

/// A picture as on screen: rows from the top, three bytes (red, green, blue) a pixel, without padding.
struct RgbPicture {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> bytes;
    std::string caption; ///< what it shows
};

/// @errors InvalidArgument when the bytes are not 3 × width × height, or the study has no UID;
/// OutputUnwritable.
core::Result<WrittenObject> writeKeyImage(const ObjectContext& context, const RgbPicture& picture,
                                          const std::filesystem::path& file);

/// Triangles with outward side counter-clockwise; corners in patient coordinates, LPS mm.
struct TriangleMesh {
    std::vector<core::PatientPoint> corners;
    std::vector<std::array<std::uint32_t, 3>> triangles;
};

/// The mesh as a binary STL file: 80 bytes of heading, count, then 50 bytes a triangle; mm.
/// @errors InvalidArgument: no triangle, a corner that does not exist, a number that is not finite.
core::Result<std::vector<std::uint8_t>> stlBytes(const TriangleMesh& mesh);

/// Plain STL. @errors those of stlBytes(); OutputUnwritable.
core::Result<void> writeStl(const TriangleMesh& mesh, const std::filesystem::path& file);

/// @param frameOfReferenceUid  in which the corners lie. @param title  what the surface shows.
/// @errors those of stlBytes(); InvalidArgument without frame of reference or study UID; OutputUnwritable.
core::Result<WrittenObject> writeEncapsulatedStl(const ObjectContext& context, const TriangleMesh& mesh,
                                                 const std::string& frameOfReferenceUid,
                                                 const std::string& title, const std::filesystem::path& file);

} // namespace gauge::dicomio
