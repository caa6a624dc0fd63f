// Parts from which hearts are put together; used by the phantoms and by the sample case alike.
#pragma once

#include "sample-data/scene/scene.h"

namespace gauge::sample_case {

/// The frame in which the left side of the heart is built: where the appendage leaves the atrium.
struct Mouth {
    Eigen::Vector3d point;       ///< on the atrium's surface, where lobe 0's axis crosses it (s = 0)
    Eigen::Vector3d outward;     ///< lobe 0's direction, normal to the surface
    Eigen::Vector3d towardsVein; ///< perpendicular to it
    Eigen::Vector3d alongRidge;  ///< perpendicular to both: outward x towardsVein
};

/// @param outward, towardsVein  directions seen from the atrium's centre, of any length, not parallel.
Mouth mouthOf(const Ellipsoid& atrium, const Eigen::Vector3d& outward, const Eigen::Vector3d& towardsVein);

/// A round tube through a point, `halfMm` to either side of it.
Tube straightVessel(const Eigen::Vector3d& through, const Eigen::Vector3d& direction, double radiusMm,
                    double halfMm);

/// A straight tube that leaves a centre line at `s`: `towardsRad` from the frame's normal to its binormal,
/// `angleRad` away from the tangent. Widths and caps are left to the caller.
Tube branchOf(const CentreCurve& trunk, double s, double towardsRad, double angleRad, double lengthMm);

/// The circumflex artery where it passes the ostium.
struct PassingArtery {
    double s = 2.0;         ///< height over the atrium's surface, along the mouth's direction, mm
    double turnedRad = 0.0; ///< away from the side opposite to the vein
    double tilt = 0.0;      ///< slope of its course towards the atrium, -0.25 to 0.25
    double gapMm = 0.8;     ///< between its wall and the atrium's
    double radiusMm = 1.6;
    double wallMm = 0.6;
    double hu = 350.0;
};

/// Adds it to the scene's cavities. Call before other cavities are added: they keep off it.
/// @return the centre of its lumen where it passes.
Eigen::Vector3d addPassingArtery(Scene& scene, const Mouth& mouth, const PassingArtery& artery);

} // namespace gauge::sample_case
