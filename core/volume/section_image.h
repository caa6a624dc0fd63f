// Pictures cut from a volume along any plane, for measuring and for the screen.
#pragma once

#include "core/fast/large_vector.h"
#include "core/geometry/plane.h"
#include "core/volume/volume.h"

namespace gauge::core {

/// A grid on a section: pixel (column, row) has its centre at section coordinates
/// (column - (columns - 1) / 2, row - (rows - 1) / 2) * pixelMm about the frame's origin.
struct SectionGrid {
    SectionFrame frame;
    int columns = 0;
    int rows = 0;
    double pixelMm = 1.0;

    Eigen::Vector2d sectionFromPixel(double column, double row) const {
        return {(column - 0.5 * (columns - 1)) * pixelMm, (row - 0.5 * (rows - 1)) * pixelMm};
    }
    Eigen::Vector2d pixelFromSection(const Eigen::Vector2d& ab) const {
        return {ab.x() / pixelMm + 0.5 * (columns - 1), ab.y() / pixelMm + 0.5 * (rows - 1)};
    }
};

/// Values of a section, row after row. Where the plane leaves the volume, `kOutsideVolume`.
struct SectionImage {
    SectionGrid grid;
    LargeVector<float> values;

    float at(int column, int row) const {
        return values[static_cast<std::size_t>(row) * static_cast<std::size_t>(grid.columns) +
                      static_cast<std::size_t>(column)];
    }
};

inline constexpr float kOutsideVolume = -32768.0f;

/// What of a thick section is shown along its normal.
enum class SlabValue { Mean, Maximum };

/// A section with thickness, half of it on either side of the plane. 0: the plane alone.
struct Slab {
    double thicknessMm = 0.0; ///< >= 0
    SlabValue shows = SlabValue::Maximum;
    bool operator==(const Slab&) const = default;
};

/// Trilinear section. @errors none; grid sizes below 1 give an empty picture.
SectionImage cutSection(const Volume& volume, const SectionGrid& grid);

/// Trilinear section with thickness: mean or maximum of parallel planes, the outer ones at the slab's faces, at most as far
/// apart as the shortest edge of a voxel, their number odd. Places outside the volume take no part; where all are outside,
/// `kOutsideVolume`. A thickness of 0 gives the section itself.
SectionImage cutSlab(const Volume& volume, const SectionGrid& grid, const Slab& slab);

} // namespace gauge::core
