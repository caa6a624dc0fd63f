// Writes a fluoroscopy run as an X-Ray Angiographic Image (PS3.3 A.14).
#pragma once

#include "core/result.h"
#include "sample-data/dicom/image_facts.h"
#include "sample-data/fluoro/c_arm.h"
#include "sample-data/picture/picture.h"

#include <filesystem>
#include <vector>

namespace gauge::sample_case {

struct XaRun {
    ImageFacts facts;
    CArm arm;
    std::vector<Picture> frames; ///< grey, at least 1
    double frameMs = 66.7;
    bool runLength = false;
};

/// @errors OutputUnwritable.
core::Result<void> writeXaRun(const XaRun& run, const std::filesystem::path& file);

} // namespace gauge::sample_case
