// The invented teaching case as a complete record: what a team would have marked, drawn, typed and drafted on the images
// that `ostium-gauge sample` writes. Places and widths are exact, from the defining functions of the sample case; the values
// themselves are measured by the program when the case is opened.
#pragma once

#include "core/record/case_json.h"
#include "sample-data/case/sample_case.h"

#include <filesystem>

namespace gauge::app {

/// @param chartText  the demonstration chart that the case embeds; its size is the one whose band holds the true landing zone
/// at the decision pressure. Every edit has a place in the journal; the same sample gives the same file.
core::CaseFile sampleRecord(const sample_case::SampleCase& sample, const std::string& chartText);

/// Writes it as `folder`/sample.case.json, over one that an earlier run left there.
/// @errors OutputUnwritable, also when another case has that name.
core::Result<std::filesystem::path> writeSampleRecord(const sample_case::SampleCase& sample,
                                                      const std::filesystem::path& folder);

} // namespace gauge::app
