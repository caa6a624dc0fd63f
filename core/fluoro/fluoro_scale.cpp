#include "core/fluoro/fluoro_scale.h"

#include "core/number_text.h"

#include <cmath>

namespace gauge::core {
Result<FluoroScale> atDepth(const FluoroScale& scale, double offDepthMm, double sourceToObjectMm) {
    if (!std::isfinite(offDepthMm) || !std::isfinite(sourceToObjectMm))
        return failure(ErrorCode::NonFinite,
                       "Cannot carry the scale to another depth: a distance is no finite number.");
    if (offDepthMm < 0.0 || !(sourceToObjectMm > offDepthMm))
        return failure(
            ErrorCode::InvalidArgument,
            "Cannot carry the scale to another depth: " + general(offDepthMm) + " mm off its own, " +
                general(sourceToObjectMm) +
                " mm from the source. The first must not be negative and must be less than the second.");
    FluoroScale moved = scale;
    moved.depthRelative = offDepthMm / sourceToObjectMm;
    moved.planar.relativeUncertainty = std::hypot(moved.ownRelative, moved.depthRelative);
    return moved;
}

Result<FluoroScale> isocentreScale(const Eigen::Vector2d& imagerSpacingMm, double sourceToIsocentreMm,
                                   double sourceToDetectorMm, double offDepthMm) {
    if (!(imagerSpacingMm.x() > 0.0 && imagerSpacingMm.y() > 0.0 && imagerSpacingMm.allFinite()))
        return failure(ErrorCode::SpacingInvalid,
                       "Cannot scale the fluoroscopy at the isocentre: the spacing at the detector is " +
                           general(imagerSpacingMm.x()) + " x " + general(imagerSpacingMm.y()) +
                           " mm; both must be above zero.");
    if (!(sourceToIsocentreMm > 0.0 && sourceToDetectorMm > sourceToIsocentreMm &&
          std::isfinite(sourceToDetectorMm)))
        return failure(
            ErrorCode::GeometryContradictory,
            "Cannot scale the fluoroscopy at the isocentre: the source is " +
                general(sourceToIsocentreMm) + " mm from the isocentre and " +
                general(sourceToDetectorMm) +
                " mm from the detector; the isocentre must lie between them. Calibrate on a catheter.");
    const double magnification = sourceToDetectorMm / sourceToIsocentreMm;
    FluoroScale scale;
    scale.planar.mmPerPixel = imagerSpacingMm / magnification;
    scale.planar.origin = ScaleOrigin::ImagerAtIsocentre;
    scale.planar.detail = "detector pixels of " + general(imagerSpacingMm.x(), 4) + " mm, magnified " +
                          fixed(magnification, 3) + " times";
    // SOD and SID are told apart, each with its own error: the quotient has both.
    scale.ownRelative = std::sqrt(2.0) * kDistanceRelativeUncertainty;
    return atDepth(scale, offDepthMm, sourceToIsocentreMm);
}

} // namespace gauge::core
