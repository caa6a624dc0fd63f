// Surfaces of equal value in voxels: marching cubes whose cases are made by one rule (cube_cases.h), so that
// neighbouring cubes always agree.
//
// How it is fast: a row of voxels becomes a row of bits (inside or not). Exclusive-or of neighbouring rows marks the
// edges that the surface crosses, a population count gives each crossing its number without any table of edges, and
// only cubes that the surface passes through are looked at. Rows are independent: threads share slices, the result
// does not depend on how many there are. tests/core/volume holds it to a plain twin, bit by bit.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/surface_mesh.h"
#include "core/volume/volume.h"

#include <cstdint>

namespace gauge::core {

/// Values on a grid, i fastest; the block is not owned.
struct ValueBlock {
    const std::int16_t* values = nullptr;
    Eigen::Vector3i size = Eigen::Vector3i::Zero();
    Eigen::Affine3d patientFromBlock = Eigen::Affine3d::Identity();
};

/// The surface between values at or above `level` (inside) and below it, in LPS mm through the exact affine: sheared
/// and mirrored grids too. Points lie where the linearly interpolated value along a grid edge equals `level`, held
/// 0.001 of the edge away from its ends; normals are the negative gradient (central differences). Open only where
/// it leaves the block. Where a face of a cube is ambiguous, the inside corners are kept apart. Empty when
/// nothing crosses.
/// Order: points by row (k, then j), in a row those on edges along i, j, k; triangles by cube.
/// @errors InvalidArgument for a block without values or with fewer than 2 of them along an axis, or for more than
/// 2^32 points; NonFinite for the level; Degenerate for an affine without inverse; Cancelled.
/// Accuracy: on a sphere of 10 mm radius at 0.5 mm spacing whose edge is blurred as by a scanner, area and volume are
/// within 0.2 % (tests); error falls with the square of the spacing.
Result<SurfaceMesh> isoSurface(const ValueBlock& block, double level, const WorkContext& work = {});

/// The same of a whole volume.
Result<SurfaceMesh> isoSurface(const Volume& volume, double level, const WorkContext& work = {});

/// The surface's point on the edge from `from` to `to` with values `a` and `b`: share of the way, 0.001 to 0.999.
double crossingShare(double level, double a, double b);

} // namespace gauge::core
