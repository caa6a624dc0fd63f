// The invented teaching case: read from its description, made into scenes, images and exact answers.
// The description that comes with the program is sample-data/sample_case.json, compiled in.
#pragma once

#include "core/result.h"
#include "sample-data/case/procedure.h"
#include "sample-data/dicom/ct_writer.h"
#include "sample-data/phantom.h"

#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::sample_case {

/// One cardiac phase of the case: the heart as it is then.
struct SamplePhase {
    double percent = 0.0; ///< of the R-R interval
    Scene scene;
    Marks marks;
    core::PatientPoint ridgeCrest;
    double veinGapMm = 0.0; ///< see heart.h
    TrueOstium ostium;
    RasterGrid grid;
    RasterOptions imaging;
};

struct SampleCase {
    std::string about;
    std::string story;
    CtSeries series;
    std::vector<SamplePhase> phases;
    std::vector<double> landingDepthsMm;
    std::optional<Procedure> procedure; ///< the echo and fluoroscopy of the day after; none when not described
};

/// The description that comes with the program.
std::string_view builtInDescription();

/// @errors InvalidArgument when the text is not JSON of format "ostium-gauge/sample-case/1", when a key is
/// missing or wrongly typed (the message names it), or when the ostium of a phase is not closed.
core::Result<SampleCase> readSampleCase(std::string_view description);

/// The exact answers: per phase the marks, ostium, axis, sections at landing depths, depth and volume; and for each
/// series of the procedure what it shows (answers_parts.h).
/// Format "ostium-gauge/sample-answers/1"; lengths in mm, LPS.
nlohmann::json answers(const SampleCase& sample);

/// What was written.
struct SampleFiles {
    std::filesystem::path dicomFolder;
    std::filesystem::path answersFile;
    std::vector<std::filesystem::path> observationFiles;
    std::size_t images = 0;          ///< of the CT
    std::size_t procedureSeries = 0; ///< of echo and fluoroscopy, one file each
};

/// Writes `folder`/dicom, `folder`/answers.json and `folder`/observations-….json. A sample case written there before is replaced; anything
/// else in `folder`/dicom is never touched.
/// @errors OutputUnwritable when `folder`/dicom holds files that are not a sample case of this program, or a
/// file cannot be written; Cancelled.
core::Result<SampleFiles> writeSampleCase(const SampleCase& sample, const std::filesystem::path& folder,
                                          const core::WorkContext& work = {});

} // namespace gauge::sample_case
