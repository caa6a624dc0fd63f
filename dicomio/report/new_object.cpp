#include <dcmtk/config/osconfig.h>

#include "dicomio/report/new_object.h"

#include "dicomio/report/content_coding.h"
#include "dicomio/report/content_item.h"
#include "dicomio/report/object_file.h"
#include "dicomio/report/report_codes.h"

#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>
#include <dcmtk/dcmdata/dcuid.h>
#include <dcmtk/dcmdata/dcvrobow.h>

#include <cstring>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

constexpr ObjectKind kPdf{UID_EncapsulatedPDFStorage, "DOC", "Printed report", 9002};
constexpr ObjectKind kPicture{UID_SecondaryCaptureImageStorage, "OT", "Key images", 9003};
constexpr ObjectKind kSurface{UID_EncapsulatedSTLStorage, "M3D", "Surface", 9004};

void put(DcmItem& into, const DcmTagKey& tag, const std::string& text, std::size_t longest = 64) {
    putText(into, tag.getGroup(), tag.getElement(), text, longest);
}

Result<void> putCodeSequence(DcmItem& into, const DcmTagKey& tag, const Code& code) {
    DcmItem* entry = nullptr;
    into.findOrCreateSequenceItem(tag, entry, -2);
    return encodeCode(code, *entry);
}

void putReference(DcmItem& into, const DcmTagKey& tag, const SourceImage& image) {
    DcmItem* entry = nullptr;
    into.findOrCreateSequenceItem(tag, entry, -2);
    put(*entry, DCM_ReferencedSOPClassUID, image.sopClassUid);
    put(*entry, DCM_ReferencedSOPInstanceUID, image.sopInstanceUid);
}

/// Bytes of even length; the true length stands in EncapsulatedDocumentLength.
Result<void> putDocument(DcmItem& into, std::span<const std::uint8_t> bytes) {
    if (bytes.size() >= 0xFFFFFFFEu)
        return failure(ErrorCode::InvalidArgument, "Cannot write the document: it is larger than 4 GB.");
    std::vector<Uint8> even(bytes.begin(), bytes.end());
    if (even.size() % 2 != 0) even.push_back(0);
    const OFCondition done = into.putAndInsertUint8Array(DCM_EncapsulatedDocument, even.data(),
                                                         static_cast<unsigned long>(even.size()));
    if (done.bad())
        return failure(ErrorCode::Internal,
                       std::string("Cannot put the document into the object: ") + done.text() + ".");
    into.putAndInsertUint32(DCM_EncapsulatedDocumentLength, static_cast<Uint32>(bytes.size()));
    return {};
}

/// Encapsulated Document module.
Result<void> putEncapsulation(DcmItem& into, const ObjectContext& context, const std::string& title,
                              const Code& name, const char* mime, std::span<const std::uint8_t> bytes) {
    put(into, DCM_AcquisitionDateTime, "");
    put(into, DCM_BurnedInAnnotation,
        context.patient.name.empty() && context.patient.id.empty() ? "NO" : "YES");
    for (const SourceImage& image : context.sources)
        putReference(into, DCM_SourceInstanceSequence, image);
    put(into, DCM_DocumentTitle, title, 1024);
    if (auto done = putCodeSequence(into, DCM_ConceptNameCodeSequence, name); !done) return done;
    put(into, DCM_MIMETypeOfEncapsulatedDocument, mime);
    return putDocument(into, bytes);
}

Result<WrittenObject> finish(Result<WrittenObject> made, DcmFileFormat& out,
                             const std::filesystem::path& file) {
    if (auto saved = save(out, file); !saved) return tl::unexpected(saved.error());
    made->file = file;
    return made;
}

} // namespace

Result<WrittenObject> writeEncapsulatedPdf(const ObjectContext& context, std::span<const std::uint8_t> pdf,
                                           const std::string& title, const std::filesystem::path& file) {
    if (pdf.size() < 5 || std::memcmp(pdf.data(), "%PDF-", 5) != 0)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot write the printed report as DICOM: its bytes do not begin with \"%PDF-\".");
    DcmFileFormat out;
    DcmItem& dataset = *out.getDataset();
    auto made = putCommon(dataset, context, kPdf);
    if (!made) return made;
    put(dataset, DCM_ConversionType, "WSD");
    if (auto done =
            putEncapsulation(dataset, context, title, codes::kMeasurementReport, "application/pdf", pdf);
        !done)
        return tl::unexpected(done.error());
    return finish(made, out, file);
}

