#include "core/anatomy/appendage_surface.h"

#include "core/anatomy/appendage_trace.h"
#include "core/parallel/cancelled.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/iso_surface.h"

#include <algorithm>
#include <atomic>
#include <cmath>

namespace gauge::core {
namespace {

constexpr double kSurelyInsideMm = 1.5;
constexpr double kLeastShare = 0.02;
constexpr int kLevelCellNodes = 8; // 4 mm: blood levels are known every 2 mm of the way at best

/// Values of a part of the volume, less the local half level, on a grid with a margin of wall all around.
struct Field {
    std::vector<std::int16_t> values;
    Eigen::Vector3i size = Eigen::Vector3i::Zero();
    Eigen::Affine3d patientFromField = Eigen::Affine3d::Identity();
    bool hasLids = false;

    ValueBlock block() const { return {values.data(), size, patientFromField}; }
};

/// Half levels by cells of the box, so that a voxel needs one look-up.
class HalfLevels {
public:
    explicit HalfLevels(const BloodPool& pool) : m_cells(cellGrid(pool.mask.grid)) {
        for (std::size_t i = 0; i < m_cells.values.size(); ++i)
            m_cells[i] = static_cast<float>(
                0.5 * (pool.levels.nearestTo(m_cells.grid.patientFrom(i)) + pool.contrast.wallHu));
    }
    float at(const Eigen::Vector3i& node) const { return m_cells[m_cells.grid.index(node / kLevelCellNodes)]; }
    /// Those of a row of nodes: that of node x at [x / kLevelCellNodes].
    const float* row(int y, int z) const {
        return &m_cells.values[m_cells.grid.index({0, y / kLevelCellNodes, z / kLevelCellNodes})];
    }

private:
    static BoxGrid cellGrid(const BoxGrid& fine) {
        BoxGrid cells = fine;
        cells.stepMm = fine.stepMm * kLevelCellNodes;
        cells.origin = fine.patientFrom(Eigen::Vector3d::Constant(0.5 * (kLevelCellNodes - 1)));
        cells.size = (fine.size.array() + kLevelCellNodes - 1) / kLevelCellNodes;
        return cells;
    }
    BoxField<float> m_cells;
};

/// Composes the field voxel by voxel.
class FieldMaker {
public:
    FieldMaker(const Volume& volume, const BloodPool& pool)
        : m_volume(volume), m_pool(pool), m_grid(pool.mask.grid), m_levels(pool),
          m_wall(static_cast<std::int16_t>(
              -std::clamp(0.5 * (pool.levels.nearestTo(m_grid.patientFrom(pool.tipNode)) - pool.contrast.wallHu), 1.0,
                          2000.0))) {}

    Field make(const WorkContext& work) const {
        const auto box = voxelsOfBox();
        const Eigen::Vector3i &first = box.first, &last = box.second;
        Field field;
        constexpr int kMargin = 1;
        field.size = (last - first).array() + 1 + 2 * kMargin;
        field.values.assign(static_cast<std::size_t>(field.size.cast<std::ptrdiff_t>().prod()), m_wall);
        field.patientFromField = m_volume.patientFromVoxel();
        field.patientFromField.translate((first.array() - kMargin).cast<double>().matrix());
        std::atomic<bool> lids = false;
        parallelFor(static_cast<std::size_t>(last.z() - first.z()) + 1, 4, [&](std::size_t begin, std::size_t end) {
            for (std::size_t slice = begin; slice < end && !work.stopped(); ++slice)
                if (fillSlice(first, last, static_cast<int>(slice), field))
                    lids = true;
        });
        field.hasLids = lids;
        return field;
    }

private:
    /// First and last voxel of the volume that the box reaches.
    std::pair<Eigen::Vector3i, Eigen::Vector3i> voxelsOfBox() const {
        Eigen::Array3d low = Eigen::Array3d::Constant(1e9), high = -low;
        for (int corner = 0; corner < 8; ++corner) {
            const Eigen::Array3d which(corner & 1, corner >> 1 & 1, corner >> 2 & 1);
            const Eigen::Vector3d node = (which * (m_grid.size.array() - 1).cast<double>()).matrix();
            const Eigen::Array3d c = m_volume.voxelFrom(m_grid.patientFrom(node)).ijk.array();
            low = low.min(c);
            high = high.max(c);
        }
        const Eigen::Array3d end = (m_volume.size().array() - 1).cast<double>();
        return {low.floor().max(0.0).min(end).matrix().cast<int>(), high.ceil().max(0.0).min(end).matrix().cast<int>()};
    }

