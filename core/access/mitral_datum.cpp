#include "core/access/mitral_datum.h"

#include "core/number_text.h"

#include <cmath>
#include <string>

namespace gauge::core {
namespace {

constexpr double kLeastHeightMm = 1.0;

Result<Coaptation> coaptationOf(std::span<const PatientPoint> points, const Plane& annulus) {
    Coaptation level;
    level.count = points.size();
    Eigen::Vector3d sum = Eigen::Vector3d::Zero();
    for (const PatientPoint& point : points) {
        if (!point.mm.allFinite())
            return failure(ErrorCode::NonFinite, "Cannot find the level at which the leaflets meet: a marked point is not a finite number.");
        sum += point.mm;
    }
    level.middle = {sum / static_cast<double>(points.size())};
    const double middle = signedDistanceMm(annulus, level.middle);
    double squares = 0.0;
    for (const PatientPoint& point : points)
        squares += std::pow(signedDistanceMm(annulus, point) - middle, 2);
    level.spreadMm = std::sqrt(squares / static_cast<double>(points.size()));
    level.belowAnnulusMm = -middle;
    return level;
}

} // namespace

Result<MitralDatum> mitralDatum(std::span<const PatientPoint> annulus, std::span<const PatientPoint> coaptation,
                                const PatientPoint& atriumSide) {
    auto fit = fitPlane(annulus, "the mitral annulus", {kLeastAnnulusSpreadMm});
    if (!fit) return tl::unexpected(fit.error());
    const double side = signedDistanceMm(fit->plane, atriumSide);
    if (!(std::abs(side) >= kLeastHeightMm))
        return failure(ErrorCode::Degenerate,
                       "Cannot tell the atrium's side of the mitral annulus: the fossa lies in the plane of the annulus (" +
                           fixed(std::abs(side), 1) + " mm from it). Check which points are marked as annulus and which as fossa.");
    if (side < 0.0) fit->plane.normal = -fit->plane.normal;
    MitralDatum datum{*fit, annulus.size(), std::nullopt};
    if (coaptation.empty()) return datum;
    auto level = coaptationOf(coaptation, datum.annulus.plane);
    if (!level) return tl::unexpected(level.error());
    datum.coaptation = *level;
    return datum;
}

} // namespace gauge::core
