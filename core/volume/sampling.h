// Interpolated values of a volume.
#pragma once

#include "core/volume/volume.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {

/// Trilinear interpolation of a volume. Outside the block of voxel centres the nearest voxel's value is held.
class TrilinearSampler {
public:
    explicit TrilinearSampler(const Volume& volume)
        : m_data(volume.data()), m_size(volume.size()), m_voxelFromPatient(volume.voxelFromPatient()) {}

    double operator()(const PatientPoint& p) const { return atVoxel(m_voxelFromPatient * p.mm); }

    double atVoxel(const Eigen::Vector3d& c) const {
        const Axis x = along(c.x(), m_size.x()), y = along(c.y(), m_size.y()), z = along(c.z(), m_size.z());
        const std::ptrdiff_t row = m_size.x();
        const std::ptrdiff_t slice = row * m_size.y();
        const std::int16_t* p = m_data + x.index + row * y.index + slice * z.index;
        const std::ptrdiff_t dx = x.step, dy = y.step * row, dz = z.step * slice;
        const auto mix = [](double a, double b, double t) { return a + (b - a) * t; };
        const double near = mix(mix(p[0], p[dx], x.t), mix(p[dy], p[dx + dy], x.t), y.t);
        const double far = mix(mix(p[dz], p[dx + dz], x.t), mix(p[dy + dz], p[dx + dy + dz], x.t), y.t);
        return mix(near, far, z.t);
    }

private:
    struct Axis {
        std::ptrdiff_t index;
        std::ptrdiff_t step;
        double t;
    };
    static Axis along(double c, int size) {
        const double held = std::clamp(c, 0.0, static_cast<double>(size - 1));
        const auto index = std::min(static_cast<std::ptrdiff_t>(held), static_cast<std::ptrdiff_t>(size - 1));
        return {index, index + 1 < size ? 1 : 0, held - static_cast<double>(index)};
    }

    const std::int16_t* m_data;
    Eigen::Vector3i m_size;
    Eigen::Affine3d m_voxelFromPatient;
};

} // namespace gauge::core
