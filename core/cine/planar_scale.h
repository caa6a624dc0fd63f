// How long a pixel is: the scale of a flat picture (echo, fluoroscopy), where it came from and how sure it
// is; and the caliper that uses it.
//
//   o-----> x, columns       A pixel is mmPerPixel.x() wide and mmPerPixel.y() high. Both are positive; a
//   region whose |                        physical axis runs against the picture keeps that sign in
//   echo_region.h. v y, rows
#pragma once

#include "core/measure/estimate.h"
#include "core/result.h"

#include <Eigen/Core>
#include <string>
#include <string_view>

namespace gauge::core {

enum class ScaleOrigin {
    RegionCalibration, ///< the scanner's own calibration of an ultrasound region
    HandCalibration,   ///< a scale in the picture that the person marked
    ImagerAtIsocentre, ///< spacing at the detector, reduced by the geometry to the isocentre
    Catheter,          ///< outer diameter of a catheter that the person marked
    MarkerSpacing,     ///< distance between radiopaque markers
    DeviceGeometry,    ///< pixel spacing calibrated by the device from its geometry
    DeviceFiducial,    ///< pixel spacing calibrated by the device on an object of known size
    PixelSpacing,      ///< pixel spacing in the patient, way of calibration not told
};

/// In words fit for a report: "calibration of the ultrasound region", "scale marked by hand"…
std::string_view words(ScaleOrigin origin);

struct PlanarScale {
    Eigen::Vector2d mmPerPixel = Eigen::Vector2d::Zero();
    /// Relative standard uncertainty of both axes alike (of axes calibrated apart: the larger). The whole
    /// length of a caliper shares it.
    double relativeUncertainty = 0.0;
    ScaleOrigin origin = ScaleOrigin::PixelSpacing;
    /// What else a report should say of it ("6 F catheter, 2.0 mm, 14 pixels wide"); may be empty.
    std::string detail;
};

/// @errors SpacingInvalid unless both pixel lengths are finite and above 0 and the uncertainty finite and not
/// negative.
Result<void> validate(const PlanarScale& scale);

/// Standard deviation of one end that a careful hand sets on a screen, along each axis, in pixels of the
/// picture. Assumption.
inline constexpr double kHandSetPixels = 1.0;

/// Distance between two pixel coordinates. `components.scale` is the scale's share; `components.observer`
/// that of the two ends, each with the standard deviation `endPixels` along each axis. `method` names the
/// scale's origin and detail.
/// @errors NonFinite; those of validate(). Two equal points measure 0 mm.
Result<Estimate> planarDistance(const Eigen::Vector2d& from, const Eigen::Vector2d& to,
                                const PlanarScale& scale, double endPixels = kHandSetPixels);

} // namespace gauge::core
