// Writes echo volumes as Enhanced US Volume (PS3.3 A.59): parallel planes in a volume frame of reference of their own,
// one after the other, for each time of the beat.
#pragma once

#include "core/result.h"
#include "sample-data/dicom/image_facts.h"
#include "sample-data/rasterise.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace gauge::sample_case {

struct EchoVolumeImage {
    ImageFacts facts; ///< with a frame of reference
    std::string volumeFrameOfReferenceUid;
    RasterGrid grid;                  ///< in that frame; the apex is its origin
    std::vector<double> triggerMs;    ///< of each volume, after the R wave
    double beatMs = 1000.0;
    std::vector<std::vector<std::vector<std::uint8_t>>> volumes; ///< [volume][plane][pixel]
};

/// @errors OutputUnwritable.
core::Result<void> writeEchoVolume(const EchoVolumeImage& image, const std::filesystem::path& file);

} // namespace gauge::sample_case
