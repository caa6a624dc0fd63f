// What of a mask hangs together, by faces: all its parts, or those that hold given seeds.
//
// How it is fast: a row of bits (bit_rows.h) is a handful of runs. Runs of neighbouring rows that overlap belong
// together; a union-find over runs, not voxels, says what is one part. Threads take ranges of slices and join them at
// the seams; a part's number follows from its first run, so that the result does not depend on the number of threads.
// Growing from seeds floods rows of bits and thresholds them on the way: what lies far from the region is never read.
// Plain twins (a flood voxel by voxel): tests/core/volume/components_test.cpp.
#pragma once

#include "core/volume/bit_rows.h"

#include <cstdint>
#include <span>
#include <vector>

namespace gauge::core {

/// The parts of a mask, numbered from 0 in the order of their first voxels (k, then j, then i).
class Components {
public:
    /// A stretch of a row, and the part that it belongs to.
    struct Run {
        std::int32_t begin, end; ///< i of its first voxel and of the one after its last
        std::uint32_t part;
    };

    std::size_t count() const { return m_voxels.size(); }
    /// Voxels of each part.
    const std::vector<std::size_t>& voxels() const { return m_voxels; }
    /// Runs of a row, from low to high i.
    std::span<const Run> row(int j, int k) const;
    static constexpr std::uint32_t kNone = 0xFFFFFFFFu;
    /// Part of a voxel, kNone in the background. @param at  within the block
    std::uint32_t partAt(const Eigen::Vector3i& at) const;
    const Eigen::Vector3i& size() const { return m_size; }

private:
    friend Components componentsOf(const BitRows& bits);
    friend class ComponentSearch;

    Eigen::Vector3i m_size = Eigen::Vector3i::Zero();
    std::vector<std::uint32_t> m_rowStart; ///< first run of each row, and the number of all
    LargeVector<Run> m_runs;
    std::vector<std::size_t> m_voxels;
};

/// Every part. Precondition: fewer than 2^32 runs.
Components componentsOf(const BitRows& bits);

/// The parts that hold any of `seeds` (voxels; those in the background or beyond the block hold nothing). Looks only at
/// rows beside what it finds.
BitRows grownFrom(const BitRows& bits, std::span<const Eigen::Vector3i> seeds);
/// The same of the voxels above a level, and of the bytes that are not 0 (i fastest).
BitRows grownAbove(const ValueBlock& block, std::int16_t level, std::span<const Eigen::Vector3i> seeds);
BitRows grownIn(const std::uint8_t* mask, const Eigen::Vector3i& size, std::span<const Eigen::Vector3i> seeds);

} // namespace gauge::core
