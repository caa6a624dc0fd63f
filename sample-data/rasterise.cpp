#include "sample-data/rasterise.h"

#include "core/parallel/parallel_for.h"
#include "sample-data/blur_kernel.h"
#include "sample-data/random.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <mutex>
#include <vector>

namespace gauge::sample_case {
namespace {

/// Slices of one slab: enough that the blur's margin costs little, few enough that slabs share out evenly.
constexpr int kSlabSlices = 16;
/// Cells to a block of the first level; blocks that hold one tissue are filled at once.
constexpr int kBlockCells = 16;
/// Ramp of a boundary where none is near.
constexpr double kSharpMm = 1e-6;
/// Where blood has a course of levels, blocks of this many cells get one level: below 0.5 mm, which the blur
/// joins.
constexpr int kLevelCells = 2;
/// Widest cell against the blur's SD: a Gaussian put together from wider boxes shows their shape.
constexpr double kWidestCellInSigmas = 0.85;

/// How the scene maps onto fine cells along one axis of the grid.
struct AxisPlan {
    int factor;
    double cellMm;
    BlurKernel kernel;
    int before, after; ///< cells needed before the first and after the last voxel's own cells

    AxisPlan(double spacing, double sigma) {
        factor = std::clamp(static_cast<int>(std::ceil(spacing / (kWidestCellInSigmas * sigma))), 2, 4);
        cellMm = spacing / factor;
        kernel = blurKernel(sigma, cellMm, factor);
        before = std::max(0, -kernel.first);
        after = std::max(0, kernel.first + static_cast<int>(kernel.taps.size()) - factor);
    }
    int cells(int voxels) const { return before + voxels * factor + after; }
};

/// Values over fine cells of a slab, found by dividing blocks until they hold one tissue.
class FineSlab {
public:
    FineSlab(const SceneSampler& sampler, const Eigen::Affine3d& sceneFromCell, const Eigen::Vector3d& cellMm,
             const Eigen::Vector3i& size)
        : m_sampler(sampler), m_sceneFromCell(sceneFromCell), m_cellMm(cellMm), m_size(size),
          m_values(static_cast<std::size_t>(size.x()) * static_cast<std::size_t>(size.y()) *
                   static_cast<std::size_t>(size.z())) {}

    const std::vector<float>& fill() {
        SceneSampler::Sample sample{};
        for (int k = 0; k < m_size.z(); k += kBlockCells)
            for (int j = 0; j < m_size.y(); j += kBlockCells)
                for (int i = 0; i < m_size.x(); i += kBlockCells)
                    divide({i, j, k}, kBlockCells, m_sampler.everything(), sample);
        return m_values;
    }

private:
    Eigen::Vector3d place(const Eigen::Vector3i& first, int cells) const {
        return m_sceneFromCell * (first.cast<double>().array() + 0.5 * (cells - 1)).matrix();
    }

    /// `sample` is shared by the whole descent: what a level leaves out of its mask keeps the value found
    /// there.
    void divide(const Eigen::Vector3i& first, int cells, SceneSampler::Mask mask,
                SceneSampler::Sample& sample) {
        if ((first.array() >= m_size.array()).any()) return;
        const Eigen::Vector3d x = place(first, cells);
        m_sampler.evaluate(x, mask, sample);
        const double radius = 0.5 * cells * m_cellMm.norm();
        if (m_sampler.isUniform(sample, radius + 0.5 * m_cellMm.maxCoeff()) &&
            (cells <= kLevelCells || m_sampler.levelIsConstant(sample, radius))) {
            paint(first, cells, static_cast<float>(m_sampler.hu(x, sample, kSharpMm)));
            return;
        }
        const SceneSampler::Mask kept = m_sampler.relevant(sample, mask, radius);
        const int half = cells / 2;
        if (half == 1) {
            resolve(first, kept, sample);
            return;
        }
        for (int c = 0; c < 8; ++c)
            divide(first + half * corner(c), half, kept, sample);
    }

    static Eigen::Vector3i corner(int c) { return {c & 1, c >> 1 & 1, c >> 2}; }

