// X-ray pictures of a scene: exponentials of line integrals along the rays of a pinhole camera, with contrast medium in
// the appendage, a catheter, quantum noise and blur.
#pragma once

#include "sample-data/fluoro/catheter.h"
#include "sample-data/picture/picture.h"
#include "sample-data/scene/scene.h"

#include <cstdint>
#include <vector>

namespace gauge::sample_case {

struct RadiographOptions {
    double waterPerMm = 0.019;    ///< attenuation of soft tissue
    double contrastPerMm = 0.070; ///< added by undiluted contrast medium
    double catheterPerMm = 0.28;  ///< of the catheter
    /// Greys follow the logarithm of the light, as detectors' pictures are shown.
    double brightestGrey = 238.0; ///< of the clearest part of the run
    double greyPerUnit = 52.0;    ///< for a factor e of light
    double scatterShare = 0.006;  ///< even light from scatter, of that of the clearest part
    double photons = 1500.0;      ///< in a pixel of the clearest part
    double blurPixels = 0.55;     ///< SD of the detector's blur
    std::uint64_t seed = 1;
};

/// One line integral a pixel.
using LineIntegrals = std::vector<float>;

/// Attenuation of everything but contrast medium and catheter. Worked out on every eighth pixel and joined linearly:
/// for the grey behind, not for edges.
LineIntegrals backgroundIntegrals(const Scene& scene, const CArm& arm, const RadiographOptions& options);

/// Length of contrast-filled appendage along each ray, mm, in scene mm of undiluted medium: full from the mouth on,
/// fading over 12 mm into the atrium. Accuracy: 0.05 mm of length; the silhouette within a tenth of a pixel.
LineIntegrals contrastLengths(const Scene& scene, const CArm& arm);

/// Length of catheter along each ray, mm.
LineIntegrals catheterLengths(const Catheter& catheter, const CArm& arm);

/// One frame. @param filling  0: no contrast medium yet, 1: the appendage is full.
/// The same arguments give the same picture.
Picture exposeFrame(const LineIntegrals& background, const LineIntegrals& contrast, const LineIntegrals& catheter,
                    double filling, const CArm& arm, const RadiographOptions& options, int frame);

} // namespace gauge::sample_case
