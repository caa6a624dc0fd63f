// Points and vectors of the patient and of the voxel grid, as separate types.
//
//   LPS, DICOM's patient axes (PS3.3 C.7.6.2.1.1):      voxel grid:
//        +z head                                         i  along a row    (column index)
//         |  / +y back                                   j  along a column (row index)
//         | /                                            k  across slices
//         o----- +x the patient's left                   the position of a voxel is its centre
#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry> // cross product

namespace gauge::core {

/// Difference of two patient points, LPS, mm.
struct PatientVector {
    Eigen::Vector3d mm = Eigen::Vector3d::Zero();

    double norm() const { return mm.norm(); }
    double dot(const PatientVector& other) const { return mm.dot(other.mm); }
    PatientVector cross(const PatientVector& other) const { return {mm.cross(other.mm)}; }
    /// Unit vector of the same direction. Precondition: not the zero vector.
    PatientVector normalized() const { return {mm.normalized()}; }
    PatientVector operator+(const PatientVector& other) const { return {mm + other.mm}; }
    PatientVector operator-(const PatientVector& other) const { return {mm - other.mm}; }
    PatientVector operator-() const { return {-mm}; }
    PatientVector operator*(double factor) const { return {mm * factor}; }
    bool operator==(const PatientVector&) const = default;
};

inline PatientVector operator*(double factor, const PatientVector& v) { return v * factor; }

/// A place in the patient, LPS, mm. Point minus point is a vector; point plus point does not compile.
struct PatientPoint {
    Eigen::Vector3d mm = Eigen::Vector3d::Zero();

    PatientVector operator-(const PatientPoint& other) const { return {mm - other.mm}; }
    PatientPoint operator+(const PatientVector& v) const { return {mm + v.mm}; }
    PatientPoint operator-(const PatientVector& v) const { return {mm - v.mm}; }
    bool operator==(const PatientPoint&) const = default;
};

inline double distanceMm(const PatientPoint& a, const PatientPoint& b) { return (a - b).norm(); }

/// Integer place in a voxel grid.
struct VoxelIndex {
    Eigen::Vector3i ijk = Eigen::Vector3i::Zero();
};

/// Real-valued place in a voxel grid; whole numbers are voxel centres.
struct VoxelCoord {
    Eigen::Vector3d ijk = Eigen::Vector3d::Zero();
};

} // namespace gauge::core
