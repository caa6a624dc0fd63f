#include "core/volume/section_image.h"

#include "core/parallel/parallel_for.h"
#include "core/volume/sampling.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {

SectionImage cutSection(const Volume& volume, const SectionGrid& grid) {
    SectionImage image{grid, {}};
    if (grid.columns < 1 || grid.rows < 1)
        return image;
    image.values.resize(static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows));

    const TrilinearSampler sample(volume);
    const auto& toVoxel = volume.voxelFromPatient();
    const Eigen::Vector2d first = grid.sectionFromPixel(0, 0);
    const Eigen::Vector3d start = toVoxel * grid.frame.patientFromSection(first).mm;
    const Eigen::Vector3d alongRow = toVoxel.linear() * grid.frame.u.mm * grid.pixelMm;
    const Eigen::Vector3d alongColumn = toVoxel.linear() * grid.frame.v.mm * grid.pixelMm;
    const Eigen::Array3d last = (volume.size().array() - 1).cast<double>() + 1e-9;

    parallelFor(static_cast<std::size_t>(grid.rows), 32, [&](std::size_t begin, std::size_t end) {
        for (std::size_t row = begin; row < end; ++row) {
            float* out = image.values.data() + row * static_cast<std::size_t>(grid.columns);
            for (int column = 0; column < grid.columns; ++column) {
                const Eigen::Vector3d c = start + static_cast<double>(row) * alongColumn + column * alongRow;
                const bool inside = (c.array() >= -1e-9).all() && (c.array() <= last).all();
                out[column] = inside ? static_cast<float>(sample.atVoxel(c)) : kOutsideVolume;
            }
        }
    });
    return image;
}

SectionImage cutSlab(const Volume& volume, const SectionGrid& grid, const Slab& slab) {
    const int half = static_cast<int>(std::ceil(0.5 * slab.thicknessMm / volume.edgesMm().minCoeff()));
    if (half < 1 || grid.columns < 1 || grid.rows < 1) return cutSection(volume, grid);
    SectionImage image{grid, {}};
    const std::size_t columns = static_cast<std::size_t>(grid.columns);
    image.values.resize(columns * static_cast<std::size_t>(grid.rows));

    const TrilinearSampler sample(volume);
    const auto& toVoxel = volume.voxelFromPatient();
    const Eigen::Vector3d start = toVoxel * grid.frame.patientFromSection(grid.sectionFromPixel(0, 0)).mm;
    const Eigen::Vector3d alongRow = toVoxel.linear() * grid.frame.u.mm * grid.pixelMm;
    const Eigen::Vector3d alongColumn = toVoxel.linear() * grid.frame.v.mm * grid.pixelMm;
    const Eigen::Vector3d step = toVoxel.linear() * grid.frame.normal.mm * (0.5 * slab.thicknessMm / half);
    const Eigen::Array3d last = (volume.size().array() - 1).cast<double>() + 1e-9;
    const bool maximum = slab.shows == SlabValue::Maximum;

    parallelFor(static_cast<std::size_t>(grid.rows), 8, [&](std::size_t begin, std::size_t end) {
        for (std::size_t row = begin; row < end; ++row)
            for (std::size_t column = 0; column < columns; ++column) {
                const Eigen::Vector3d middle =
                    start + static_cast<double>(row) * alongColumn + static_cast<double>(column) * alongRow;
                double sum = 0.0, greatest = kOutsideVolume;
                int count = 0;
                for (int k = -half; k <= half; ++k) {
                    const Eigen::Vector3d c = middle + k * step;
                    if (!((c.array() >= -1e-9).all() && (c.array() <= last).all())) continue;
                    const double value = sample.atVoxel(c);
                    sum += value;
                    greatest = std::max(greatest, value);
                    ++count;
                }
                image.values[row * columns + column] =
                    count == 0 ? kOutsideVolume : static_cast<float>(maximum ? greatest : sum / count);
            }
    });
    return image;
}

} // namespace gauge::core
