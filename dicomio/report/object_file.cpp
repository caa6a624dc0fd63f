#include <dcmtk/config/osconfig.h>

#include "dicomio/report/object_file.h"

#include "core/record/case_checksum.h"
#include "dicomio/report/content_coding.h"
#include "dicomio/toolkit.h"

#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <map>
#include <random>
#include <unistd.h>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;
namespace fs = std::filesystem;

constexpr const char* kProgram = "Ostium Gauge";
constexpr const char* kVersion = GAUGE_VERSION;

tl::unexpected<core::Error> unwritable(const fs::path& path, const std::string& why) {
    return failure(ErrorCode::OutputUnwritable,
                   "Cannot write " + path.string() + ": " + why + ". Choose another folder, or make room.",
                   {{"path", path.string()}});
}

/// Decimal form of a 128-bit number, most significant byte first.
std::string decimalOf(std::array<std::uint8_t, 16> bytes) {
    std::string out;
    for (bool more = true; more;) {
        unsigned rest = 0;
        more = false;
        for (std::uint8_t& byte : bytes) {
            const unsigned value = rest * 256 + byte;
            byte = static_cast<std::uint8_t>(value / 10);
            rest = value % 10;
            more = more || byte != 0;
        }
        out.insert(out.begin(), static_cast<char>('0' + rest));
    }
    return out;
}

std::string uidOfUuid(std::array<std::uint8_t, 16> bytes, unsigned version) {
    bytes[6] = static_cast<std::uint8_t>((bytes[6] & 0x0F) | (version << 4));
    bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3F) | 0x80);
    return "2.25." + decimalOf(bytes);
}

fs::path beside(const fs::path& path) {
    fs::path out = path;
    out += ".part-" + std::to_string(::getpid());
    return out;
}

/// Everything was put in as UTF-8. Where less will do, less is declared, which more receivers know: none for
/// ASCII, ISO_IR 100 for Latin letters.
void settleCharacterSet(DcmFileFormat& file) {
    DcmDataset& dataset = *file.getDataset();
    if (!dataset.containsExtendedCharacters()) {
        dataset.findAndDeleteElement(DCM_SpecificCharacterSet);
        return;
    }
    DcmDataset latin(dataset);
    if (latin.convertCharacterSet("ISO_IR 192", "ISO_IR 100").bad()) return;
    latin.putAndInsertString(DCM_SpecificCharacterSet, "ISO_IR 100");
    dataset = latin;
}

/// Brings what was written beside onto the disk and into its place.
Result<void> settle(const fs::path& part, const fs::path& path) {
    const int handle = ::open(part.c_str(), O_RDONLY | O_CLOEXEC);
    const bool synced = handle >= 0 && ::fsync(handle) == 0;
    const std::string why = std::strerror(errno);
    if (handle >= 0) ::close(handle);
    std::error_code fault, ignored;
    if (synced) fs::rename(part, path, fault);
    if (synced && !fault) return {};
    fs::remove(part, ignored);
    return unwritable(path, synced ? fault.message() : why);
}

} // namespace

std::string newUid() {
    std::random_device random;
    std::array<std::uint8_t, 16> bytes{};
    for (std::uint8_t& byte : bytes)
        byte = static_cast<std::uint8_t>(random());
    return uidOfUuid(bytes, 4);
}

std::string derivedUid(const std::string& scope, const std::string& text) {
    const std::string whole = std::to_string(scope.size()) + ":" + scope + text;
    const std::string digits = core::sha256(whole);
    std::array<std::uint8_t, 16> bytes{};
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<std::uint8_t>(std::stoi(digits.substr(2 * i, 2), nullptr, 16));
    return uidOfUuid(bytes, 8);
}

ReportDevice completed(ReportDevice device) {
    const auto fill = [](std::string& text, const char* with) {
        if (text.empty()) text = with;
    };
    fill(device.manufacturer, kProgram);
    fill(device.model, kProgram);
    fill(device.softwareVersion, kVersion);
    fill(device.serialNumber, "none");
    if (device.uid.empty())
        device.uid = derivedUid(device.model, device.softwareVersion + "/" + device.serialNumber);
    return device;
}

void putText(DcmItem& into, unsigned group, unsigned element, const std::string& text, std::size_t longest) {
    into.putAndInsertOFStringArray(DcmTagKey(static_cast<Uint16>(group), static_cast<Uint16>(element)),
                                   oneLine(text, longest).c_str());
}

