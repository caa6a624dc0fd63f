// Velocities and times on a spectral Doppler region, and what a traced envelope says of a valve: peak and
// mean velocity, gradients, velocity-time integral. Times also on ECG and M-mode regions. Regions:
// echo_region.h.
//
//   cm/s ^
//        |    .--.        .--.      envelope: the outer edge of the spectrum, traced by the person
//    ----+---/----\------/----\---> s    baseline: velocity 0, from the region's reference pixel
//        |  |<-T ->|
//
// Velocities are those along the beam, as the scanner's own scale shows them: nothing is corrected for the
// angle between beam and flow, which makes true velocities higher by 1/cos (2 % at 11 degrees, 6 % at 20).
#pragma once

#include "core/cine/echo_region.h"
#include "core/measure/estimate.h"
#include "core/result.h"

#include <span>
#include <vector>

namespace gauge::core {

/// Standard uncertainty of a scanner's velocity and time scales, relative. Assumption.
inline constexpr double kSpectralScaleUncertainty = 0.02;

/// Velocity at a place, cm/s: positive towards the probe as the region's own scale says.
/// @errors NonFinite; RegionsMixed outside the region; ScaleMissing unless the vertical axis is cm/s with a
/// known baseline.
Result<Estimate> velocityCmPerS(const EchoRegion& region, const Eigen::Vector2d& place,
                                double endPixels = kHandSetPixels);

/// Velocity at `to` less that at `from`, cm/s; needs no baseline. @errors as above.
Result<Estimate> velocityDifferenceCmPerS(const EchoRegion& region, const Eigen::Vector2d& from,
                                          const Eigen::Vector2d& to, double endPixels = kHandSetPixels);

/// Time between two places, ms, >= 0. @errors NonFinite, RegionsMixed; ScaleMissing unless the horizontal
/// axis is s.
Result<Estimate> intervalMs(const EchoRegion& region, const Eigen::Vector2d& from, const Eigen::Vector2d& to,
                            double endPixels = kHandSetPixels);

/// Heart rate, beats a minute, from two marks at the same moment of beats that are `beats` >= 1 apart.
/// @errors those of intervalMs(); InvalidArgument below one beat, or for a rate outside 20 to 300.
Result<Estimate> heartRatePerMinute(const EchoRegion& region, const Eigen::Vector2d& from,
                                    const Eigen::Vector2d& to, int beats = 1,
                                    double endPixels = kHandSetPixels);

/// What one traced envelope says. Velocities are magnitudes; `towardsProbe` keeps their side of the baseline.
/// Gradients by the simplified Bernoulli equation, 4 v^2 with v in m/s and the result in mmHg. The mean
/// gradient is the mean of 4 v^2 over the traced time, not 4 times the square of the mean. Source:
/// [Baumgartner2017].
struct EnvelopeMeasures {
    Estimate peakCmPerS;
    Estimate meanCmPerS;
    Estimate velocityTimeIntegralCm;
    Estimate peakGradientMmHg;
    Estimate meanGradientMmHg;
    Estimate durationMs;
    bool towardsProbe = true;
    std::vector<Notice> notices;
};

/// From the points of an envelope, in the order of their times (either way), straight between them; the
/// integrals are exact for that line. Points on the other side of the baseline count as 0
/// (`envelope-crosses-baseline` beyond 5 % of the peak). Uncertainty: a hand that keeps to one side, that is
/// the whole trace shifted by `endPixels` along the velocity, and each end by as much along the time
/// (`observer`); the scanner's scales (`scale`).
/// @errors TooFewPoints below 3; NonFinite; RegionsMixed outside the region; ScaleMissing as above;
/// Degenerate when the points turn back in time, take none, or all lie on the baseline.
Result<EnvelopeMeasures> measureEnvelope(const EchoRegion& region, std::span<const Eigen::Vector2d> points,
                                         double endPixels = kHandSetPixels);

/// The mean over several beats, as is done when the rhythm is irregular (common practice, no source): each
/// value the plain mean; `observer` the larger of the beats' mean observer part and the standard error of the
/// mean between beats.
/// @errors InvalidArgument without beats, or when their flows run to different sides.
Result<EnvelopeMeasures> meanOverBeats(std::span<const EnvelopeMeasures> beats);

} // namespace gauge::core
