#include "core/cine/planar_scale.h"

#include <cmath>

namespace gauge::core {

std::string_view words(ScaleOrigin origin) {
    switch (origin) {
    case ScaleOrigin::RegionCalibration:
        return "calibration of the ultrasound region";
    case ScaleOrigin::HandCalibration:
        return "scale marked by hand";
    case ScaleOrigin::ImagerAtIsocentre:
        return "detector spacing, reduced to the isocentre";
    case ScaleOrigin::Catheter:
        return "outer diameter of a catheter";
    case ScaleOrigin::MarkerSpacing:
        return "distance between markers";
    case ScaleOrigin::DeviceGeometry:
        return "calibrated by the device from its geometry";
    case ScaleOrigin::DeviceFiducial:
        return "calibrated by the device on an object of known size";
    case ScaleOrigin::PixelSpacing:
        return "pixel spacing of the file, calibration not told";
    }
    return "not known";
}

Result<void> validate(const PlanarScale& scale) {
    const bool lengths = scale.mmPerPixel.allFinite() && scale.mmPerPixel.minCoeff() > 0.0;
    const bool sure = std::isfinite(scale.relativeUncertainty) && scale.relativeUncertainty >= 0.0;
    if (lengths && sure) return {};
    return failure(ErrorCode::SpacingInvalid,
                   "Cannot measure with a scale of " + std::to_string(scale.mmPerPixel.x()) + " x " +
                       std::to_string(scale.mmPerPixel.y()) + " mm a pixel and a relative uncertainty of " +
                       std::to_string(scale.relativeUncertainty) +
                       ": pixel lengths must be above zero, the uncertainty not below it. Calibrate again.");
}

Result<Estimate> planarDistance(const Eigen::Vector2d& from, const Eigen::Vector2d& to,
                                const PlanarScale& scale, double endPixels) {
    if (auto valid = validate(scale); !valid) return tl::make_unexpected(valid.error());
    if (!from.allFinite() || !to.allFinite() || !std::isfinite(endPixels) || endPixels < 0.0)
        return failure(
            ErrorCode::NonFinite,
            "Cannot measure a distance: an end of the caliper, or what is said of its accuracy, is no "
            "usable number. Set both ends again.");
    const Eigen::Vector2d mm = (to - from).cwiseProduct(scale.mmPerPixel);
    const double length = mm.norm();
    // Standard deviation of one end along the caliper; where both ends coincide any direction may be the one.
    const double endMm = length > 0.0 ? endPixels * mm.cwiseProduct(scale.mmPerPixel).norm() / length
                                      : endPixels * scale.mmPerPixel.maxCoeff();
    Estimate out;
    out.value = length;
    out.components.observer = std::sqrt(2.0) * endMm;
    out.components.scale = length * scale.relativeUncertainty;
    out.method = "caliper; " + std::string(words(scale.origin));
    if (!scale.detail.empty()) out.method += " (" + scale.detail + ")";
    return out;
}

} // namespace gauge::core