    /// Fills a block of 2 x 2 x 2 cells through which a boundary passes. The change of the nearest boundary's
    /// function from cell to cell gives the width over which the boundary crosses one cell, whatever its
    /// direction.
    void resolve(const Eigen::Vector3i& first, SceneSampler::Mask mask, const SceneSampler::Sample& middle) {
        const int boundary = m_sampler.nearestBoundary(middle);
        std::array<double, 8> values{};
        for (std::size_t c = 0; c < 8; ++c) {
            m_corners[c] = middle;
            m_sampler.evaluate(place(first + corner(static_cast<int>(c)), 1), mask, m_corners[c]);
            values[c] = m_sampler.boundary(m_corners[c], boundary);
        }
        double squares = 0.0;
        for (const std::size_t step : {1u, 2u, 4u}) {
            double change = 0.0;
            for (std::size_t c = 0; c < 8; ++c)
                change += ((c & step) != 0 ? 0.25 : -0.25) * values[c];
            squares += change * change;
        }
        const double ramp = std::max(std::sqrt(squares), 0.3 * m_cellMm.minCoeff());
        for (std::size_t c = 0; c < 8; ++c) {
            const Eigen::Vector3i cell = first + corner(static_cast<int>(c));
            if ((cell.array() < m_size.array()).all())
                at(cell) = static_cast<float>(m_sampler.hu(place(cell, 1), m_corners[c], ramp));
        }
    }

    void paint(const Eigen::Vector3i& first, int cells, float value) {
        const Eigen::Vector3i end = (first.array() + cells).min(m_size.array());
        for (int k = first.z(); k < end.z(); ++k)
            for (int j = first.y(); j < end.y(); ++j)
                std::fill_n(&at({first.x(), j, k}), end.x() - first.x(), value);
    }

    float& at(const Eigen::Vector3i& c) {
        return m_values[static_cast<std::size_t>(c.x()) +
                        static_cast<std::size_t>(m_size.x()) *
                            (static_cast<std::size_t>(c.y()) +
                             static_cast<std::size_t>(m_size.y()) * static_cast<std::size_t>(c.z()))];
    }

