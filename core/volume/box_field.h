// An isotropic, orthogonal box of values in the patient. Distances, masks and paths live here: a tilted volume is
// sheared, and separable distance transforms are wrong under shear.
#pragma once

#include "core/fast/large_vector.h"
#include "core/geometry/points.h"
#include "core/volume/volume.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace gauge::core {

/// Placement of a box: node (i, j, k) lies at origin + stepMm * axes * (i, j, k).
struct BoxGrid {
    PatientPoint origin;
    Eigen::Matrix3d axes = Eigen::Matrix3d::Identity(); ///< orthonormal columns
    double stepMm = 1.0;
    Eigen::Vector3i size = Eigen::Vector3i::Zero();

    std::size_t count() const {
        return static_cast<std::size_t>(size.x()) * static_cast<std::size_t>(size.y()) *
               static_cast<std::size_t>(size.z());
    }
    std::ptrdiff_t strideY() const { return size.x(); }
    std::ptrdiff_t strideZ() const { return static_cast<std::ptrdiff_t>(size.x()) * size.y(); }
    std::size_t index(const Eigen::Vector3i& n) const {
        return static_cast<std::size_t>(n.x() + strideY() * n.y() + strideZ() * n.z());
    }
    Eigen::Vector3i node(std::size_t index) const {
        const auto i = static_cast<std::ptrdiff_t>(index);
        return {static_cast<int>(i % strideY()), static_cast<int>(i % strideZ() / strideY()),
                static_cast<int>(i / strideZ())};
    }
    PatientPoint patientFrom(const Eigen::Vector3d& n) const { return {origin.mm + stepMm * (axes * n)}; }
    PatientPoint patientFrom(std::size_t index) const { return patientFrom(node(index).cast<double>()); }
    Eigen::Vector3d coordFrom(const PatientPoint& p) const {
        return axes.transpose() * (p.mm - origin.mm) / stepMm;
    }
    /// Nearest node, held at the faces.
    Eigen::Vector3i nearest(const PatientPoint& p) const {
        const Eigen::Array3d c = coordFrom(p).array().round();
        return c.max(0.0).min((size.array() - 1).cast<double>()).matrix().cast<int>();
    }
    bool contains(const PatientPoint& p) const {
        const Eigen::Array3d c = coordFrom(p).array();
        return (c >= 0.0).all() && (c <= (size.array() - 1).cast<double>()).all();
    }
};

/// Says that a field's values are all going to be written, so that nothing need be put there first.
struct Unfilled {};

/// Values on a box, i fastest.
template <class T> struct BoxField {
    BoxGrid grid;
    LargeVector<T> values;

    explicit BoxField(const BoxGrid& g = {}, T value = T{}) : grid(g), values(g.count(), value) {}
    BoxField(const BoxGrid& g, Unfilled) : grid(g), values(g.count()) {}
    T& operator[](std::size_t index) { return values[index]; }
    const T& operator[](std::size_t index) const { return values[index]; }
    T at(const PatientPoint& p) const { return values[grid.index(grid.nearest(p))]; }
};

using BoxMask = BoxField<std::uint8_t>;

/// Trilinear value of a float field, held at the faces.
double interpolate(const BoxField<float>& field, const PatientPoint& p);

/// A box around `points` with `marginMm` on all sides, cut to what the volume covers, its axes along the volume's
/// rows, columns and slice normal (orthonormal even when the volume is tilted).
BoxGrid boxAround(const Volume& volume, const std::vector<PatientPoint>& points, double marginMm, double stepMm);

/// Trilinear samples of the volume on the box; nodes outside the volume get `outside`.
BoxField<float> resample(const Volume& volume, const BoxGrid& grid, float outside);

/// Gaussian smoothing, kernel cut at 3 sigma and normalised, faces mirrored. sigmaMm >= 0.
BoxField<float> smoothed(const BoxField<float>& field, double sigmaMm);

} // namespace gauge::core
