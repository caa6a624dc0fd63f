#include "app/document/load_images.h"

#include "app/document/propose_evidence.h"

#include <algorithm>
#include <set>

namespace gauge::app {
namespace {

constexpr double kIndexShare = 0.2;

core::WorkContext part(const core::WorkContext& work, double from, double to) {
    core::WorkContext inner;
    inner.stop = work.stop;
    inner.progress = [work, from, to](double share) { work.report(from + (to - from) * share); };
    return inner;
}

core::Result<LoadedImages> read(std::shared_ptr<const dicomio::SeriesIndex> index, std::size_t series,
                                std::size_t phase, const core::WorkContext& work, const TellFirst& tellFirst = {}) {
    // What is wrong with the slice is wrong with the phase, which says so.
    if (tellFirst && !work.stopped())
        if (auto slice = dicomio::readMiddleSlice(index->series[series], phase))
            tellFirst({std::move(*slice), index->series[series].description, index->series[series].phases[phase].label});
    auto ct = dicomio::readCtPhase(index->series[series], phase, work);
    if (!ct) return tl::unexpected(ct.error());
    return LoadedImages{std::move(index), series, phase, std::move(*ct), {}};
}

bool isUsable(const dicomio::SeriesEntry& series) {
    return series.status == dicomio::SeriesStatus::Ok || series.status == dicomio::SeriesStatus::Notice;
}

bool hasPictures(const dicomio::SeriesIndex& index) {
    return std::any_of(index.series.begin(), index.series.end(),
                       [](const auto& series) { return isUsable(series) && !series.pictures.empty(); });
}

std::size_t patientCount(const dicomio::SeriesIndex& index) {
    std::set<std::string> patients;
    for (const auto& series : index.series)
        if (isUsable(series)) patients.insert(dicomio::patientKey(series));
    return patients.size();
}

} // namespace

core::ImagesUsed LoadedImages::used() const {
    return imagesUsed(*index, series, phase);
}

core::Patient LoadedImages::patient() const {
    return patientOf(index->series[series]);
}

core::Patient patientOf(const dicomio::SeriesEntry& entry) {
    core::Patient patient;
    patient.name = entry.patientName;
    patient.id = entry.patientId;
    patient.birthDate = entry.patientBirthDate;
    patient.sex = entry.patientSex;
    return patient;
}

core::ImagesUsed imagesUsed(const dicomio::SeriesIndex& index, std::size_t series, std::size_t phase) {
    const dicomio::SeriesEntry& entry = index.series[series];
    core::ImagesUsed images;
    images.seriesUid = entry.seriesUid;
    images.phasePercent = entry.phases[phase].percent;
    images.phaseLabel = entry.phases[phase].label;
    images.frameOfReferenceUid = entry.frameOfReferenceUid;
    images.patientPosition = entry.patientPosition;
    return images;
}

core::Result<LoadedImages> loadFolder(const std::filesystem::path& folder, const core::WorkContext& work) {
    auto found = dicomio::indexFolder(folder, {}, part(work, 0.0, kIndexShare));
    if (!found) return tl::unexpected(found.error());
    const auto index = std::make_shared<const dicomio::SeriesIndex>(std::move(*found));
    const auto series = dicomio::chooseCtSeries(*index, std::nullopt);
    if (!series) return tl::unexpected(series.error());
    const auto phase = dicomio::choosePhase(**series, std::nullopt);
    if (!phase) return tl::unexpected(phase.error());
    const auto at = static_cast<std::size_t>(*series - index->series.data());
    auto images = read(index, at, *phase, part(work, kIndexShare, 1.0));
    if (images) images->folder = folder;
    return images;
}

core::Result<LoadedImages> loadImagesOf(const core::ImagesUsed& images,
                                        const std::vector<std::filesystem::path>& folders,
                                        const core::WorkContext& work, const TellFirst& tellFirst) {
    std::string places;
    for (const auto& folder : folders) {
        places += (places.empty() ? "" : " or ") + folder.string();
        auto found = dicomio::listFolder(folder, {}, part(work, 0.0, kIndexShare));
        if (!found && found.error().code == core::ErrorCode::Cancelled) return tl::unexpected(found.error());
        if (!found) continue; // a hint that is no longer right
        const auto index = std::make_shared<const dicomio::SeriesIndex>(std::move(*found));
        const auto place = find(*index, images);
        if (!place) continue;
        auto loaded = read(index, place->first, place->second, part(work, kIndexShare, 1.0), tellFirst);
        if (loaded) loaded->folder = folder;
        return loaded;
    }
    return core::failure(core::ErrorCode::NotFound,
                         "Cannot show the images of the case: its CT series " + images.seriesUid +
                             (images.phaseLabel.empty() ? "" : ", phase " + images.phaseLabel) + ", is not below " + places +
                             ". Everything that was recorded is there; tell in which folder the images are to see and "
                             "measure them again.",
                         {{"series_uid", images.seriesUid}});
}

core::Result<FoundPictures> findPictures(const std::vector<core::Evidence>& evidence,
                                         const std::vector<std::filesystem::path>& folders, const core::WorkContext& work) {
    std::string places;
    for (const auto& folder : folders) {
        places += (places.empty() ? "" : " or ") + folder.string();
        auto found = dicomio::listFolder(folder, {}, work);
        if (!found && found.error().code == core::ErrorCode::Cancelled) return tl::unexpected(found.error());
        if (!found) continue; // a hint that is no longer right
        for (const core::Evidence& one : evidence)
            if (const auto series = seriesOf(*found, one)) {
                std::string key = dicomio::patientKey(found->series[*series]);
                return FoundPictures{std::make_shared<const dicomio::SeriesIndex>(std::move(*found)), std::move(key), folder};
            }
    }
    return core::failure(core::ErrorCode::NotFound,
                         "Cannot show the pictures of the case: none of its echo views and X-ray runs is below " +
                             (places.empty() ? std::string("a folder that it remembers") : places) +
                             ". Everything that was recorded is there; tell in which folder the images are to see and "
                             "measure them again.");
}

core::Result<OpenedFolder> openFolder(const std::filesystem::path& folder, const core::WorkContext& work, const TellFirst& tellFirst) {
    auto found = dicomio::indexFolder(folder, {}, part(work, 0.0, kIndexShare));
    if (!found && found.error().code == core::ErrorCode::NothingUsable) {
        // Without a CT there may still be pictures to measure on.
        auto listed = dicomio::listFolder(folder, {}, part(work, 0.0, kIndexShare));
        if (!listed || !hasPictures(*listed)) return tl::unexpected(found.error());
        found = std::move(listed);
    }
    if (!found) return tl::unexpected(found.error());
    OpenedFolder opened;
    opened.index = std::make_shared<const dicomio::SeriesIndex>(std::move(*found));
    const auto series = dicomio::chooseCtSeries(*opened.index, std::nullopt);
    if (!series) {
        opened.reason = series.error();
        opened.mustChoose = series.error().code == core::ErrorCode::InvalidArgument ||
                            (hasPictures(*opened.index) && patientCount(*opened.index) > 1);
        if (!opened.mustChoose && !hasPictures(*opened.index)) return tl::unexpected(series.error());
        return opened;
    }
    const auto phase = dicomio::choosePhase(**series, std::nullopt);
    if (!phase) return tl::unexpected(phase.error());
    const auto at = static_cast<std::size_t>(*series - opened.index->series.data());
    auto images = read(opened.index, at, *phase, part(work, kIndexShare, 1.0), tellFirst);
    if (!images) return tl::unexpected(images.error());
    images->folder = folder;
    opened.images = std::move(*images);
    return opened;
}

core::Result<LoadedImages> loadPhase(std::shared_ptr<const dicomio::SeriesIndex> index, std::size_t series,
                                     std::size_t phase, const core::WorkContext& work, const TellFirst& tellFirst) {
    if (!index || series >= index->series.size() || phase >= index->series[series].phases.size())
        return core::failure(core::ErrorCode::InvalidArgument,
                             "Cannot load the phase: the folder has no such series or phase.");
    return read(std::move(index), series, phase, work, tellFirst);
}

std::optional<std::pair<std::size_t, std::size_t>> find(const dicomio::SeriesIndex& index,
                                                        const core::ImagesUsed& images) {
    for (std::size_t s = 0; s < index.series.size(); ++s) {
        if (index.series[s].seriesUid != images.seriesUid) continue;
        const auto& phases = index.series[s].phases;
        for (std::size_t p = 0; p < phases.size(); ++p)
            if (phases[p].percent == images.phasePercent && phases[p].label == images.phaseLabel)
                return std::pair(s, p);
    }
    return std::nullopt;
}

} // namespace gauge::app
