// A scene seen by a scanner: Hounsfield units averaged over fine cells, blurred by a Gaussian point spread of
// stated width, sampled at voxel centres, with noise added and rounded to whole numbers.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/volume.h"
#include "sample-data/scene/scene.h"

#include <cstdint>
#include <memory>
#include <string>

namespace gauge::sample_case {

/// Where the voxels lie. Axes are orthonormal: i, j, k run along the columns of `axes`.
struct RasterGrid {
    Eigen::Vector3i size{240, 240, 200};
    Eigen::Vector3d spacingMm{0.45, 0.45, 0.45};
    Eigen::Matrix3d axes = Eigen::Matrix3d::Identity();
    Eigen::Vector3d firstVoxelMm = Eigen::Vector3d::Zero(); ///< centre of voxel (0, 0, 0), LPS

    Eigen::Affine3d patientFromVoxel() const;
    /// A grid of the given extent centred on a point. Voxel centres are not aligned with anything.
    static RasterGrid centredOn(const core::PatientPoint& centre, const Eigen::Vector3d& extentMm,
                                const Eigen::Vector3d& spacingMm,
                                const Eigen::Matrix3d& axes = Eigen::Matrix3d::Identity());
};

struct RasterOptions {
    double blurFwhmMm = 0.7; ///< of the whole point spread, isotropic Gaussian; at least 0.6 of a voxel edge
    double noiseSdHu = 25.0; ///< >= 0
    double noiseGrainFwhmMm = 0.0; ///< 0: white; else the noise is smoothed to this grain, its SD kept
    std::uint64_t noiseSeed = 1;
    std::string frameOfReferenceUid = "2.25.1";
};

/// Parallel over slabs; the same for every number of threads.
/// Accuracy: a flat edge crosses its half value within 0.01 mm of its true place before noise, once the
/// sampled values are joined by the point spread's own shape; the blur's variance is exact.
/// @errors InvalidArgument for an empty grid, a spacing or blur that is not positive, a blur too narrow for
/// the voxels, axes that are not orthonormal; Cancelled.
core::Result<std::shared_ptr<const core::Volume>> rasterise(const Scene& scene, const RasterGrid& grid,
                                                            const RasterOptions& options = {},
                                                            const core::WorkContext& work = {});

} // namespace gauge::sample_case
