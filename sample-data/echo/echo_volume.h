// A pyramid of echo voxels around the beam axis: the same tissue as the flat pictures, with speckle.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "sample-data/echo/echo_tissue.h"
#include "sample-data/rasterise.h"

#include <cstdint>
#include <vector>

namespace gauge::sample_case {

struct EchoVolumeOptions {
    EchoLevels levels;
    double blurFwhmMm = 1.3;
    double halfAngleDeg = 42.0; ///< of the pyramid, both ways
    double speckleShare = 0.55;
    std::uint64_t seed = 1;
};

/// One grey volume, a frame for each index along the grid's third axis, rows along its second.
/// @param grid  in the volume's frame of reference: apex at the origin, beam along z. Voxels outside the pyramid are 0.
/// @errors as rasterise.
core::Result<std::vector<std::vector<std::uint8_t>>> echoVolume(const Scene& scene, const RasterGrid& grid,
                                                                const Eigen::Isometry3d& patientFromVolume,
                                                                const EchoVolumeOptions& options,
                                                                const core::WorkContext& work = {});

} // namespace gauge::sample_case
