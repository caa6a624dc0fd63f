#include "core/access/seat_shadow.h"

#include "core/geometry/planar_contour.h"

namespace gauge::core {

Result<std::vector<std::vector<Eigen::Vector2d>>> shadowsOf(const SeatedBody& seated, const PatientPoint& anchor,
                                                            const CArmAngles& angles, const PlanarScale& scale,
                                                            const Eigen::Vector2d& anchorPixel, const PatientTurn& turn) {
    if (const auto ok = validate(turn); !ok) return tl::unexpected(ok.error());
    if (const auto ok = validate(angles); !ok) return tl::unexpected(ok.error());
    if (const auto ok = validate(scale); !ok) return tl::unexpected(ok.error());
    if (!anchor.mm.allFinite() || !anchorPixel.allFinite())
        return failure(ErrorCode::NonFinite, "Cannot project the size: a coordinate is not a number.");
    const PictureAxes axes = pictureAxes(angles);
    const Eigen::Matrix3d room = roomFromPatient(turn);
    SeatedBody bare = seated;
    bare.disc.reset();
    std::vector<SurfaceMesh> solids{seatedMesh(bare)};
    if (seated.disc) {
        const SeatedBody::Disc disc = *seated.disc;
        bare.body = {{disc.tMm - SeatedBody::Disc::kDiscMm, disc.radiusMm}, {disc.tMm, disc.radiusMm}};
        solids.push_back(seatedMesh(bare));
    }
    std::vector<std::vector<Eigen::Vector2d>> shadows;
    for (const SurfaceMesh& solid : solids) {
        std::vector<Eigen::Vector2d> pixels;
        for (std::size_t i = 0; i < solid.points.size(); ++i) {
            const Eigen::Vector3d off = room * (solid.point(i).mm - anchor.mm);
            // Rows run downwards.
            pixels.emplace_back(anchorPixel.x() + off.dot(axes.right.mm) / scale.mmPerPixel.x(),
                                anchorPixel.y() - off.dot(axes.up.mm) / scale.mmPerPixel.y());
        }
        shadows.push_back(convexHull(pixels));
    }
    return shadows;
}

} // namespace gauge::core
