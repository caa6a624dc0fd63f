// Exact Euclidean distances of a mask's nodes to its border.
//
// Separable: squared distances along i from the runs of each row, then the least sum along j, then along k
// (distance_columns.h), each time sixteen neighbouring lines at once. Squares of whole steps are exact in floats, so
// the result is that of any other exact method to the last bit.
#pragma once

#include "core/volume/box_field.h"

namespace gauge::core {

/// A mask on a grid whose steps may differ, i fastest; not owned.
struct MaskBlock {
    const std::uint8_t* values = nullptr; ///< 0 is background
    Eigen::Vector3i size = Eigen::Vector3i::Zero();
    Eigen::Vector3d spacingMm = Eigen::Vector3d::Ones();
};

/// For each node of the mask (value != 0) the distance in mm to the nearest node with value 0; 0 in the
/// background. Nodes beyond the box count as mask (the box's faces are no wall). A mask without any background
/// gets the greatest float everywhere.
/// Exact for the node grid (up to 2300 nodes along an axis). Source: separability, Saito and Toriwaki, Pattern
/// Recognition 27 (1994) 1551-1565.
BoxField<float> distanceInsideMm(const BoxMask& mask);

/// The same in the mask, and minus the distance to the nearest node of the mask in the background; minus the greatest
/// float where there is no mask.
BoxField<float> signedDistanceMm(const BoxMask& mask);

/// Both on grids whose steps differ, written to `out` (as many as nodes). Accuracy with unequal steps: 2e-7 of the
/// distance (squares rounded to floats).
void distanceInsideMm(const MaskBlock& mask, float* out);
void signedDistanceMm(const MaskBlock& mask, float* out);

} // namespace gauge::core
