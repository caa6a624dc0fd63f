#include "core/volume/box_field.h"

#include "core/fast/fast_path.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/trilinear_rows.h"
#include "core/volume/volume_block.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

constexpr double kKernelReachInSigma = 3.0;

/// Row, column and slice normal of a volume, made orthonormal. The normal is row x column, turned to the side to
/// which the slices are stacked.
Eigen::Matrix3d orthonormalAxes(const Volume& volume) {
    const Eigen::Matrix3d linear = volume.patientFromVoxel().linear();
    const Eigen::Vector3d row = linear.col(0).normalized();
    const Eigen::Vector3d column = (linear.col(1) - linear.col(1).dot(row) * row).normalized();
    const Eigen::Vector3d normal = row.cross(column);
    Eigen::Matrix3d axes;
    axes << row, column, normal.dot(linear.col(2)) >= 0.0 ? normal : Eigen::Vector3d(-normal);
    return axes;
}

std::vector<float> gaussianKernel(double sigmaSteps) {
    const int reach = std::max(1, static_cast<int>(std::ceil(kKernelReachInSigma * sigmaSteps)));
    std::vector<float> kernel(static_cast<std::size_t>(reach) + 1);
    double sum = 0.0;
    for (int i = 0; i <= reach; ++i) {
        const double w = std::exp(-0.5 * (i / sigmaSteps) * (i / sigmaSteps));
        kernel[static_cast<std::size_t>(i)] = static_cast<float>(w);
        sum += i == 0 ? w : 2.0 * w;
    }
    for (float& w : kernel)
        w = static_cast<float>(w / sum);
    return kernel;
}

std::ptrdiff_t mirrored(std::ptrdiff_t i, std::ptrdiff_t size) {
    if (size == 1)
        return 0;
    const std::ptrdiff_t period = 2 * (size - 1);
    i = std::abs(i) % period;
    return i < size ? i : period - i;
}

/// One row that has `kernel.size() - 1` values more on each side; unit strides throughout.
void convolveRow(const float* in, float* out, std::ptrdiff_t length, const std::vector<float>& kernel) {
    for (std::ptrdiff_t i = 0; i < length; ++i)
        out[i] = kernel[0] * in[i];
    for (std::ptrdiff_t d = 1; d < static_cast<std::ptrdiff_t>(kernel.size()); ++d) {
        const float w = kernel[static_cast<std::size_t>(d)];
        for (std::ptrdiff_t i = 0; i < length; ++i)
            out[i] += w * (in[i - d] + in[i + d]);
    }
}

/// Convolves along one axis. A "line group" is a run of nodes that are neighbours in memory, so that every axis is
/// filtered with unit-stride inner loops where possible.
void convolveAxis(const BoxGrid& grid, const LargeVector<float>& in, LargeVector<float>& out, int axis,
                  const std::vector<float>& kernel) {
    const std::ptrdiff_t strides[3] = {1, grid.strideY(), grid.strideZ()};
    const std::ptrdiff_t stride = strides[axis];
    const std::ptrdiff_t size = grid.size[axis];
    const auto reach = static_cast<std::ptrdiff_t>(kernel.size()) - 1;
    const auto rows = static_cast<std::size_t>(grid.size.y()) * static_cast<std::size_t>(grid.size.z());
    const std::ptrdiff_t rowLength = grid.size.x();

    parallelFor(rows, 64, [&](std::size_t begin, std::size_t end) {
        std::vector<float> framed(axis == 0 ? static_cast<std::size_t>(rowLength + 2 * reach) : 0);
        for (std::size_t r = begin; r < end; ++r) {
            const auto start = static_cast<std::ptrdiff_t>(r) * rowLength;
            float* o = out.data() + start;
            const float* c = in.data() + start;
            if (axis == 0) {
                for (std::ptrdiff_t i = -reach; i < rowLength + reach; ++i)
                    framed[static_cast<std::size_t>(i + reach)] = c[i >= 0 && i < size ? i : mirrored(i, size)];
                convolveRow(framed.data() + reach, o, rowLength, kernel);
                continue;
            }
            const std::ptrdiff_t place = axis == 1 ? static_cast<std::ptrdiff_t>(r) % grid.size.y()
                                                   : static_cast<std::ptrdiff_t>(r) / grid.size.y();
            for (std::ptrdiff_t i = 0; i < rowLength; ++i)
                o[i] = kernel[0] * c[i];
            for (std::ptrdiff_t d = 1; d <= reach; ++d) {
                const float w = kernel[static_cast<std::size_t>(d)];
                const float* a = c + (mirrored(place - d, size) - place) * stride;
                const float* b = c + (mirrored(place + d, size) - place) * stride;
                for (std::ptrdiff_t i = 0; i < rowLength; ++i)
                    o[i] += w * (a[i] + b[i]);
            }
        }
    });
}

} // namespace

