#include "core/volume/radiograph.h"

#include "core/parallel/cancelled.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/ray_sums.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cassert>
#include <cmath>
#include <iterator>
#include <mutex>

namespace gauge::core {
namespace {

/// Rays of one bundle: as wide as keeps neighbouring rays in the same cache lines, as high as fills the bundle.
constexpr int kTileColumns = 32, kTileRows = RayBundle::kMost / kTileColumns;
/// A ray may move on by so many voxels within a slice from one slice to the next before another axis serves better.
constexpr double kSteepest = 1.5;
constexpr std::size_t kMostPixels = 64'000'000;
constexpr int kMostSkipped = 8;

struct PixelRect {
    int column, row, columns, rows;
};

/// The camera in the volume's voxel coordinates, and the sums along its rays.
class RayCaster {
public:
    RayCaster(const Volume& volume, const PinholeCamera& camera, int every)
        : m_volume(volume), m_every(every), m_columns(camera.columns),
          m_source(volume.voxelFromPatient() * camera.source.mm),
          m_toFirst(volume.voxelFromPatient() * camera.firstPixel.mm - m_source),
          m_columnStep(volume.voxelFromPatient().linear() * camera.columnStep.mm),
          m_rowStep(volume.voxelFromPatient().linear() * camera.rowStep.mm),
          m_axis(steepestAxis(direction(0.5 * (camera.columns - 1), 0.5 * (camera.rows - 1)))) {}

    /// Works out the pixels of a rectangle of at most kTileColumns x kTileRows.
    void cast(const PixelRect& rect, std::vector<float>& waterMm) const {
        if (serves(m_axis, rect)) return castAlong(m_axis, rect, waterMm);
        const int own = steepestAxis(direction(rect.column + 0.5 * (rect.columns - 1), rect.row + 0.5 * (rect.rows - 1)));
        if (serves(own, rect)) return castAlong(own, rect, waterMm);
        // Rays that spread so widely have no axis in common.
        const int left = (rect.columns + 1) / 2, top = (rect.rows + 1) / 2;
        for (const PixelRect& part :
             {PixelRect{rect.column, rect.row, left, top}, PixelRect{rect.column + left, rect.row, rect.columns - left, top},
              PixelRect{rect.column, rect.row + top, left, rect.rows - top},
              PixelRect{rect.column + left, rect.row + top, rect.columns - left, rect.rows - top}})
            if (part.columns > 0 && part.rows > 0) cast(part, waterMm);
    }

private:
    /// From the source to a pixel, voxels.
    Eigen::Vector3d direction(double column, double row) const {
        return m_toFirst + column * m_columnStep + row * m_rowStep;
    }
    static int steepestAxis(const Eigen::Vector3d& d) {
        Eigen::Index axis = 0;
        d.cwiseAbs().maxCoeff(&axis);
        return static_cast<int>(axis);
    }

    /// True when every ray of the rectangle crosses the axis' slices steeply enough; directions are linear over the
    /// rectangle, so its corners tell.
    bool serves(int axis, const PixelRect& rect) const {
        double sense = 0.0;
        for (const int column : {rect.column, rect.column + rect.columns - 1})
            for (const int row : {rect.row, rect.row + rect.rows - 1}) {
                const Eigen::Vector3d d = direction(column, row);
                if (d.cwiseAbs().maxCoeff() > kSteepest * std::abs(d[axis])) return false;
                if (sense * d[axis] < 0.0) return false;
                sense = d[axis];
            }
        return true;
    }

    /// The bundle's axes, its rays still to come.
    RayBundle bundleAlong(int axis) const {
        const Eigen::Vector3i& size = m_volume.size();
        const std::array<std::ptrdiff_t, 3> strides{1, size.x(), static_cast<std::ptrdiff_t>(size.x()) * size.y()};
        RayBundle rays;
        rays.voxels = m_volume.data();
        const auto p = static_cast<std::size_t>(axis == 0 ? 1 : 0), q = static_cast<std::size_t>(axis == 2 ? 1 : 2);
        rays.strideP = strides[p];
        rays.strideQ = strides[q];
        rays.strideSlice = strides[static_cast<std::size_t>(axis)];
        rays.sizeP = size[static_cast<int>(p)];
        rays.sizeQ = size[static_cast<int>(q)];
        rays.slices = size[axis];
        rays.every = m_every;
        rays.middle = static_cast<float>((rays.slices - 1) / 2);
        return rays;
    }

