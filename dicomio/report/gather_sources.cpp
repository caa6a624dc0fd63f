#include <dcmtk/config/osconfig.h>

#include "dicomio/report/gather_sources.h"

#include "dicomio/scan/character_set.h"
#include "dicomio/scan/scanner.h"
#include "dicomio/toolkit.h"

#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcfilefo.h>

#include <algorithm>
#include <map>
#include <set>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

std::string textOf(DcmItem& from, const DcmTagKey& tag, const std::vector<std::string>& sets) {
    OFString value;
    if (from.findAndGetOFStringArray(tag, value).bad()) return {};
    std::string out = toUtf8(std::string_view(value.c_str(), value.length()), sets);
    out.erase(out.find_last_not_of(std::string(" \0", 2)) + 1);
    return out;
}

std::vector<std::string> characterSets(DcmItem& from) {
    std::vector<std::string> sets;
    const std::string all = textOf(from, DCM_SpecificCharacterSet, {});
    for (std::size_t at = 0; at < all.size();) {
        const std::size_t end = std::min(all.find('\\', at), all.size());
        sets.push_back(all.substr(at, end - at));
        sets.back().erase(sets.back().find_last_not_of(' ') + 1);
        at = end + 1;
    }
    return sets;
}

/// Patient and study of a file that has passed the scanner; its pixels are not read.
Result<void> readStudy(const std::filesystem::path& file, ReportSources& into) {
    initialiseToolkit();
    if (auto scanned = scanFile(file); !scanned) return tl::unexpected(scanned.error());
    DcmFileFormat loaded;
    const OFCondition read = loaded.loadFileUntilTag(file.c_str(), EXS_Unknown, EGL_noChange,
                                                     DCM_MaxReadLength, ERM_autoDetect, DCM_PixelData);
    if (read.bad())
        return failure(ErrorCode::FileDamaged,
                       "Cannot read the study of " + file.filename().string() + ": " + read.text() + ".");
    DcmItem& dataset = *loaded.getDataset();
    const auto sets = characterSets(dataset);
    const auto text = [&](const DcmTagKey& tag) { return textOf(dataset, tag, sets); };
    into.study = {text(DCM_StudyInstanceUID), text(DCM_StudyID),   text(DCM_AccessionNumber),
                  text(DCM_StudyDate),        text(DCM_StudyTime), text(DCM_ReferringPhysicianName),
                  text(DCM_StudyDescription)};
    into.imagePatient = {text(DCM_PatientName), text(DCM_PatientID), text(DCM_IssuerOfPatientID),
                         text(DCM_PatientBirthDate), text(DCM_PatientSex)};
    return {};
}

struct Place {
    const SeriesEntry* series = nullptr;
    std::filesystem::path file;
};

std::map<std::string, Place> placesOf(const SeriesIndex& index, const std::set<std::string>& wanted) {
    std::map<std::string, Place> places;
    for (const SeriesEntry& series : index.series)
        for (const PhaseEntry& phase : series.phases)
            for (const ImageReference& image : phase.images)
                if (wanted.count(image.sopInstanceUid) != 0)
                    places.emplace(image.sopInstanceUid, Place{&series, image.file});
    return places;
}

} // namespace

std::vector<std::string> imagesOf(const core::CaseRecord& record) {
    std::vector<std::string> out;
    std::set<std::string> seen;
    const auto add = [&](const std::string& uid) {
        if (!uid.empty() && seen.insert(uid).second) out.push_back(uid);
    };
    for (const core::RecordedValue& value : record.values)
        for (const std::string& uid : value.provenance->sopInstanceUids)
            add(uid);
    for (const auto& [id, entry] : record.drawings)
        if (const auto* picture = std::get_if<core::PictureSite>(&entry.content.site))
            add(picture->sopInstanceUid);
    for (const auto& [uid, entry] : record.scales)
        add(uid);
    for (const auto& [id, entry] : record.landmarks)
        add(entry.content.echo.sopInstanceUid);
    for (const auto& [id, entry] : record.release)
        for (const core::ReleaseFinding& finding : entry.content.findings)
            add(finding.source.substr(0, finding.source.find(' ')));
    return out;
}

Result<void> gatherSources(const SeriesIndex& index, const core::CaseRecord& record, ReportSources& into) {
    const std::vector<std::string> wanted = imagesOf(record);
    const auto places = placesOf(index, {wanted.begin(), wanted.end()});
    if (places.empty())
        return failure(
            ErrorCode::NotFound,
            "Cannot make the report: the folder holds none of the " + std::to_string(wanted.size()) +
                " images that the case was measured on. Choose the folder with the images of this case.");
    std::vector<SourceImage> images;
    std::optional<std::filesystem::path> study;
    for (const std::string& uid : wanted) {
        const auto place = places.find(uid);
        if (place == places.end()) continue;
        const auto scanned = scanFile(place->second.file);
        if (!scanned)
            continue; // unreadable since it was indexed: told in words like any other that is not at hand
        const SeriesEntry& series = *place->second.series;
        images.push_back({series.studyUid, series.seriesUid, scanned->sopClassUid(), uid, series.modality});
        if (!study || (record.images && series.seriesUid == record.images->seriesUid))
            study = place->second.file;
    }
    if (!study)
        return failure(ErrorCode::FileUnreadable,
                       "Cannot make the report: none of the images of the case can be read any more.");
    if (auto read = readStudy(*study, into); !read) return read;
    into.images = std::move(images);
    return {};
}

std::vector<FoundContour> contoursOf(const core::AppendageMeasurement& measurement) {
    std::vector<FoundContour> out;
    const auto add = [&](std::string id, const core::Section& section) {
        FoundContour contour{std::move(id), {}};
        for (const Eigen::Vector2d& p : section.contour)
            contour.points.push_back(section.frame.patientFromSection(p));
        out.push_back(std::move(contour));
    };
    add("ostium", measurement.ostium.section);
    int number = 0;
    for (const core::LandingZone& zone : measurement.landingZones)
        add("landing-" + std::to_string(++number), zone.section);
    return out;
}

} // namespace gauge::dicomio
