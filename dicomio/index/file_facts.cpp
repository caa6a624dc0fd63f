#include "dicomio/index/file_facts.h"

#include "dicomio/ct/ct_requirements.h"
#include "dicomio/scan/character_set.h"

#include <algorithm>

namespace gauge::dicomio {
namespace {

struct KnownClass {
    std::string_view uid; ///< after the root of storage classes
    std::string_view kind;
};

constexpr std::string_view kStorageRoot = "1.2.840.10008.5.1.4.1.1.";

constexpr KnownClass kClasses[] = {
    {"2", "ct"},
    {"2.1", "ct-enhanced"},
    {"2.2", "ct-enhanced"}, // legacy converted
    {"3", "ultrasound"},    // retired
    {"3.1", "ultrasound"},
    {"6", "ultrasound"}, // retired
    {"6.1", "ultrasound"},
    {"6.2", "ultrasound"},
    {"1", "x-ray"},
    {"1.1", "x-ray"},
    {"1.1.1", "x-ray"},
    {"12.1", "x-ray"},
    {"12.1.1", "x-ray"},
    {"12.2", "x-ray"},
    {"12.2.1", "x-ray"},
    {"12.3", "x-ray"}, // retired
    {"7", "secondary-capture"},
    {"7.1", "secondary-capture"},
    {"7.2", "secondary-capture"},
    {"7.3", "secondary-capture"},
    {"7.4", "secondary-capture"},
    {"104.1", "report"},
};

/// Reports of radiation dose: X-ray, radiopharmaceutical, patient, enhanced X-ray.
constexpr std::string_view kDoseReports[] = {"88.67", "88.68", "88.75", "88.76"};

bool isDoseReport(std::string_view sopClassUid) {
    if (sopClassUid.substr(0, kStorageRoot.size()) != kStorageRoot) return false;
    const std::string_view end = sopClassUid.substr(kStorageRoot.size());
    return std::find(std::begin(kDoseReports), std::end(kDoseReports), end) != std::end(kDoseReports);
}

/// A CT image that was made after the examination (ImageType, value 2) and has no place in the patient: a
/// picture of a screen or of a dose table.
bool isPictureOnly(const Dataset& dataset) {
    const auto type = dataset.texts(tags::ImageType);
    return type.size() > 1 && type[1] == "SECONDARY" && dataset.text(tags::ImagePositionPatient).empty();
}

bool isImageKind(std::string_view kind) {
    return kind == "ct" || kind == "ct-enhanced" || kind == "ultrasound" || kind == "x-ray" ||
           kind == "secondary-capture";
}

/// Geometry of every frame, up to the first that cannot be read.
void takeSlices(const ScannedFile& scanned, FileFacts& facts) {
    for (int frame = 0; frame < scanned.format->frames; ++frame) {
        auto slice = sliceFacts(scanned, frame);
        if (!slice) {
            core::Error error = std::move(slice.error());
            error.message = "Cannot place " + scanned.path.string() + " in the patient: " + error.message;
            facts.geometryError = std::move(error);
            facts.slices.clear();
            return;
        }
        facts.slices.push_back(std::move(*slice));
    }
}

} // namespace

std::string kindOf(std::string_view sopClassUid) {
    if (sopClassUid.substr(0, kStorageRoot.size()) != kStorageRoot) return "other";
    const std::string_view end = sopClassUid.substr(kStorageRoot.size());
    for (const KnownClass& known : kClasses)
        if (known.uid == end) return std::string(known.kind);
    return end.substr(0, 3) == "88." ? "report" : "other";
}

core::Result<FileFacts> fileFacts(const ScannedFile& scanned) {
    const Dataset& dataset = scanned.dataset;
    const auto sets = dataset.texts(tags::SpecificCharacterSet);
    const auto text = [&](Tag tag) { return toUtf8(dataset.text(tag), sets); };
    FileFacts facts;
    facts.path = scanned.path;
    facts.sopInstanceUid = text(tags::SopInstanceUid);
    facts.seriesUid = text(tags::SeriesInstanceUid);
    facts.studyUid = text(tags::StudyInstanceUid);
    facts.patientId = text(tags::PatientId);
    facts.patientName = text(tags::PatientName);
    facts.patientBirthDate = text(tags::PatientBirthDate);
    facts.patientSex = text(tags::PatientSex);
    facts.patientPosition = text(tags::PatientPosition);
    facts.issuerOfPatientId = text(tags::IssuerOfPatientId);
    facts.modality = text(tags::Modality);
    facts.kind = kindOf(scanned.sopClassUid());
    if (facts.kind == "ct" && isPictureOnly(dataset)) facts.kind = "secondary-capture";
    facts.doseReport = isDoseReport(scanned.sopClassUid());
    facts.acquired = acquisitionTime(dataset);
    facts.description = text(tags::SeriesDescription);
    facts.frameOfReferenceUid = text(tags::FrameOfReferenceUid);
    facts.syntax = scanned.syntax;
    facts.lossy =
        (scanned.format && !scanned.syntax.lossless && scanned.syntax.coding != PixelCoding::Jpeg2000) ||
        dataset.text(tags::LossyImageCompression) == "01";
    facts.format = scanned.format;
    facts.pixels = scanned.pixels;
    facts.frames = scanned.format ? scanned.format->frames : 0;
    facts.notices = scanned.notices;
    if (facts.seriesUid.empty())
        return core::failure(core::ErrorCode::AttributeMissing,
                             describe(tags::SeriesInstanceUid) +
                                 (dataset.has(tags::SeriesInstanceUid) ? " is empty." : " is absent.") +
                                 " Nothing tells to which series the file belongs.",
                             {{"tag", describe(tags::SeriesInstanceUid)}, {"file", scanned.path.string()}});
    if (isImageKind(facts.kind) && !scanned.pixels)
        return core::failure(core::ErrorCode::AttributeMissing,
                             describe(tags::PixelData) +
                                 " is absent: the file is cut off, or holds no image.",
                             {{"tag", describe(tags::PixelData)},
                              {"file", scanned.path.string()},
                              {"series", facts.seriesUid}});
    if ((facts.kind == "ultrasound" || facts.kind == "x-ray") && scanned.format)
        facts.picture = pictureFacts(scanned, facts.kind);
    const bool placed = facts.kind == "ct" || facts.kind == "ct-enhanced" ||
                        (facts.kind == "other" && dataset.has(tags::ImagePositionPatient));
    if (placed && scanned.format) takeSlices(scanned, facts);
    for (SliceFacts& slice : facts.slices)
        slice.phase.description = facts.description;
    return facts;
}

} // namespace gauge::dicomio
