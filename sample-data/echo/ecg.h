// The electrocardiogram that runs along a picture: atrial fibrillation, no P waves, QRS and T at stated R waves.
#pragma once

#include "sample-data/picture/picture.h"

#include <optional>
#include <vector>

namespace gauge::sample_case {

/// Height of the trace, R waves about 1. @param rWavesMs  ascending.
double ecgAt(double ms, const std::vector<double>& rWavesMs);

/// A strip of the picture with time along x; corners included, in pixels.
struct EcgStrip {
    int x0 = 40, y0 = 444, x1 = 599, y1 = 476;
    double secondsPerPixel = 0.002; ///< the left edge's pixel centre is time 0
    int baselineY() const { return y1 - (y1 - y0) / 4; }
    double pixelOf(double ms) const { return x0 + ms / 1000.0 / secondsPerPixel; }
};

/// @param cursorMs  where the frame stands; nullopt: no cursor.
void drawEcg(Picture& picture, const EcgStrip& strip, const std::vector<double>& rWavesMs,
             std::optional<double> cursorMs, Colour colour);

} // namespace gauge::sample_case
