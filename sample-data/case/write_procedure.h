// Makes and writes the pictures of the procedure's day.
#pragma once

#include "sample-data/case/procedure.h"

#include <filesystem>
#include <vector>

namespace gauge::sample_case {

/// One frame of a view as it is written: fan, texts, dial, scale and electrocardiogram.
Picture echoFrame(const EchoSet& set, std::size_t view, const BMode& mode, const Heart& heart, int frame);
/// The whole picture of the Doppler still.
Picture dopplerPicture(const DopplerImage& image);
/// All frames of a fluoroscopy run. Parallel. @return nullopt when stopped.
std::optional<std::vector<Picture>> fluoroFrames(const Procedure& procedure, const FluoroRun& run,
                                                 const core::WorkContext& work = {});

/// File of a series below the folder `dicom`.
std::filesystem::path fileOf(const ImageFacts& facts);
/// All of them.
std::vector<std::filesystem::path> procedureFiles(const Procedure& procedure);

/// Writes all series into `folder`. @return the files. @errors OutputUnwritable naming the file; Cancelled.
core::Result<std::vector<std::filesystem::path>> writeProcedure(const Procedure& procedure,
                                                                const std::filesystem::path& folder,
                                                                const core::WorkContext& work = {});

} // namespace gauge::sample_case
