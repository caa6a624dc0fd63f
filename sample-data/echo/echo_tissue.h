// How bright each tissue is to ultrasound, and how it weakens the beam.
#pragma once

#include "sample-data/scene/scene.h"

namespace gauge::sample_case {

/// Mean grey before speckle, on the scale of an 8-bit picture. A boundary crosses the value halfway between its two
/// sides at its true place.
struct EchoLevels {
    double blood = 9.0;
    double muscle = 108.0;
    double fat = 78.0;
    double softTissue = 88.0;
    double lung = 165.0;
    double bone = 190.0;
};

struct EchoTissue {
    float grey = 0.0f;
    float lossPerMm = 0.0f; ///< of the beam's grey beyond it: lung and bone throw shadows
    float edge = 0.0f; ///< distance outside the nearest blood, mm; negative in blood
};

/// @param rampMm  width over which a boundary is averaged: a pixel.
EchoTissue echoTissue(const Scene& scene, const SceneSampler::Sample& sample, const EchoLevels& levels,
                      double rampMm);

/// The same heart with brightnesses for ultrasound in place of Hounsfield units, for `rasterise`.
Scene echoScene(const Scene& scene, const EchoLevels& levels);

} // namespace gauge::sample_case
