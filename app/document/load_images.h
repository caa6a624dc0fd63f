// From a folder, or a choice within it, to the volume that is measured. Run by a job; no window, no Qt.
#pragma once

#include "core/record/case_record.h"
#include "dicomio/ct/ct_reader.h"
#include "dicomio/ct/first_slice.h"
#include "dicomio/index/series_index.h"

#include <filesystem>
#include <functional>
#include <memory>

namespace gauge::app {

struct LoadedImages {
    std::shared_ptr<const dicomio::SeriesIndex> index;
    std::size_t series = 0; ///< in index->series
    std::size_t phase = 0;  ///< in that series
    dicomio::CtVolume ct;

    std::filesystem::path folder{}; ///< that was looked through; empty when not known

    core::ImagesUsed used() const;
    /// How the patient lay, (0018,5100) PatientPosition; empty when the series does not tell.
    const std::string& patientPosition() const { return index->series[series].patientPosition; }
    /// Who the series is about, as its headers say.
    core::Patient patient() const;
};

/// Something to look at while the rest is loaded; never measured on.
struct FirstPicture {
    dicomio::FirstSlice slice;
    std::string description; ///< of the series
    std::string phaseLabel;
    bool ofNewCase = false; ///< what is open belongs to something else
};
/// Called on the loading thread, at most once, before the slices are read.
using TellFirst = std::function<void(FirstPicture)>;

/// Looks through the folder, chooses the series with most slices and the phase nearest 45 %, and loads it.
/// Progress: looking through counts for the first fifth. @errors those of indexFolder, chooseCtSeries,
/// readCtPhase.
core::Result<LoadedImages> loadFolder(const std::filesystem::path& folder, const core::WorkContext& work);

/// What opening a folder gives: the images of the one CT that it holds; or the index alone, with the reason, where the person
/// must choose (several patients or frames of reference) or where there are echo views and X-ray runs but no CT.
struct OpenedFolder {
    std::shared_ptr<const dicomio::SeriesIndex> index; ///< never null
    std::optional<LoadedImages> images;
    std::optional<core::Error> reason; ///< why there are no images
    bool mustChoose = false;           ///< several patients or several CT series are possible
};

/// As loadFolder. @errors those of indexFolder when nothing at all can be shown; those of reading the CT.
core::Result<OpenedFolder> openFolder(const std::filesystem::path& folder, const core::WorkContext& work,
                                      const TellFirst& tellFirst = {});

/// Loads one phase of a series of the index. @errors those of readCtPhase; InvalidArgument beyond the lists.
core::Result<LoadedImages> loadPhase(std::shared_ptr<const dicomio::SeriesIndex> index, std::size_t series,
                                     std::size_t phase, const core::WorkContext& work, const TellFirst& tellFirst = {});

/// Looks for the images of a case in the folders, one after the other, and loads them.
/// @errors NotFound when none has them: the message names the folders and the series; those of readCtPhase; Cancelled.
core::Result<LoadedImages> loadImagesOf(const core::ImagesUsed& images,
                                        const std::vector<std::filesystem::path>& folders,
                                        const core::WorkContext& work, const TellFirst& tellFirst = {});

/// Who a series is about, as its headers say.
core::Patient patientOf(const dicomio::SeriesEntry& series);

/// The folder in which pictures of a case without CT were found.
struct FoundPictures {
    std::shared_ptr<const dicomio::SeriesIndex> index; ///< never null
    std::string patientKey;
    std::filesystem::path folder;
};

/// Looks in the folders, one after the other, for pictures of this evidence.
/// @errors NotFound when none has any: the message names the folders; Cancelled.
core::Result<FoundPictures> findPictures(const std::vector<core::Evidence>& evidence,
                                         const std::vector<std::filesystem::path>& folders, const core::WorkContext& work);

/// Place of the images in the index, if they are there.
std::optional<std::pair<std::size_t, std::size_t>> find(const dicomio::SeriesIndex& index,
                                                        const core::ImagesUsed& images);

/// How the record names a phase of the index.
core::ImagesUsed imagesUsed(const dicomio::SeriesIndex& index, std::size_t series, std::size_t phase);

} // namespace gauge::app
