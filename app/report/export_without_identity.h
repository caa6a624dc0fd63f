// A case and its images without identity, written side by side so that the one still finds the other.
#pragma once

#include "core/parallel/progress.h"
#include "core/record/case_json.h"
#include "core/result.h"
#include "dicomio/deidentify/deidentify.h"

#include <filesystem>
#include <optional>

namespace gauge::app {

struct ExportRequest {
    std::filesystem::path images;              ///< folder with the originals
    std::optional<core::CaseRecord> record;    ///< the case to go with them
    std::filesystem::path target;              ///< made when absent; must be empty
    std::string key;                           ///< of the pseudonyms; empty: a fresh one that nobody keeps
    dicomio::DeidentifyOptions options;
};

struct ExportResult {
    dicomio::DeidentifiedFolder images;        ///< in target/images
    std::filesystem::path caseFile;            ///< target/case.case.json; empty without a record
    std::vector<core::Notice> notices;
};

/// @errors InvalidArgument: the target is not empty, or lies within the originals; those of deidentifyFolder;
/// OutputUnwritable. After an error or a cancel the folder holds what was written so far, all of it without identity.
core::Result<ExportResult> exportWithoutIdentity(const ExportRequest& request, const core::WorkContext& work);

} // namespace gauge::app
