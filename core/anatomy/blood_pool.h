// The connected blood around two seeds: left atrium, appendage, veins.
#pragma once

#include "core/anatomy/contrast.h"
#include "core/measure/edge_profile.h"
#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/box_field.h"
#include "core/volume/volume.h"

#include <memory>
#include <vector>

namespace gauge::core {

/// Blood level where it was looked at; between, the nearest place counts.
struct LevelTrack {
    std::vector<PatientPoint> at;
    std::vector<double> hu;

    double nearestTo(const PatientPoint& p) const;
};

struct BloodPool {
    BoxField<float> hu;    ///< calmed samples of the volume
    BoxMask mask;          ///< blood connected with both seeds
    BoxField<float> depth; ///< distance to the wall, mm
    Contrast contrast;
    LevelTrack levels;     ///< from tip to atrium
    double edgeSigmaMm = 0.4; ///< first guess from the voxel size; refined from sections
    std::size_t atriumNode = 0, tipNode = 0;
    std::vector<std::size_t> way; ///< nodes from the tip seed to the atrium seed, through the middle
    bool touchesBoxFace = false;

    /// What a section at `p` should expect.
    SectionGuide guideAt(const PatientPoint& p) const;
};

/// @param marginMm  how far around the seeds blood is looked for.
/// @errors those of estimateContrast; SeedsNotConnected; Cancelled.
Result<BloodPool> findBloodPool(const Volume& volume, const PatientPoint& atrium, const PatientPoint& tip,
                                double marginMm, const WorkContext& work);

} // namespace gauge::core
