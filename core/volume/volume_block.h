// A volume and its places in the raw form that the fast loops take.
#pragma once

#include "core/volume/trilinear_rows.h"
#include "core/volume/volume.h"

namespace gauge::core {

inline VoxelBlock voxelBlock(const Volume& volume) {
    const Eigen::Vector3i& size = volume.size();
    return {volume.data(), {size.x(), size.y(), size.z()}};
}

inline VoxelRow voxelRow(const Eigen::Vector3d& start, const Eigen::Vector3d& step) {
    return {{start.x(), start.y(), start.z()}, {step.x(), step.y(), step.z()}};
}

} // namespace gauge::core