    /// True when blood reaches the field's margin in this slice.
    bool fillSlice(const Eigen::Vector3i& first, const Eigen::Vector3i& last, int slice, Field& field) const {
        bool lid = false;
        const int k = first.z() + slice, count = last.x() - first.x() + 1;
        const Eigen::Vector3d step =
            m_grid.axes.transpose() * m_volume.patientFromVoxel().linear().col(0) / m_grid.stepMm;
        for (int j = first.y(); j <= last.y(); ++j) {
            const Eigen::Vector3d node = m_grid.coordFrom(m_volume.patientFrom({Eigen::Vector3d(first.x(), j, k)}));
            const std::int16_t* hu = m_volume.data() + first.x() +
                                     static_cast<std::ptrdiff_t>(m_volume.size().x()) *
                                         (j + static_cast<std::ptrdiff_t>(m_volume.size().y()) * k);
            std::int16_t* out = field.values.data() + 1 +
                                static_cast<std::ptrdiff_t>(field.size.x()) *
                                    (j - first.y() + 1 + static_cast<std::ptrdiff_t>(field.size.y()) * (slice + 1));
            fillRow(hu, count, node, step, out);
            const bool border = j == first.y() || j == last.y() || k == first.z() || k == last.z();
            lid = lid || out[0] >= 0 || out[count - 1] >= 0 ||
                  (border && std::any_of(out, out + count, [](std::int16_t value) { return value >= 0; }));
        }
        return lid;
    }

    /// Voxels of a row, whose nodes lie at `node` + i `step`. The box runs along the volume's rows (boxAround), so that one
    /// row of nodes serves; any other box is looked up voxel by voxel.
    void fillRow(const std::int16_t* hu, int count, Eigen::Vector3d node, const Eigen::Vector3d& step, std::int16_t* out) const {
        constexpr double kSameNodes = 1e-6;
        if (std::max(std::abs(step.y()), std::abs(step.z())) * count > kSameNodes) {
            for (int i = 0; i < count; ++i, node += step)
                out[i] = valueAt(hu[i], node);
            return;
        }
        const int y = static_cast<int>(std::floor(node.y() + 0.5)), z = static_cast<int>(std::floor(node.z() + 0.5));
        if (y < 0 || z < 0 || y >= m_grid.size.y() || z >= m_grid.size.z()) {
            std::fill(out, out + count, m_wall);
            return;
        }
        const std::size_t rowStart = m_grid.index({0, y, z});
        const float* levels = m_levels.row(y, z);
        double along = node.x() + 0.5; // the node is its whole part
        for (int i = 0; i < count; ++i, along += step.x()) {
            const int x = along < 0.0 ? -1 : static_cast<int>(along);
            out[i] = x < 0 || x >= m_grid.size.x()
                         ? m_wall
                         : valueAtNode(hu[i], {x, y, z}, rowStart + static_cast<std::size_t>(x), levels[x / kLevelCellNodes]);
        }
    }

    std::int16_t valueAt(std::int16_t hu, const Eigen::Vector3d& at) const {
        const Eigen::Array3i rounded = (at.array() + 0.5).floor().cast<int>();
        if ((rounded < 0).any() || (rounded >= m_grid.size.array()).any())
            return m_wall;
        const Eigen::Vector3i node = rounded.matrix();
        return valueAtNode(hu, node, m_grid.index(node), m_levels.at(node));
    }

    std::int16_t valueAtNode(std::int16_t hu, const Eigen::Vector3i& node, std::size_t index, float half) const {
        const double above = std::clamp(static_cast<double>(hu) - half, -3000.0, 3000.0);
        if (above < 0.0) {
            if (m_pool.mask[index] && m_pool.depth[index] > kSurelyInsideMm)
                return static_cast<std::int16_t>(-m_wall); // a speck
            const int whole = static_cast<int>(above);
            return static_cast<std::int16_t>(whole - (whole > above)); // rounded down
        }
        if (m_pool.mask[index] || (m_pool.hu[index] < half && besideMask(node)))
            return static_cast<std::int16_t>(std::lround(above));
        return m_wall;
    }

    bool besideMask(const Eigen::Vector3i& node) const {
        const Eigen::Vector3i low = (node.array() - 1).max(0), high = (node.array() + 1).min(m_grid.size.array() - 1);
        for (int z = low.z(); z <= high.z(); ++z)
            for (int y = low.y(); y <= high.y(); ++y)
                for (int x = low.x(); x <= high.x(); ++x)
                    if (m_pool.mask[m_grid.index({x, y, z})])
                        return true;
        return false;
    }

