// How bright blood and wall are in this scan, and how much noise there is: estimated from the data around the seeds,
// no fixed threshold.
#pragma once

#include "core/result.h"
#include "core/volume/box_field.h"
#include "core/volume/volume.h"

namespace gauge::core {

struct Contrast {
    double atriumHu = 0.0; ///< blood around the atrium seed
    double tipHu = 0.0;    ///< blood around the tip seed
    double wallHu = 0.0;   ///< soft tissue around the pool
    double wallSdHu = 30.0; ///< how far a wall may lie from that
    double noiseHu = 0.0;  ///< standard deviation of a voxel in blood
    /// Power of the noise along a line at long waves, HU2 mm (see measure/edge_profile.h).
    double noiseLineDensity = 0.0;
};

/// Median of the voxels within `radiusMm` of a point. Precondition: the volume contains the point.
double medianAround(const Volume& volume, const PatientPoint& p, double radiusMm);

/// Looks at both seeds and at the tissue of the box around them.
/// @param box  samples of the volume around the seeds (kOutsideVolume outside)
/// @errors SeedOutsideVolume; SeedNotInBlood for a seed in air, fat or wall; ContrastPoor where blood cannot be told
/// from tissue or the appendage is not filled. The message says which seed, its value and what to do.
Result<Contrast> estimateContrast(const Volume& volume, const BoxField<float>& box, const PatientPoint& atrium,
                                  const PatientPoint& tip);

} // namespace gauge::core
