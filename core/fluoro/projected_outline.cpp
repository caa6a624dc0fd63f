#include "core/fluoro/projected_outline.h"

namespace gauge::core {

Result<std::vector<Eigen::Vector2d>> projectedOutline(std::span<const PatientPoint> contour, const CArmAngles& angles,
                                                      const PlanarScale& scale, const Eigen::Vector2d& centrePixel) {
    if (contour.size() < 3)
        return failure(ErrorCode::TooFewPoints, "Cannot project the contour: it has fewer than 3 points.");
    if (const auto ok = validate(angles); !ok) return tl::unexpected(ok.error());
    if (const auto ok = validate(scale); !ok) return tl::unexpected(ok.error());
    Eigen::Vector3d middle = Eigen::Vector3d::Zero();
    for (const PatientPoint& p : contour)
        middle += p.mm;
    middle /= static_cast<double>(contour.size());
    if (!middle.allFinite() || !centrePixel.allFinite())
        return failure(ErrorCode::NonFinite, "Cannot project the contour: a coordinate is not a number.");
    const PictureAxes axes = pictureAxes(angles);
    std::vector<Eigen::Vector2d> pixels;
    pixels.reserve(contour.size());
    for (const PatientPoint& p : contour) {
        const Eigen::Vector3d off = p.mm - middle;
        // Rows run downwards.
        pixels.emplace_back(centrePixel.x() + off.dot(axes.right.mm) / scale.mmPerPixel.x(),
                            centrePixel.y() - off.dot(axes.up.mm) / scale.mmPerPixel.y());
    }
    return pixels;
}

} // namespace gauge::core
