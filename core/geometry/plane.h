// A plane in the patient, and the frame of a section cut along it.
//
//            normal (towards the appendage tip)
//              ^
//              |   v
//              |  /
//   origin --> o------ u          u, v, normal: right-handed and orthonormal.
//                                 Seen from the tip (looking against the normal) u x v turns counter-clockwise.
#pragma once

#include "core/geometry/points.h"

namespace gauge::core {

/// A plane through `point` with unit `normal`.
struct Plane {
    PatientPoint point;
    PatientVector normal{Eigen::Vector3d::UnitZ()};
    bool operator==(const Plane&) const = default;
};

/// Distance of `p` from the plane, mm; positive on the side to which the normal points.
inline double signedDistanceMm(const Plane& plane, const PatientPoint& p) {
    return (p - plane.point).dot(plane.normal);
}

/// A plane with axes: patient point = origin + a u + b v for section coordinates (a, b) in mm.
struct SectionFrame {
    PatientPoint origin;
    PatientVector u{Eigen::Vector3d::UnitX()};
    PatientVector v{Eigen::Vector3d::UnitY()};
    PatientVector normal{Eigen::Vector3d::UnitZ()};

    PatientPoint patientFromSection(const Eigen::Vector2d& ab) const {
        return {origin.mm + ab.x() * u.mm + ab.y() * v.mm};
    }
    Eigen::Vector2d sectionFromPatient(const PatientPoint& p) const {
        const Eigen::Vector3d d = p.mm - origin.mm;
        return {d.dot(u.mm), d.dot(v.mm)};
    }
    Plane plane() const { return {origin, normal}; }
    bool operator==(const SectionFrame&) const = default;
};

/// A frame on `plane` with its origin at the plane's point. `u` is the direction closest to the patient's left
/// (or, when the normal is close to left-right, closest to posterior), so neighbouring planes get alike frames.
SectionFrame frameOf(const Plane& plane);

/// A frame whose `u` is `hint` projected into the plane. Precondition: `hint` is not parallel to the normal.
SectionFrame frameOf(const Plane& plane, const PatientVector& hint);

} // namespace gauge::core