    const Volume& m_volume;
    const BloodPool& m_pool;
    const BoxGrid& m_grid;
    HalfLevels m_levels;
    std::int16_t m_wall; ///< below 0
};

/// Means of 2 x 2 x 2 values; the margin stays wall.
Field halved(const Field& fine) {
    Field out;
    out.hasLids = fine.hasLids;
    out.size = (fine.size.array() + 1) / 2 + 2; // one more of margin on each side
    out.values.assign(static_cast<std::size_t>(out.size.cast<std::ptrdiff_t>().prod()), fine.values.front());
    out.patientFromField = fine.patientFromField;
    out.patientFromField.translate(Eigen::Vector3d::Constant(-1.5)).scale(2.0);
    const std::ptrdiff_t row = fine.size.x(), slice = row * fine.size.y();
    parallelFor(static_cast<std::size_t>(fine.size.z()) / 2, 4, [&](std::size_t begin, std::size_t end) {
        for (auto k = static_cast<int>(begin); k < static_cast<int>(end); ++k)
            for (int j = 0; j < fine.size.y() / 2; ++j) {
                const std::int16_t* in = fine.values.data() + 2 * j * row + 2 * k * slice;
                std::int16_t* to = out.values.data() + 1 +
                                   static_cast<std::ptrdiff_t>(out.size.x()) *
                                       (j + 1 + static_cast<std::ptrdiff_t>(out.size.y()) * (k + 1));
                for (int i = 0; i < fine.size.x() / 2; ++i, in += 2, ++to) {
                    const int sum = in[0] + in[1] + in[row] + in[row + 1] + in[slice] + in[slice + 1] +
                                    in[slice + row] + in[slice + row + 1];
                    *to = static_cast<std::int16_t>(std::floor(sum / 8.0));
                }
            }
    });
    return out;
}

/// Which side of the ostium a point of the wall lies on: near the ostium its plane decides, elsewhere the blood nearest
/// to the point.
class Sides {
public:
    Sides(const AppendageTrace& trace, const Section& ostium)
        : m_trace(trace), m_plane{ostium.center, ostium.frame.normal},
          m_reachMm(0.75 * ostium.metrics.longestDiameterMm.value) {}

    std::uint8_t of(const PatientPoint& p) const {
        constexpr double kPlaneDecidesMm = 2.0;
        const double beyond = signedDistanceMm(m_plane, p);
        if (std::abs(beyond) < kPlaneDecidesMm && distanceMm(p, m_plane.point) < m_reachMm)
            return beyond >= 0.0;
        const BoxGrid& g = m_trace.appendage.grid;
        const Eigen::Vector3i node = g.nearest(p);
        const Eigen::Vector3i low = (node.array() - 1).max(0), high = (node.array() + 1).min(g.size.array() - 1);
        int appendage = 0, rest = 0;
        for (int z = low.z(); z <= high.z(); ++z)
            for (int y = low.y(); y <= high.y(); ++y)
                for (int x = low.x(); x <= high.x(); ++x) {
                    const std::size_t i = g.index({x, y, z});
                    appendage += m_trace.appendage[i];
                    rest += m_trace.pool.mask[i] && !m_trace.appendage[i];
                }
        return appendage > rest;
    }

private:
    const AppendageTrace& m_trace;
    Plane m_plane;
    double m_reachMm;
};

} // namespace

Result<AppendageSurface> appendageSurface(const Volume& volume, const AppendageMeasurement& measurement,
                                          const AppendageSurfaceOptions& options, const WorkContext& work) {
    if (!measurement.trace || measurement.trace->pool.mask.values.empty())
        return failure(ErrorCode::InvalidArgument,
                       "Cannot make the surface: the measurement came without its blood pool. Measure again.");
    if (options.coarseness != 1 && options.coarseness != 2)
        return failure(ErrorCode::InvalidArgument, "Cannot make the surface: its coarseness is " +
                                                       std::to_string(options.coarseness) + ", but 1 or 2 is needed.");
    const AppendageTrace& trace = *measurement.trace;
    Field field = FieldMaker(volume, trace.pool).make(work);
    if (work.stopped())
        return cancelled("Making the surface");
    work.report(0.5);
    if (options.coarseness == 2)
        field = halved(field);
    auto mesh = isoSurface(field.block(), 0.0, {work.stop, [&](double share) { work.report(0.5 + 0.3 * share); }});
    if (!mesh)
        return tl::make_unexpected(std::move(mesh.error()));
    AppendageSurface surface;
    surface.mesh = withoutCrumbs(*mesh, kLeastShare);
    surface.hasLids = field.hasLids;
    if (surface.mesh.empty())
        return failure(ErrorCode::NothingUsable,
                       "Cannot make the surface: no voxel of the measured blood lies above the half level. Check the "
                       "marks and measure again.");
    if (work.stopped())
        return cancelled("Making the surface");
    calmNormals(surface.mesh, 2);
    work.report(0.9);
    const Sides sides(trace, measurement.ostium.section);
    surface.beyondOstium.resize(surface.mesh.points.size());
    parallelFor(surface.beyondOstium.size(), 4096, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i)
            surface.beyondOstium[i] = sides.of(surface.mesh.point(i));
    });
    work.report(1.0);
    return surface;
}

} // namespace gauge::core
