#include "dicomio/report/source_images.h"

#include "dicomio/scan/scanner.h"

#include <algorithm>
#include <map>

namespace gauge::dicomio {
namespace {

constexpr Tag kAccessionNumber{0x0008, 0x0050};
constexpr Tag kStudyDescription{0x0008, 0x1030};
constexpr Tag kStudyId{0x0020, 0x0010};

/// What the header says of the study; attributes that the scanner does not keep stay empty.
ReportStudy studyOf(const SeriesEntry& series, const Dataset& dataset) {
    ReportStudy study;
    study.studyUid = series.studyUid;
    study.studyId = dataset.text(kStudyId);
    study.accessionNumber = dataset.text(kAccessionNumber);
    study.date = dataset.text(tags::StudyDate);
    study.time = dataset.text(tags::StudyTime);
    study.description = dataset.text(kStudyDescription);
    return study;
}

const ImageReference* firstImage(const SeriesEntry& series) {
    for (const PhaseEntry& phase : series.phases)
        if (!phase.images.empty()) return &phase.images.front();
    return nullptr;
}

} // namespace

core::Result<ReportImages> reportImages(const SeriesIndex& index, const std::string& seriesUid) {
    const auto wanted = std::find_if(index.series.begin(), index.series.end(), [&](const SeriesEntry& series) {
        return (seriesUid.empty() || series.seriesUid == seriesUid) && firstImage(series);
    });
    if (wanted == index.series.end())
        return core::failure(core::ErrorCode::NotFound, "There is no series with images to refer to.");
    ReportImages all;
    for (const SeriesEntry& series : index.series) {
        if (series.patientId != wanted->patientId) continue;
        std::map<std::filesystem::path, std::string> classes; // pictures of one series may be of several classes
        const bool alike = series.kind == "ct";
        for (const PhaseEntry& phase : series.phases)
            for (const ImageReference& image : phase.images) {
                const std::filesystem::path& file = alike ? firstImage(series)->file : image.file;
                const auto [found, isNew] = classes.try_emplace(file);
                if (isNew) {
                    const auto scanned = scanFile(file);
                    if (!scanned) {
                        all.notices.push_back({"image-not-referred",
                                               "The report does not refer to " + file.string() + ": " + scanned.error().message,
                                               {{"path", file.string()}}});
                    } else {
                        found->second = scanned->sopClassUid();
                        if (&series == &*wanted && all.study.studyUid.empty()) all.study = studyOf(series, scanned->dataset);
                    }
                }
                if (!found->second.empty() && image.frame == 0)
                    all.images.push_back({series.studyUid, series.seriesUid, found->second, image.sopInstanceUid, series.modality});
            }
    }
    if (all.study.studyUid.empty()) all.study.studyUid = wanted->studyUid;
    return all;
}

} // namespace gauge::dicomio