    const SceneSampler& m_sampler;
    Eigen::Affine3d m_sceneFromCell;
    Eigen::Vector3d m_cellMm;
    Eigen::Vector3i m_size;
    std::array<SceneSampler::Sample, 8> m_corners{};
    std::vector<float> m_values;
};

/// One pass along the middle axis of a block laid out [outer][along][inner]: fine cells in, voxels out.
std::vector<float> pass(const std::vector<float>& in, std::size_t outer, std::size_t cells, std::size_t inner,
                        const AxisPlan& plan, std::size_t voxels) {
    std::vector<float> out(outer * voxels * inner, 0.0f);
    const std::size_t offset = static_cast<std::size_t>(plan.before + plan.kernel.first);
    for (std::size_t o = 0; o < outer; ++o)
        for (std::size_t v = 0; v < voxels; ++v) {
            float* row = out.data() + (o * voxels + v) * inner;
            const std::size_t start = offset + v * static_cast<std::size_t>(plan.factor);
            for (std::size_t t = 0; t < plan.kernel.taps.size(); ++t) {
                const float weight = plan.kernel.taps[t];
                const float* source = in.data() + (o * cells + start + t) * inner;
                for (std::size_t i = 0; i < inner; ++i)
                    row[i] += weight * source[i];
            }
        }
    return out;
}

/// The same along the innermost axis.
std::vector<float> passAlongRows(const std::vector<float>& in, std::size_t rows, std::size_t cells,
                                 const AxisPlan& plan, std::size_t voxels) {
    std::vector<float> out(rows * voxels);
    const std::size_t offset = static_cast<std::size_t>(plan.before + plan.kernel.first);
    const std::size_t taps = plan.kernel.taps.size(), factor = static_cast<std::size_t>(plan.factor);
    for (std::size_t r = 0; r < rows; ++r) {
        const float* source = in.data() + r * cells + offset;
        float* row = out.data() + r * voxels;
        for (std::size_t v = 0; v < voxels; ++v, source += factor) {
            float sum = 0.0f;
            for (std::size_t t = 0; t < taps; ++t)
                sum += plan.kernel.taps[t] * source[t];
            row[v] = sum;
        }
    }
    return out;
}

/// Noise of one slice with unit SD, the same whichever slab asks for it.
std::vector<float> whiteSlice(std::size_t count, std::uint64_t seed, int slice) {
    Random random(seed, static_cast<std::uint64_t>(static_cast<std::int64_t>(slice)));
    std::vector<float> noise(count);
    for (float& value : noise)
        value = static_cast<float>(random.normal());
    return noise;
}

/// Noise of a slab of slices: white, or smoothed to a grain and scaled back to unit SD.
std::vector<float> slabNoise(const RasterGrid& grid, const RasterOptions& options, int firstSlice,
                             int slices) {
    const auto nx = static_cast<std::size_t>(grid.size.x()), ny = static_cast<std::size_t>(grid.size.y());
    std::vector<float> noise;
    if (options.noiseGrainFwhmMm <= 0.0) {
        for (int k = firstSlice; k < firstSlice + slices; ++k) {
            const auto slice = whiteSlice(nx * ny, options.noiseSeed, k);
            noise.insert(noise.end(), slice.begin(), slice.end());
        }
        return noise;
    }
    const double sigma = gaussianSigmaFromFwhm(options.noiseGrainFwhmMm);
    double power = 1.0;
    std::array<BlurKernel, 3> kernels;
    for (int axis = 0; axis < 3; ++axis) {
        auto& kernel = kernels[static_cast<std::size_t>(axis)];
        kernel = blurKernel(sigma, grid.spacingMm[axis], 1, false);
        double squares = 0.0;
        for (const float tap : kernel.taps)
            squares += static_cast<double>(tap) * tap;
        power *= squares;
    }
    const auto margin = [&](int axis) {
        return static_cast<std::size_t>(-kernels[static_cast<std::size_t>(axis)].first);
    };
    const std::size_t wx = nx + 2 * margin(0), wy = ny + 2 * margin(1), mz = margin(2);
    for (int k = firstSlice - static_cast<int>(mz); k < firstSlice + slices + static_cast<int>(mz); ++k) {
        const auto slice = whiteSlice(wx * wy, options.noiseSeed, k);
        noise.insert(noise.end(), slice.begin(), slice.end());
    }
    const auto plan = [&](int axis) {
        AxisPlan p(1.0, 1.0);
        p.factor = 1;
        p.kernel = kernels[static_cast<std::size_t>(axis)];
        p.before = p.after = static_cast<int>(margin(axis));
        return p;
    };
    const std::size_t wz = static_cast<std::size_t>(slices) + 2 * mz;
    noise = passAlongRows(noise, wz * wy, wx, plan(0), nx);
    noise = pass(noise, wz, wy, nx, plan(1), ny);
    noise = pass(noise, 1, wz, nx * ny, plan(2), static_cast<std::size_t>(slices));
    const float scale = static_cast<float>(1.0 / std::sqrt(power));
    for (float& value : noise)
        value *= scale;
    return noise;
}

core::Result<void> check(const RasterGrid& grid, const RasterOptions& options) {
    using core::ErrorCode;
    if ((grid.size.array() < 1).any())
        return core::failure(ErrorCode::InvalidArgument,
                             "Cannot rasterise: each size must be at least 1 voxel.");
    if (!(grid.spacingMm.array() > 0.0).all() || !grid.spacingMm.allFinite() ||
        !grid.firstVoxelMm.allFinite())
        return core::failure(ErrorCode::InvalidArgument,
                             "Cannot rasterise: spacing must be above 0 and the first voxel's place finite.");
    if (!((grid.axes.transpose() * grid.axes - Eigen::Matrix3d::Identity()).norm() < 1e-9))
        return core::failure(ErrorCode::InvalidArgument,
                             "Cannot rasterise: the grid's axes must be at right angles and of length 1.");
    if (!(options.noiseSdHu >= 0.0) || !(options.noiseGrainFwhmMm >= 0.0))
        return core::failure(ErrorCode::InvalidArgument,
                             "Cannot rasterise: noise SD and grain must be 0 or more.");
    if (!(options.blurFwhmMm >= 0.6 * grid.spacingMm.maxCoeff()))
        return core::failure(ErrorCode::InvalidArgument,
                             "Cannot rasterise: a blur of " + std::to_string(options.blurFwhmMm) +
                                 " mm FWHM is too narrow for voxels of " +
                                 std::to_string(grid.spacingMm.maxCoeff()) +
                                 " mm; at least 0.6 of the voxel's edge is needed.");
    return {};
}

} // namespace

Eigen::Affine3d RasterGrid::patientFromVoxel() const {
    Eigen::Affine3d affine;
    affine.linear() = axes * spacingMm.asDiagonal();
    affine.translation() = firstVoxelMm;
    affine.makeAffine();
    return affine;
}

RasterGrid RasterGrid::centredOn(const core::PatientPoint& centre, const Eigen::Vector3d& extentMm,
                                 const Eigen::Vector3d& spacingMm, const Eigen::Matrix3d& axes) {
    RasterGrid grid;
    grid.size = (extentMm.array() / spacingMm.array()).ceil().cast<int>();
    grid.spacingMm = spacingMm;
    grid.axes = axes;
    const Eigen::Vector3d half = 0.5 * ((grid.size.array() - 1).cast<double>() * spacingMm.array()).matrix();
    grid.firstVoxelMm = centre.mm - axes * half;
    return grid;
}

core::Result<std::shared_ptr<const core::Volume>> rasterise(const Scene& scene, const RasterGrid& grid,
                                                            const RasterOptions& options,
                                                            const core::WorkContext& work) {
    if (const auto fine = check(grid, options); !fine) return tl::unexpected(fine.error());
    const double sigma = gaussianSigmaFromFwhm(options.blurFwhmMm);
    const std::array<AxisPlan, 3> plans{AxisPlan(grid.spacingMm.x(), sigma),
                                        AxisPlan(grid.spacingMm.y(), sigma),
                                        AxisPlan(grid.spacingMm.z(), sigma)};
    const SceneSampler sampler(scene);
    const Eigen::Affine3d sceneFromVoxel = scene.patientFromScene.inverse() * grid.patientFromVoxel();
    const auto nx = static_cast<std::size_t>(grid.size.x()), ny = static_cast<std::size_t>(grid.size.y());
    std::vector<std::int16_t> voxels(nx * ny * static_cast<std::size_t>(grid.size.z()));

    const int slabs = (grid.size.z() + kSlabSlices - 1) / kSlabSlices;
    std::mutex reporting;
    int finished = 0;
    core::parallelFor(static_cast<std::size_t>(slabs), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t slab = begin; slab < end && !work.stopped(); ++slab) {
            const int first = static_cast<int>(slab) * kSlabSlices;
            const int slices = std::min(kSlabSlices, grid.size.z() - first);
            // Cell (0, 0, 0) of the slab lies `before` cells ahead of the first voxel's own first cell.
            Eigen::Affine3d voxelFromCell = Eigen::Affine3d::Identity();
            Eigen::Vector3d cellMm;
            Eigen::Vector3i cells;
            for (int axis = 0; axis < 3; ++axis) {
                const AxisPlan& plan = plans[static_cast<std::size_t>(axis)];
                const double start = axis == 2 ? first : 0;
                voxelFromCell.matrix()(axis, axis) = 1.0 / plan.factor;
                voxelFromCell.matrix()(axis, 3) = start + (0.5 - plan.before) / plan.factor - 0.5;
                cellMm[axis] = plan.cellMm;
                cells[axis] = plan.cells(axis == 2 ? slices : grid.size[axis]);
            }
            FineSlab fine(sampler, sceneFromVoxel * voxelFromCell, cellMm, cells);
            const auto cx = static_cast<std::size_t>(cells.x());
            const auto cy = static_cast<std::size_t>(cells.y());
            const auto cz = static_cast<std::size_t>(cells.z());
            const auto nz = static_cast<std::size_t>(slices);
            // Across slices first: that pass thins the data for the others.
            auto values = pass(fine.fill(), 1, cz, cy * cx, plans[2], nz);
            values = pass(values, nz, cy, cx, plans[1], ny);
            values = passAlongRows(values, nz * ny, cx, plans[0], nx);
            if (options.noiseSdHu > 0.0) {
                const auto noise = slabNoise(grid, options, first, slices);
                for (std::size_t i = 0; i < values.size(); ++i)
                    values[i] += static_cast<float>(options.noiseSdHu) * noise[i];
            }
            std::int16_t* out = voxels.data() + nx * ny * static_cast<std::size_t>(first);
            for (std::size_t i = 0; i < values.size(); ++i)
                out[i] =
                    static_cast<std::int16_t>(std::floor(std::clamp(values[i], -1024.0f, 3071.0f) + 0.5f));
            const std::lock_guard lock(reporting);
            work.report(static_cast<double>(++finished) / slabs);
        }
    });
    if (work.stopped()) return core::failure(core::ErrorCode::Cancelled, "Making the volume was stopped.");
    return core::Volume::make(grid.size, std::move(voxels), grid.patientFromVoxel(),
                              core::VoxelQuantity::HounsfieldUnits, options.frameOfReferenceUid);
}

} // namespace gauge::sample_case
