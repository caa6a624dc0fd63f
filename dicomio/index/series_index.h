// What a folder holds: every DICOM series in it, found from the headers alone.
// Neighbours: ../ct/ct_reader.h turns a CT series into volumes.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/stage.h"
#include "dicomio/index/acquisition_time.h"
#include "dicomio/index/picture_facts.h"

#include <Eigen/Core>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// Whether a series can be used: as it is, with a notice, or not at all (the messages say why). SetAside:
/// nothing is wrong with it, but it is not for measuring (scouts, dose reports, pictures of screens).
enum class SeriesStatus { Ok, Notice, Refused, SetAside };

/// One image file, or one frame of a multi-frame file, of a phase, in the order of its position along the
/// slice normal where positions are known.
struct ImageReference {
    std::filesystem::path file;
    std::string sopInstanceUid;
    int frame = 0; ///< 0-based; 0 for single-frame objects
};

/// One cardiac phase of a series (the only one of an ungated series).
struct PhaseEntry {
    std::optional<double> percent;   ///< of the R-R interval
    std::optional<double> triggerMs; ///< from the R wave
    std::string label;               ///< for people: "45 %", "320 ms", "ungated"
    std::vector<ImageReference> images;
    std::optional<double> beatMs = {}; ///< mean R-R interval of its images
    std::string stack = {};            ///< StackID, of a series with several
    std::size_t bytes = 0;             ///< of its voxels in memory
};

/// A stage is only ever proposed (stage_proposal.h).
struct StageProposal {
    std::optional<core::Stage> stage;
    bool duringProcedure = false; ///< of the day of the procedure, at a stage that only a person knows
    std::string reason;           ///< in words; empty when nothing is proposed
};

struct SeriesEntry {
    std::string seriesUid;
    std::string studyUid;
    std::string patientId;
    std::string issuerOfPatientId; ///< may be empty
    std::string patientName;       ///< UTF-8, as shown to people
    std::string modality;
    std::string kind; ///< "ct", "ct-enhanced", "ultrasound", "x-ray", "report", "other"…
    std::string description;
    std::string frameOfReferenceUid;
    std::vector<PhaseEntry> phases;
    int imageCount = 0;
    std::optional<Eigen::Vector3d>
        spacingMm;                 ///< along row, along column, between slices (perpendicular distance)
    std::optional<double> tiltDeg; ///< angle between slice normal and stacking direction
    /// A volume with proved geometry can be made of it (of at least one phase). Series that are only listed,
    /// such as ultrasound, have a status of Notice and are not measurable.
    bool measurable = false;
    std::optional<AcquisitionTime> acquired; ///< of its earliest image
    StageProposal stage;
    std::vector<PictureFacts>
        pictures; ///< of ultrasound and X-ray: one an object, in the order of the images
    SeriesStatus status = SeriesStatus::Ok;
    std::vector<core::Notice> messages;
    std::string patientBirthDate{}; ///< YYYYMMDD, or empty
    std::string patientSex{};       ///< "F", "M", "O", or empty
    /// (0018,5100) PatientPosition: "HFS", "FFS"…; empty when absent or when the images contradict each other.
    std::string patientPosition{};
};

struct SkippedFile {
    std::filesystem::path file;
    std::string reason;
};

/// A table of contents (DICOMDIR) of the folder. Headers are read all the same, so it saves no reading; where
/// it agrees with them, it proves that nothing is missing, which the files alone cannot.
struct TableOfContents {
    std::filesystem::path file;
    std::size_t listed = 0; ///< files that it names
    bool agrees = false;    ///< false: ignored, a notice of the index says why
};

/// Series of one patient stand together, in the order of time (unknown times last).
struct SeriesIndex {
    std::vector<SeriesEntry> series;
    std::vector<SkippedFile> skipped;
    std::vector<TableOfContents> tables;
    std::vector<core::Notice> notices; ///< on the folder as a whole
};

/// Equal for series of one patient: id and its issuer, or the name where there is no id.
std::string patientKey(const SeriesEntry& series);

struct IndexOptions {
    bool verify = false; ///< also decode every image
};

/// Looks through `folder` and everything below it (a single file is a folder of one; a DICOMDIR stands for
/// the folder in which it lies).
/// @errors FileUnreadable when the folder cannot be read, NothingUsable when no series can be used (message
/// says what was found instead), Cancelled.
core::Result<SeriesIndex> indexFolder(const std::filesystem::path& folder, const IndexOptions& options = {},
                                      const core::WorkContext& work = {});

/// The same, but an index in which nothing is usable is returned too: for listing what is wrong.
core::Result<SeriesIndex> listFolder(const std::filesystem::path& folder, const IndexOptions& options = {},
                                     const core::WorkContext& work = {});

} // namespace gauge::dicomio
