#include "sample-data/scene/parts.h"

#include "sample-data/scene/ridge.h"

namespace gauge::sample_case {

Mouth mouthOf(const Ellipsoid& atrium, const Eigen::Vector3d& outward, const Eigen::Vector3d& towardsVein) {
    Mouth mouth;
    mouth.outward = outward.normalized();
    mouth.point = atrium.surfacePoint(mouth.outward);
    mouth.towardsVein = (towardsVein - towardsVein.dot(mouth.outward) * mouth.outward).normalized();
    mouth.alongRidge = mouth.outward.cross(mouth.towardsVein);
    return mouth;
}

Tube straightVessel(const Eigen::Vector3d& through, const Eigen::Vector3d& direction, double radiusMm,
                    double halfMm) {
    const Eigen::Vector3d d = direction.normalized();
    Tube tube;
    tube.curve = CentreCurve(through - halfMm * d, d, d.unitOrthogonal(), 0.0, {{2.0 * halfMm, 0.0, 0.0}});
    tube.semiA = tube.semiB = radiusMm;
    tube.baseCapMm = tube.tipCapMm = radiusMm;
    return tube;
}

Tube branchOf(const CentreCurve& trunk, double s, double towardsRad, double angleRad, double lengthMm) {
    const CentreCurve::Frame frame = trunk.at(s);
    const Eigen::Vector3d side = std::cos(towardsRad) * frame.normal + std::sin(towardsRad) * frame.binormal;
    Tube branch;
    branch.curve = CentreCurve(frame.point, std::cos(angleRad) * frame.tangent + std::sin(angleRad) * side,
                               frame.tangent, 0.0, {{lengthMm, 0.0, 0.0}});
    return branch;
}

Eigen::Vector3d addPassingArtery(Scene& scene, const Mouth& mouth, const PassingArtery& artery) {
    constexpr double kHalfLengthMm = 34.0;
    const Eigen::Vector3d away =
        -std::cos(artery.turnedRad) * mouth.towardsVein + std::sin(artery.turnedRad) * mouth.alongRidge;
    const Eigen::Vector3d along = (mouth.outward.cross(away) - artery.tilt * away).normalized();
    const double keepOff = scene.wallMm + artery.wallMm;
    const Eigen::Vector3d centre = placeClearOfPool(scene, mouth.point + artery.s * mouth.outward, away,
                                                    keepOff + artery.radiusMm + artery.gapMm);
    scene.cavities.push_back({"circumflex artery",
                              straightVessel(centre, along, artery.radiusMm, kHalfLengthMm), artery.hu,
                              artery.wallMm, keepOff, true});
    return centre;
}

} // namespace gauge::sample_case
