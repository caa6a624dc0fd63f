// Proves that slices form a volume, and where that volume lies in the patient (PS3.3 C.7.6.2.1.1). Only
// positions and orientations count; spacing and tilt tags are compared and reported, never used.
//
//   k, the slice normal          Slices may be shifted sideways by the same amount each (gantry tilt):
//     ^        ____ slice 2      k then runs along the positions, not along the normal,
//     |     ____ slice 1         and the volume is sheared; its affine is exact.
//     |  ____ slice 0
#pragma once

#include "core/result.h"
#include "dicomio/ct/slice_facts.h"

#include <Eigen/Geometry>
#include <span>
#include <vector>

namespace gauge::dicomio {

// Tolerances, all far below what a diameter of 0.3 mm accuracy can notice.
/// Direction cosines: deviation of a length from 1, and of the angle's cosine from 0. Four decimals in the
/// file stay below it.
inline constexpr double kCosineTolerance = 1e-3;
/// Between slices: difference of a direction cosine; 0.13 mm at the rim of a 500 mm field.
inline constexpr double kSameDirection = 5e-4;
/// Between slices: growth or shrinkage of the image's width or height, mm.
inline constexpr double kSameExtentMm = 0.05;
/// Two slices nearer than this are one place, mm.
inline constexpr double kSamePlaceMm = 0.01;
/// Deviation of a slice from the even grid that is still called even, mm.
inline constexpr double kEvenMm = 0.025;
/// Sideways deviation of a slice from the line through the first and the last, mm.
inline constexpr double kSidewaysMm = 0.05;
/// Gaps up to this many times the smallest are resampled; beyond, the stack is refused.
inline constexpr double kLargestGap = 1.5;
/// Gaps this near to multiples of one spacing (as a share of it) mean missing slices.
inline constexpr double kMissingFit = 0.1;
/// Steepest shear that a gantry could have made, degrees.
inline constexpr double kSteepestTiltDeg = 45.0;

struct StackGeometry {
    std::vector<std::size_t> order; ///< slice k is input order[k]; ascending along the normal
    Eigen::Vector3i size = Eigen::Vector3i::Zero();
    Eigen::Affine3d patientFromVoxel = Eigen::Affine3d::Identity();
    Eigen::Vector3d spacingMm =
        Eigen::Vector3d::Zero(); ///< along row, along column, between slices (perpendicular)
    double tiltDeg = 0.0;
    /// Of an unevenly spaced stack: for each slice of the volume its place in `order`, whole numbers being
    /// slices. Empty when the slices are used as they are.
    std::vector<double> resampleAt;
    std::vector<core::Notice> notices;
};

/// @errors SliceMissing (fewer than two places, or a gap that is a multiple of the others), SliceDuplicate,
/// SpacingUneven (the largest gap more than 1.5 times the smallest), SizesMixed, OrientationsMixed,
/// SpacingInvalid, GeometryContradictory, AttributeInvalid. The message names the files, the tag and the
/// finding.
core::Result<StackGeometry> proveStack(std::span<const SliceFacts> slices);

} // namespace gauge::dicomio
