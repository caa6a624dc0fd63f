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
constexpr double kVoxelsOfLine = 32.0; // a cache line holds that many neighbours along i
// Rounding may put a pixel on the volume's face this far beyond it.
constexpr OutsideRule kSectionOutside{1e-9, kOutsideVolume};

/// Where the pixels lie, in voxel coordinates.
struct PixelPlaces {
    Eigen::Vector3d start, alongRow, alongColumn;

    PixelPlaces(const Volume& volume, const SectionGrid& grid) {
        const auto& toVoxel = volume.voxelFromPatient();
        start = toVoxel * grid.frame.patientFromSection(grid.sectionFromPixel(0, 0)).mm;
        alongRow = toVoxel.linear() * grid.frame.u.mm * grid.pixelMm;
        alongColumn = toVoxel.linear() * grid.frame.v.mm * grid.pixelMm;
    }
    Eigen::Vector3d rowStart(int row) const { return start + static_cast<double>(row) * alongColumn; }
    /// Pixels along a row from one cache line to the next, at least.
    int stepOfLines() const {
        const double perPixel = std::max({std::abs(alongRow.x()) / kVoxelsOfLine, std::abs(alongRow.y()), std::abs(alongRow.z())});
        return perPixel * kPatchColumns > 1.0 ? std::max(1, static_cast<int>(1.0 / perPixel)) : kPatchColumns;
    }
};

struct Tile {
    int column, endColumn, row, endRow;
};

/// The tiles of a picture, row after row.
struct Tiling {
    int columns, rows, across, down;

    explicit Tiling(const SectionGrid& grid)
        : columns(grid.columns), rows(grid.rows), across((columns + kPatchColumns - 1) / kPatchColumns),
          down((rows + kPatchRows - 1) / kPatchRows) {}
    std::size_t count() const { return static_cast<std::size_t>(across) * static_cast<std::size_t>(down); }
    Tile at(std::size_t tile) const {
        const int column = kPatchColumns * static_cast<int>(tile % static_cast<std::size_t>(across));
        const int row = kPatchRows * static_cast<int>(tile / static_cast<std::size_t>(across));
        return {column, std::min(column + kPatchColumns, columns), row, std::min(row + kPatchRows, rows)};
    }
};

/// Asks for the voxels around a tile's plane ahead of their use: the answers come side by side, where the loop over the rows
/// would wait for one after the other. On a volume that no cache holds that is a third of the time. Always inlined: GCC 12
/// takes a function that only prefetches for one without effect and drops its calls.
[[gnu::always_inline]] inline void fetchTile(const VoxelBlock& block, const PixelPlaces& places, const Tile& tile) {
    const auto row = static_cast<std::ptrdiff_t>(block.size[0]), slice = row * block.size[1];
    const int step = places.stepOfLines();
    const Eigen::Vector3d last(block.size[0] - 1, block.size[1] - 1, block.size[2] - 1);
    for (int y = tile.row; y < tile.endRow; ++y)
        for (int x = tile.column; x < tile.endColumn; x += step) {
            const Eigen::Vector3d p = places.rowStart(y) + static_cast<double>(x) * places.alongRow;
            if (!((p.array() >= 0.0).all() && (p.array() < last.array()).all())) continue;
            const std::int16_t* const voxel = block.values + static_cast<int>(p.x()) + row * static_cast<int>(p.y()) +
                                              slice * static_cast<int>(p.z());
            for (const std::int16_t* corner : {voxel, voxel + row, voxel + slice, voxel + row + slice})
                __builtin_prefetch(corner);
        }
}

/// Calls cut(row's place, first column, end column, output) for each row of each tile; rows of tiles are shared by the threads.
template <class Cut> void cutTiles(const Volume& volume, SectionImage& image, const Cut& cut) {
    const SectionGrid& grid = image.grid;
    image.values.resize(static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows));
    const VoxelBlock block = voxelBlock(volume);
    const PixelPlaces places(volume, grid);
    const Tiling tiles(grid);
    const auto work = [&](const Tile& tile) {
        for (int row = tile.row; row < tile.endRow; ++row)
            cut(voxelRow(places.rowStart(row), places.alongRow), tile.column, tile.endColumn,
                image.values.data() + static_cast<std::ptrdiff_t>(row) * grid.columns + tile.column);
    };
    parallelFor(tiles.count(), static_cast<std::size_t>(tiles.across), [&](std::size_t begin, std::size_t end) {
        fetchTile(block, places, tiles.at(begin));
        for (std::size_t tile = begin; tile < end; ++tile) {
            if (tile + 1 < end) fetchTile(block, places, tiles.at(tile + 1));
            work(tiles.at(tile));
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