double interpolate(const BoxField<float>& field, const PatientPoint& p) {
    const BoxGrid& g = field.grid;
    const Eigen::Array3d last = (g.size.array() - 1).cast<double>();
    const Eigen::Array3d c = g.coordFrom(p).array().max(0.0).min(last);
    const Eigen::Array3i n = c.floor().min((last - 1.0).max(0.0)).cast<int>();
    const Eigen::Array3d t = c - n.cast<double>();
    const float* v = field.values.data() + g.index(n.matrix());
    const std::ptrdiff_t dx = g.size.x() > 1 ? 1 : 0;
    const std::ptrdiff_t dy = g.size.y() > 1 ? g.strideY() : 0;
    const std::ptrdiff_t dz = g.size.z() > 1 ? g.strideZ() : 0;
    const auto mix = [](double a, double b, double s) { return a + (b - a) * s; };
    const double near = mix(mix(v[0], v[dx], t.x()), mix(v[dy], v[dx + dy], t.x()), t.y());
    const double far = mix(mix(v[dz], v[dx + dz], t.x()), mix(v[dy + dz], v[dx + dy + dz], t.x()), t.y());
    return mix(near, far, t.z());
}

BoxGrid boxAround(const Volume& volume, const std::vector<PatientPoint>& points, double marginMm, double stepMm) {
    const Eigen::Matrix3d axes = orthonormalAxes(volume);
    constexpr double kFar = std::numeric_limits<double>::max();
    Eigen::Array3d low = Eigen::Array3d::Constant(kFar), high = -low;
    for (const auto& p : points) {
        const Eigen::Array3d c = (axes.transpose() * p.mm).array();
        low = low.min(c - marginMm);
        high = high.max(c + marginMm);
    }
    Eigen::Array3d volumeLow = Eigen::Array3d::Constant(kFar), volumeHigh = -volumeLow;
    const Eigen::Vector3d last = (volume.size().array() - 1).cast<double>();
    for (int corner = 0; corner < 8; ++corner) {
        const Eigen::Vector3d v((corner & 1) ? last.x() : 0.0, (corner & 2) ? last.y() : 0.0,
                                (corner & 4) ? last.z() : 0.0);
        const Eigen::Array3d c = (axes.transpose() * (volume.patientFromVoxel() * v)).array();
        volumeLow = volumeLow.min(c);
        volumeHigh = volumeHigh.max(c);
    }
    low = low.max(volumeLow);
    high = high.min(volumeHigh).max(low);
    BoxGrid grid;
    grid.axes = axes;
    grid.stepMm = stepMm;
    grid.origin = {axes * low.matrix()};
    grid.size = (((high - low) / stepMm).floor().cast<int>() + 1).matrix();
    return grid;
}

BoxField<float> resample(const Volume& volume, const BoxGrid& grid, float outside) {
    BoxField<float> field(grid, Unfilled{});
    const TrilinearRows& samples = fastOr(kTrilinearRows, trilinearRowsAvx2());
    const VoxelBlock block = voxelBlock(volume);
    const OutsideRule rule{1e-6, outside};
    const Eigen::Affine3d& toVoxel = volume.voxelFromPatient();
    const Eigen::Vector3d alongRow = toVoxel.linear() * grid.axes.col(0) * grid.stepMm;
    const auto rows = static_cast<std::size_t>(grid.size.y()) * static_cast<std::size_t>(grid.size.z());
    parallelFor(rows, 32, [&](std::size_t begin, std::size_t end) {
        for (std::size_t r = begin; r < end; ++r) {
            const auto j = static_cast<double>(r % static_cast<std::size_t>(grid.size.y()));
            const auto k = static_cast<double>(r / static_cast<std::size_t>(grid.size.y()));
            const Eigen::Vector3d start = toVoxel * grid.patientFrom(Eigen::Vector3d(0.0, j, k)).mm;
            samples.inside(block, voxelRow(start, alongRow), rule, 0, grid.size.x(),
                           field.values.data() + r * static_cast<std::size_t>(grid.size.x()));
        }
    });
    return field;
}

BoxField<float> smoothed(const BoxField<float>& field, double sigmaMm) {
    if (sigmaMm <= 0.0 || field.values.empty())
        return field;
    const auto kernel = gaussianKernel(sigmaMm / field.grid.stepMm);
    BoxField<float> a(field.grid, Unfilled{}), b(field.grid, Unfilled{});
    convolveAxis(field.grid, field.values, a.values, 0, kernel);
    convolveAxis(field.grid, a.values, b.values, 1, kernel);
    convolveAxis(field.grid, b.values, a.values, 2, kernel);
    return a;
}

} // namespace gauge::core