    void castAlong(int axis, const PixelRect& rect, std::vector<float>& waterMm) const {
        RayBundle rays = bundleAlong(axis);
        std::array<double, RayBundle::kMost> stepMm;
        float first = static_cast<float>(rays.slices), last = -1.0f;
        for (int row = 0; row < rect.rows; ++row)
            for (int column = 0; column < rect.columns; ++column) {
                const auto r = static_cast<std::size_t>(rays.count);
                stepMm[r] = addRay(rays, axis, direction(rect.column + column, rect.row + row));
                if (rays.begin[r] < rays.end[r]) {
                    first = std::min(first, rays.begin[r]);
                    last = std::max(last, rays.end[r]);
                }
            }
        const int rayCount = rays.count;
        if (first < last) {
            while (rays.count % RayBundle::kLanes != 0)
                addNothing(rays);
            const float half = 0.5f * static_cast<float>(m_every);
            rays.first = m_every * static_cast<int>(std::floor((first + half) / static_cast<float>(m_every)));
            rays.last = static_cast<int>(std::ceil(last + half)) - 1;
            sumAlongRays(rays);
        } else {
            std::fill_n(rays.sum, rayCount, 0.0f);
        }
        for (int r = 0; r < rayCount; ++r) {
            const auto pixel = static_cast<std::size_t>(rect.row + r / rect.columns) * static_cast<std::size_t>(m_columns) +
                               static_cast<std::size_t>(rect.column + r % rect.columns);
            waterMm[pixel] = static_cast<float>(1e-3 * stepMm[static_cast<std::size_t>(r)] * rays.sum[r]);
        }
    }

    /// Appends a ray; returns its length from slice to slice, mm.
    double addRay(RayBundle& rays, int axis, const Eigen::Vector3d& d) const {
        // The part between source (0) and pixel (1) that lies inside the block.
        double enters = 0.0, leaves = 1.0;
        for (int a = 0; a < 3; ++a) {
            const double low = -0.5 - m_source[a], high = m_volume.size()[a] - 0.5 - m_source[a];
            if (d[a] == 0.0) {
                if (low > 0.0 || high < 0.0) leaves = -1.0;
                continue;
            }
            const double t = low / d[a], u = high / d[a];
            enters = std::max(enters, std::min(t, u));
            leaves = std::min(leaves, std::max(t, u));
        }
        if (!(enters < leaves)) {
            addNothing(rays);
            return 0.0;
        }
        const int r = rays.count++, p = axis == 0 ? 1 : 0, q = axis == 2 ? 1 : 2;
        const double perSlice = 1.0 / d[axis], toMiddle = (static_cast<double>(rays.middle) - m_source[axis]) * perSlice;
        rays.p[r] = static_cast<float>(m_source[p] + toMiddle * d[p]);
        rays.q[r] = static_cast<float>(m_source[q] + toMiddle * d[q]);
        rays.alongP[r] = static_cast<float>(d[p] * perSlice);
        rays.alongQ[r] = static_cast<float>(d[q] * perSlice);
        const double s = m_source[axis] + enters * d[axis], t = m_source[axis] + leaves * d[axis];
        rays.begin[r] = static_cast<float>(std::min(s, t));
        rays.end[r] = static_cast<float>(std::max(s, t));
        return (m_volume.patientFromVoxel().linear() * d).norm() * std::abs(perSlice);
    }

    static void addNothing(RayBundle& rays) {
        const int r = rays.count++;
        rays.p[r] = rays.q[r] = rays.alongP[r] = rays.alongQ[r] = 0.0f;
        rays.begin[r] = 1.0f;
        rays.end[r] = 0.0f;
    }

