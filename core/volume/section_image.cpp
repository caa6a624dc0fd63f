#include "core/volume/section_image.h"

#include "core/fast/fast_path.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/trilinear_rows.h"
#include "core/volume/volume_block.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

// A tile's voxels stay in the nearest cache while its rows pass over them, however the section slants.
constexpr int kPatchColumns = 64, kPatchRows = 16;
// Rounding may put a pixel on the volume's face this far beyond it.
constexpr OutsideRule kSectionOutside{1e-9, kOutsideVolume};

/// Calls cut(row's place, first column, end column, output) for each row of each tile; tiles are shared by the threads.
template <class Cut> void cutTiles(const Volume& volume, SectionImage& image, const Cut& cut) {
    const SectionGrid& grid = image.grid;
    image.values.resize(static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows));
    const auto& toVoxel = volume.voxelFromPatient();
    const Eigen::Vector3d start = toVoxel * grid.frame.patientFromSection(grid.sectionFromPixel(0, 0)).mm;
    const Eigen::Vector3d alongRow = toVoxel.linear() * grid.frame.u.mm * grid.pixelMm;
    const Eigen::Vector3d alongColumn = toVoxel.linear() * grid.frame.v.mm * grid.pixelMm;
    const int across = (grid.columns + kPatchColumns - 1) / kPatchColumns, down = (grid.rows + kPatchRows - 1) / kPatchRows;
    parallelFor(static_cast<std::size_t>(across) * static_cast<std::size_t>(down), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t tile = begin; tile < end; ++tile) {
            const int firstRow = kPatchRows * static_cast<int>(tile / static_cast<std::size_t>(across));
            const int first = kPatchColumns * static_cast<int>(tile % static_cast<std::size_t>(across));
            for (int row = firstRow; row < std::min(firstRow + kPatchRows, grid.rows); ++row)
                cut(voxelRow(start + static_cast<double>(row) * alongColumn, alongRow), first,
                    std::min(first + kPatchColumns, grid.columns),
                    image.values.data() + static_cast<std::ptrdiff_t>(row) * grid.columns + first);
        }
    });
}

} // namespace

SectionImage cutSection(const Volume& volume, const SectionGrid& grid) {
    SectionImage image{grid, {}};
    if (grid.columns < 1 || grid.rows < 1)
        return image;
    const TrilinearRows& rows = fastOr(kTrilinearRows, trilinearRowsAvx2());
    const VoxelBlock block = voxelBlock(volume);
    cutTiles(volume, image, [&](const VoxelRow& row, int first, int end, float* out) {
        rows.inside(block, row, kSectionOutside, first, end, out);
    });
    return image;
}

SectionImage cutSlab(const Volume& volume, const SectionGrid& grid, const Slab& slab) {
    const int half = static_cast<int>(std::ceil(0.5 * slab.thicknessMm / volume.edgesMm().minCoeff()));
    if (half < 1 || grid.columns < 1 || grid.rows < 1) return cutSection(volume, grid);
    SectionImage image{grid, {}};
    const TrilinearRows& rows = fastOr(kTrilinearRows, trilinearRowsAvx2());
    const VoxelBlock block = voxelBlock(volume);
    const Eigen::Vector3d step =
        volume.voxelFromPatient().linear() * grid.frame.normal.mm * (0.5 * slab.thicknessMm / half);
    const SlabPlanes planes{{step.x(), step.y(), step.z()}, half, slab.shows == SlabValue::Maximum};
    cutTiles(volume, image, [&](const VoxelRow& row, int first, int end, float* out) {
        rows.slab(block, row, planes, kSectionOutside, first, end, out);
    });
    return image;
}

} // namespace gauge::core
