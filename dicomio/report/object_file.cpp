#include <dcmtk/config/osconfig.h>

#include "dicomio/report/object_file.h"

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
constexpr const char* kVersion = "0.1.0";

tl::unexpected<core::Error> unwritable(const fs::path& path, const std::string& why) {
    return failure(ErrorCode::OutputUnwritable, "Cannot write " + path.string() + ": " + why + ". Choose another folder, or make room.",
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

/// A 64-bit hash (FNV-1a, then mixed as in splitmix64); for telling apart, not for hiding.
std::uint64_t hashOf(const std::string& text, std::uint64_t start) {
    std::uint64_t hash = 0xcbf29ce484222325u ^ start;
    for (const unsigned char c : text) hash = (hash ^ c) * 0x100000001b3u;
    hash = (hash ^ (hash >> 30)) * 0xbf58476d1ce4e5b9u;
    hash = (hash ^ (hash >> 27)) * 0x94d049bb133111ebu;
    return hash ^ (hash >> 31);
}

fs::path beside(const fs::path& path) {
    fs::path out = path;
    out += ".part-" + std::to_string(::getpid());
    return out;
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
    for (std::uint8_t& byte : bytes) byte = static_cast<std::uint8_t>(random());
    return uidOfUuid(bytes, 4);
}

std::string derivedUid(const std::string& scope, const std::string& text) {
    const std::string whole = std::to_string(scope.size()) + ":" + scope + text;
    const std::uint64_t high = hashOf(whole, 0), low = hashOf(whole, 0x9e3779b97f4a7c15u);
    std::array<std::uint8_t, 16> bytes{};
    for (std::size_t i = 0; i < 8; ++i) {
        bytes[i] = static_cast<std::uint8_t>(high >> (8 * i));
        bytes[8 + i] = static_cast<std::uint8_t>(low >> (8 * i));
    }
    return uidOfUuid(bytes, 8);
}

ReportDevice completed(ReportDevice device) {
    const auto fill = [](std::string& text, const char* with) { if (text.empty()) text = with; };
    fill(device.manufacturer, kProgram);
    fill(device.model, kProgram);
    fill(device.softwareVersion, kVersion);
    fill(device.serialNumber, "none");
    if (device.uid.empty()) device.uid = derivedUid(device.model, device.softwareVersion + "/" + device.serialNumber);
    return device;
}

void putText(DcmItem& into, unsigned group, unsigned element, const std::string& text, std::size_t longest) {
    into.putAndInsertOFStringArray(DcmTagKey(static_cast<Uint16>(group), static_cast<Uint16>(element)), oneLine(text, longest).c_str());
}

Result<WrittenObject> putCommon(DcmItem& into, const ObjectContext& context, const ObjectKind& kind) {
    initialiseToolkit();
    if (context.study.studyUid.empty())
        return failure(ErrorCode::InvalidArgument, std::string("Cannot write the ") + kind.seriesDescription + ": its study has no UID.");
    const DicomTime time = dicomTime(context.time);
    if (time.date.empty() || time.time.empty())
        return failure(ErrorCode::InvalidArgument, std::string("Cannot write the ") + kind.seriesDescription + ": its time \"" +
                       context.time + "\" is no ISO 8601 date and time.");
    WrittenObject made{{}, kind.sopClassUid, newUid(), context.seriesUid.empty() ? newUid() : context.seriesUid};
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

void putEvidence(DcmItem& into, unsigned group, unsigned element, const std::vector<SourceImage>& images) {
    const DcmTagKey tag(static_cast<Uint16>(group), static_cast<Uint16>(element));
    std::map<std::string, std::map<std::string, std::vector<const SourceImage*>>> byStudy;
    for (const SourceImage& image : images) byStudy[image.studyUid][image.seriesUid].push_back(&image);
    for (const auto& [studyUid, seriesOfStudy] : byStudy) {
        DcmItem* study = nullptr;
        into.findOrCreateSequenceItem(tag, study, -2);
        study->putAndInsertString(DCM_StudyInstanceUID, studyUid.c_str());
        for (const auto& [seriesUid, instances] : seriesOfStudy) {
            DcmItem* series = nullptr;
            study->findOrCreateSequenceItem(DCM_ReferencedSeriesSequence, series, -2);
            series->putAndInsertString(DCM_SeriesInstanceUID, seriesUid.c_str());
            for (const SourceImage* image : instances) {
                DcmItem* instance = nullptr;
                series->findOrCreateSequenceItem(DCM_ReferencedSOPSequence, instance, -2);
                instance->putAndInsertString(DCM_ReferencedSOPClassUID, image->sopClassUid.c_str());
                instance->putAndInsertString(DCM_ReferencedSOPInstanceUID, image->sopInstanceUid.c_str());
            }
        }
    }
}

Result<void> save(DcmFileFormat& file, const fs::path& path) {
    const fs::path part = beside(path);
    const OFCondition saved = file.saveFile(part.c_str(), EXS_LittleEndianExplicit, EET_ExplicitLength, EGL_recalcGL);
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