Result<WrittenObject> putCommon(DcmItem& into, const ObjectContext& context, const ObjectKind& kind) {
    initialiseToolkit();
    if (context.study.studyUid.empty())
        return failure(ErrorCode::InvalidArgument,
                       std::string("Cannot write the ") + kind.seriesDescription + ": its study has no UID.");
    const DicomTime time = dicomTime(context.time);
    if (time.date.empty() || time.time.empty())
        return failure(ErrorCode::InvalidArgument, std::string("Cannot write the ") + kind.seriesDescription +
                                                       ": its time \"" + context.time +
                                                       "\" is no ISO 8601 date and time.");
    WrittenObject made{
        {}, kind.sopClassUid, newUid(), context.seriesUid.empty() ? newUid() : context.seriesUid};
    const ReportDevice device = completed(context.device);
    const auto put = [&](const DcmTagKey& tag, const std::string& text, std::size_t longest = 64) {
        putText(into, tag.getGroup(), tag.getElement(), text, longest);
    };
    put(DCM_SpecificCharacterSet, "ISO_IR 192");
    put(DCM_InstanceCreationDate, time.date);
    put(DCM_InstanceCreationTime, time.time);
    put(DCM_SOPClassUID, made.sopClassUid);
    put(DCM_SOPInstanceUID, made.sopInstanceUid);
    if (!time.offset.empty()) put(DCM_TimezoneOffsetFromUTC, time.offset);
    put(DCM_PatientName, context.patient.name, 192);
    put(DCM_PatientID, context.patient.id);
    if (!context.patient.issuerOfId.empty()) put(DCM_IssuerOfPatientID, context.patient.issuerOfId);
    put(DCM_PatientBirthDate, context.patient.birthDate);
    put(DCM_PatientSex, context.patient.sex);
    put(DCM_StudyInstanceUID, context.study.studyUid);
    put(DCM_StudyDate, context.study.date);
    put(DCM_StudyTime, context.study.time);
    put(DCM_StudyID, context.study.studyId, 16);
    put(DCM_AccessionNumber, context.study.accessionNumber, 16);
    put(DCM_ReferringPhysicianName, context.study.referringPhysician, 192);
    if (!context.study.description.empty()) put(DCM_StudyDescription, context.study.description);
    put(DCM_Modality, kind.modality);
    put(DCM_SeriesInstanceUID, made.seriesUid);
    put(DCM_SeriesNumber, std::to_string(kind.seriesNumber));
    put(DCM_SeriesDate, time.date);
    put(DCM_SeriesTime, time.time);
    put(DCM_SeriesDescription, context.description.empty() ? kind.seriesDescription : context.description);
    put(DCM_InstanceNumber, std::to_string(context.instanceNumber));
    put(DCM_Manufacturer, device.manufacturer);
    put(DCM_ManufacturerModelName, device.model);
    put(DCM_DeviceSerialNumber, device.serialNumber);
    put(DCM_SoftwareVersions, device.softwareVersion);
    put(DCM_ContentDate, time.date);
    put(DCM_ContentTime, time.time);
    return made;
}

namespace {

/// ReferencedSeriesSequence with the images of one study.
void putSeries(DcmItem& into, const std::vector<const SourceImage*>& images, const DcmTagKey& instanceTag) {
    std::map<std::string, std::vector<const SourceImage*>> bySeries;
    for (const SourceImage* image : images)
        bySeries[image->seriesUid].push_back(image);
    for (const auto& [seriesUid, instances] : bySeries) {
        DcmItem* series = nullptr;
        into.findOrCreateSequenceItem(DCM_ReferencedSeriesSequence, series, -2);
        series->putAndInsertString(DCM_SeriesInstanceUID, seriesUid.c_str());
        for (const SourceImage* image : instances) {
            DcmItem* instance = nullptr;
            series->findOrCreateSequenceItem(instanceTag, instance, -2);
            instance->putAndInsertString(DCM_ReferencedSOPClassUID, image->sopClassUid.c_str());
            instance->putAndInsertString(DCM_ReferencedSOPInstanceUID, image->sopInstanceUid.c_str());
        }
    }
}

std::map<std::string, std::vector<const SourceImage*>> byStudy(const std::vector<SourceImage>& images) {
    std::map<std::string, std::vector<const SourceImage*>> out;
    for (const SourceImage& image : images)
        out[image.studyUid].push_back(&image);
    return out;
}

} // namespace

void putEvidence(DcmItem& into, unsigned group, unsigned element, const std::vector<SourceImage>& images) {
    const DcmTagKey tag(static_cast<Uint16>(group), static_cast<Uint16>(element));
    for (const auto& [studyUid, ofStudy] : byStudy(images)) {
        DcmItem* study = nullptr;
        into.findOrCreateSequenceItem(tag, study, -2);
        study->putAndInsertString(DCM_StudyInstanceUID, studyUid.c_str());
        putSeries(*study, ofStudy, DCM_ReferencedSOPSequence);
    }
}

void putInstanceReferences(DcmItem& into, const std::string& studyUid,
                           const std::vector<SourceImage>& images) {
    for (const auto& [uid, ofStudy] : byStudy(images)) {
        if (uid == studyUid) {
            putSeries(into, ofStudy, DCM_ReferencedInstanceSequence);
            continue;
        }
        DcmItem* study = nullptr;
        into.findOrCreateSequenceItem(DCM_StudiesContainingOtherReferencedInstancesSequence, study, -2);
        study->putAndInsertString(DCM_StudyInstanceUID, uid.c_str());
        putSeries(*study, ofStudy, DCM_ReferencedInstanceSequence);
    }
}

Result<void> save(DcmFileFormat& file, const fs::path& path) {
    settleCharacterSet(file);
    const fs::path part = beside(path);
    const OFCondition saved =
        file.saveFile(part.c_str(), EXS_LittleEndianExplicit, EET_ExplicitLength, EGL_recalcGL);
    if (saved.good()) return settle(part, path);
    std::error_code ignored;
    fs::remove(part, ignored);
    return unwritable(path, saved.text());
}

Result<void> save(std::span<const std::uint8_t> bytes, const fs::path& path) {
    const fs::path part = beside(path);
    errno = 0;
    {
        std::ofstream out(part, std::ios::binary);
        out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
        out.close();
        if (!out) {
            const std::string why = errno != 0 ? std::strerror(errno) : "the file could not be written";
            std::error_code ignored;
            fs::remove(part, ignored);
            return unwritable(path, why);
        }
    }
    return settle(part, path);
}

} // namespace gauge::dicomio