Result<WrittenObject> writeKeyImage(const ObjectContext& context, const RgbPicture& picture,
                                    const std::filesystem::path& file) {
    constexpr int kLargestSide = 65535;
    const bool sides = picture.width > 0 && picture.height > 0 && picture.width <= kLargestSide &&
                       picture.height <= kLargestSide;
    const std::size_t needed = sides ? std::size_t{3} * static_cast<std::size_t>(picture.width) *
                                           static_cast<std::size_t>(picture.height)
                                     : 0;
    if (!sides || picture.bytes.size() != needed)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot write the key image: it is " + std::to_string(picture.width) + " x " +
                           std::to_string(picture.height) + " pixels with " +
                           std::to_string(picture.bytes.size()) + " bytes; three bytes a pixel are needed.");
    DcmFileFormat out;
    DcmItem& dataset = *out.getDataset();
    auto made = putCommon(dataset, context, kPicture);
    if (!made) return made;
    put(dataset, DCM_ConversionType, "WSD");
    put(dataset, DCM_Laterality, "");
    dataset.putAndInsertString(DCM_ImageType, "DERIVED\\SECONDARY");
    put(dataset, DCM_PatientOrientation, "");
    put(dataset, DCM_ImageComments, picture.caption, 1024);
    put(dataset, DCM_DerivationDescription,
        "Picture of the workstation with marks and measurements; not for measuring", 1024);
    for (const SourceImage& image : context.sources)
        putReference(dataset, DCM_SourceImageSequence, image);
    put(dataset, DCM_BurnedInAnnotation, "YES");
    put(dataset, DCM_LossyImageCompression, "00");
    dataset.putAndInsertUint16(DCM_SamplesPerPixel, 3);
    put(dataset, DCM_PhotometricInterpretation, "RGB");
    dataset.putAndInsertUint16(DCM_PlanarConfiguration, 0);
    dataset.putAndInsertUint16(DCM_Rows, static_cast<Uint16>(picture.height));
    dataset.putAndInsertUint16(DCM_Columns, static_cast<Uint16>(picture.width));
    dataset.putAndInsertUint16(DCM_BitsAllocated, 8);
    dataset.putAndInsertUint16(DCM_BitsStored, 8);
    dataset.putAndInsertUint16(DCM_HighBit, 7);
    dataset.putAndInsertUint16(DCM_PixelRepresentation, 0);
    std::vector<Uint8> even = picture.bytes;
    if (even.size() % 2 != 0) even.push_back(0);
    const OFCondition done =
        dataset.putAndInsertUint8Array(DCM_PixelData, even.data(), static_cast<unsigned long>(even.size()));
    if (done.bad())
        return failure(ErrorCode::Internal,
                       std::string("Cannot put the pixels into the key image: ") + done.text() + ".");
    return finish(made, out, file);
}

Result<WrittenObject> writeEncapsulatedStl(const ObjectContext& context, const TriangleMesh& mesh,
                                           const std::string& frameOfReferenceUid, const std::string& title,
                                           const std::filesystem::path& file) {
    if (frameOfReferenceUid.empty())
        return failure(ErrorCode::InvalidArgument,
                       "Cannot write the surface as DICOM: it has no frame of reference.");
    const auto bytes = stlBytes(mesh);
    if (!bytes) return tl::unexpected(bytes.error());
    DcmFileFormat out;
    DcmItem& dataset = *out.getDataset();
    auto made = putCommon(dataset, context, kSurface);
    if (!made) return made;
    put(dataset, DCM_FrameOfReferenceUID, frameOfReferenceUid);
    put(dataset, DCM_PositionReferenceIndicator, "");
    putInstanceReferences(dataset, context.study.studyUid, context.sources);
    const Code name = codes::own("laa-surface", "Surface of the left atrial appendage");
    if (auto done = putEncapsulation(dataset, context, title, name, "model/stl", *bytes); !done)
        return tl::unexpected(done.error());
    // A binary STL of ours names no person, whoever the patient is.
    put(dataset, DCM_BurnedInAnnotation, "NO");
    if (auto done = putCodeSequence(dataset, DCM_MeasurementUnitsCodeSequence, codes::unitCode("mm")); !done)
        return tl::unexpected(done.error());
    put(dataset, DCM_ModelModification, "NO");
    put(dataset, DCM_ModelMirroring, "NO");
    if (auto done = putCodeSequence(dataset, DCM_ModelUsageCodeSequence,
                                    codes::own("laa-planning", "Planning of left atrial appendage closure"));
        !done)
        return tl::unexpected(done.error());
    return finish(made, out, file);
}

} // namespace gauge::dicomio
