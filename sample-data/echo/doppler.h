// A spectral Doppler still of the inflow through the mitral valve, whose mean gradient is known.
//
//   velocity (cm/s)  0 ---+       +-----+       +---   baseline; flow away from the probe lies below it, negative
//                         |     .'      |     .'
//                         |   .'        |   .'       each beat's envelope: `velocityAt`
//                         '..'          '..'
#pragma once

#include "sample-data/echo/ecg.h"
#include "sample-data/picture/picture.h"

#include <cstdint>
#include <vector>

namespace gauge::sample_case {

/// Flow of one diastole.
struct InflowBeat {
    double startMs = 0.0, endMs = 0.0;
    double peakMPerS = 1.5;
};

struct DopplerStill {
    int columns = 640, rows = 480;
    int x0 = 40, y0 = 60, x1 = 599, y1 = 424; ///< of the spectrum, corners included
    int baselineY = 120;
    double secondsPerPixel = 0.004; ///< the left edge's pixel centre is time 0
    double cmPerSPerPixel = 0.6;    ///< downwards, away from the probe
    EcgStrip ecg;
    std::vector<double> rWavesMs;
    std::vector<InflowBeat> beats; ///< the first may have begun before the picture does
    std::uint64_t seed = 1;

    Picture draw() const;
};

/// Speed of the envelope, m/s, 0 outside the beat: a quick rise, a straight fall, a quick end (no A wave in
/// fibrillation).
double velocityAt(const InflowBeat& beat, double ms);
/// Time mean over the beat's flow of 4 v^2 (simplified Bernoulli equation), mmHg.
double meanGradientMmHg(const InflowBeat& beat);
/// Velocity-time integral, cm.
double velocityTimeIntegralCm(const InflowBeat& beat);

} // namespace gauge::sample_case