    const Volume& m_volume;
    int m_every, m_columns;
    Eigen::Vector3d m_source, m_toFirst, m_columnStep, m_rowStep;
    int m_axis; ///< of the picture's middle, which serves nearly all of it
};

Result<void> validateRadiograph(const Volume& volume, const PinholeCamera& camera, const RadiographOptions& options) {
    const std::string attempted = "Cannot simulate a radiograph: ";
    if (volume.quantity() != VoxelQuantity::HounsfieldUnits)
        return failure(ErrorCode::InvalidArgument, attempted + "the volume is not in Hounsfield units.");
    if (options.everySlice < 1 || options.everySlice > kMostSkipped)
        return failure(ErrorCode::InvalidArgument, attempted + "every " + std::to_string(options.everySlice) +
                                                       "th slice was asked for; 1 to " + std::to_string(kMostSkipped) +
                                                       " can be.");
    if (camera.columns < 1 || camera.rows < 1 ||
        static_cast<std::size_t>(camera.columns) > kMostPixels / static_cast<std::size_t>(camera.rows))
        return failure(ErrorCode::InvalidArgument, attempted + "a picture of " + std::to_string(camera.columns) + " x " +
                                                       std::to_string(camera.rows) +
                                                       " pixels was asked for; at least one and at most 64 million can be.");
    if (!camera.source.mm.allFinite() || !camera.firstPixel.mm.allFinite() || !camera.columnStep.mm.allFinite() ||
        !camera.rowStep.mm.allFinite())
        return failure(ErrorCode::NonFinite, attempted + "the camera's place is not finite.");
    const Eigen::Vector3d normal = camera.columnStep.mm.cross(camera.rowStep.mm);
    const double spans = camera.columnStep.norm() * camera.rowStep.norm();
    const Eigen::Vector3d toDetector = camera.firstPixel.mm - camera.source.mm;
    if (!(normal.norm() > 1e-9 * spans) || !(std::abs(normal.dot(toDetector)) > 1e-9 * normal.norm() * toDetector.norm()))
        return failure(ErrorCode::Degenerate,
                       attempted + "its detector is no plane apart from the source, so that no ray meets it.");
    return {};
}

} // namespace

Result<Radiograph> simulateRadiograph(const Volume& volume, const PinholeCamera& camera, const RadiographOptions& options,
                                      const WorkContext& work) {
    if (auto valid = validateRadiograph(volume, camera, options); !valid) return tl::make_unexpected(valid.error());
    Radiograph picture{camera,
                       std::vector<float>(static_cast<std::size_t>(camera.columns) * static_cast<std::size_t>(camera.rows))};
    const RayCaster caster(volume, camera, options.everySlice);
    const int across = (camera.columns + kTileColumns - 1) / kTileColumns, down = (camera.rows + kTileRows - 1) / kTileRows;
    const auto tiles = static_cast<std::size_t>(across) * static_cast<std::size_t>(down);
    std::mutex reporting;
    std::size_t done = 0;
    parallelFor(tiles, 8, [&](std::size_t begin, std::size_t end) {
        for (std::size_t tile = begin; tile < end; ++tile) {
            if (work.stopped()) return;
            const int column = static_cast<int>(tile % static_cast<std::size_t>(across)) * kTileColumns;
            const int row = static_cast<int>(tile / static_cast<std::size_t>(across)) * kTileRows;
            caster.cast(
                {column, row, std::min(kTileColumns, camera.columns - column), std::min(kTileRows, camera.rows - row)},
                picture.waterMm);
        }
        const std::lock_guard lock(reporting);
        done += end - begin;
        work.report(static_cast<double>(done) / static_cast<double>(tiles));
    });
    if (work.stopped()) return cancelled("The simulated radiograph");
    return picture;
}

AttenuationRange attenuationRange(const Radiograph& picture, double share) {
    std::vector<float> met;
    std::copy_if(picture.waterMm.begin(), picture.waterMm.end(), std::back_inserter(met), [](float mm) { return mm > 0.0f; });
    if (met.empty()) return {};
    const auto at = [&](double where) {
        const auto place = met.begin() + static_cast<std::ptrdiff_t>(where * static_cast<double>(met.size() - 1));
        std::nth_element(met.begin(), place, met.end());
        return static_cast<double>(*place);
    };
    const double low = at(share);
    return {low, at(1.0 - share)};
}

void addTo(Radiograph& base, const Radiograph& extra, double factor) {
    assert(base.waterMm.size() == extra.waterMm.size());
    for (std::size_t i = 0; i < base.waterMm.size(); ++i)
        base.waterMm[i] = static_cast<float>(base.waterMm[i] + factor * extra.waterMm[i]);
}

} // namespace gauge::core
