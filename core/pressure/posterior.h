// The model of filling pressure: readings of one patient at several pressures, by several modalities, become one
// distribution of the diameter at any pressure.
//
//   y_i = D(p_i) + b_i + e_i      e_i ~ N(0, u_i)
//   D(p) = D* + k t(p)            t: pressureTerm against the decision pressure (pressure_law.h)
//   p_i = M_s + w (v - M_s)       w = 0 outside end-systole; one w ~ U(0, 1) for the patient; p_i >= 3 mmHg
//
// D*: no prior knowledge. k >= 0: normal, cut at 0. b_i: normal, one value for all readings of the same modality and
// derivation, 0 for a CT contour. M_s: one value for all readings of a state, measured with its uncertainty or from
// the prior of its condition. A reading of unknown phase with a v wave was at end-systole with chance one half, the
// same for all such readings of a state. Priors: priors.h.
//
// Outside the valid range D(p) departs from the law by an independent normal error, one for the low side and one for
// the high, whose SD makes that of the pressure term `wideningFactor` times as large (with the SD that k has before
// any reading: what is learnt inside the range says nothing about the shape outside). The term counts from the
// decision pressure, or, where that itself lies outside, from the mean pressure of the readings.
//
// Method: w, the M_s and k's place within its conditional distribution are integrated by a low-discrepancy point
// set, all else in closed form; every answer comes from the resulting mixture of normal distributions. The same
// input always gives the same bits. With the default number of points quantiles are within 2 % of the SD of brute force
// (tests/core/pressure). Source: model and defaults are this project's own (DEVELOPERS.md, Filling pressure).
#pragma once

#include "core/pressure/gaussian_mixture.h"
#include "core/pressure/observation.h"
#include "core/pressure/pressure_law.h"
#include "core/pressure/priors.h"
#include "core/result.h"
#include "core/units/pressure.h"

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace gauge::core {

/// Effort of the integration.
struct PosteriorOptions {
    /// Points of the integration, 64 to 2^18, rounded up to a power of 2. Many calls in a row (what to do next) do with 1024: tails are then right to a tenth of an SD, and errors of
    /// like calls cancel.
    /// Raised by itself, up to 16 times but not over 2^18, where the readings leave few points in play.
    int points = 32768;
};

/// The diameter at one pressure, mm.
struct DiameterAt {
    double pressureMmHg = 0.0;
    double medianMm = 0.0;
    double meanMm = 0.0;
    double sdMm = 0.0;
    double lower95Mm = 0.0;
    double upper95Mm = 0.0;
    bool extrapolated = false; ///< outside the valid range of pressures
};

/// What one reading contributes to D*.
struct ReadingWeight {
    double weight = 0.0;      ///< share in the answer, 0 to 1; all add to 1
    double sensitivity = 0.0; ///< mm of the answer per mm of the reading; all add to 1, one may be below 0
    std::string reason;       ///< why the weight is 0: a sentence; else empty
    /// Reading minus what all readings together say it should have been, mm; none where the reading does not count.
    std::optional<double> residualMm;
};

struct SlopeEstimate {
    double meanMmPerMmHg = 0.0;
    double sdMmPerMmHg = 0.0;
    /// 1 - variance / variance before any reading, 0 to 1: how much of k is the patient's own.
    double patientShare = 0.0;
};

/// Mean pressure of a state as the readings leave it, mmHg.
struct StatePressure {
    std::string state;
    double meanMmHg = 0.0;
    double sdMmHg = 0.0;
    bool measured = false;
};

/// A reading not yet made. Where `state` names a state of the observations, its pressure (known or not) is that
/// state's; else `pressureMmHg` is taken as the distending pressure, exactly.
struct FurtherReading {
    Modality modality = Modality::Echo2d;
    Derivation derivation = Derivation::EllipseFromAngles;
    std::string state;
    Phase phase = Phase::Other; ///< used with `state`
    std::optional<double> pressureMmHg;
    std::optional<double> standardUncertaintyMm; ///< absent: the modality's default
};

/// One equally likely state of the world, for simulation.
struct PatientDraw {
    std::vector<double> diametersMm;   ///< at the pressures asked for, in that order
    double slopeMmPerMmHg = 0.0;
    double vWaveShare = 0.0;
    std::vector<double> meanPressuresMmHg; ///< of the states, in the order of Posterior::states
    std::vector<double> readingsMm;        ///< of the further readings asked for, with their errors
};

/// A value; copies share what was computed. Pressures below 3 mmHg count as 3.
class Posterior {
public:
    Quantity quantity() const;
    double decisionPressureMmHg() const;
    PressureLaw law() const;

    DiameterAt at(double pressureMmHg) const;
    /// The diameter at that pressure as a mixture: cdf, quantile, probabilityWithin, mean, sd.
    GaussianMixture diameter(double pressureMmHg) const;
    double probabilityWithin(double pressureMmHg, double lowestMm, double highestMm) const;
    /// P(lowest1 <= D(pressure1) <= highest1 and lowest2 <= D(pressure2) <= highest2), jointly. Bounds may be infinite.
    double probabilityBothWithin(double pressure1MmHg, double lowest1Mm, double highest1Mm,
                                 double pressure2MmHg, double lowest2Mm, double highest2Mm) const;

    SlopeEstimate slope() const;
    /// One per observation, in their order.
    const std::vector<ReadingWeight>& weights() const;
    const std::vector<StatePressure>& states() const;
    /// Codes: listed in DEVELOPERS.md.
    const std::vector<Notice>& notices() const;

    /// Distribution of a reading not yet made.
    /// @errors NotFound for a state that no counted reading has; InvalidArgument where neither state nor pressure is given.
    Result<GaussianMixture> predictive(const FurtherReading&) const;

    /// `count` draws, equally likely, the same for the same seed; spread evenly, so that a few hundred stand for the
    /// whole. @errors as predictive.
    Result<std::vector<PatientDraw>> draws(std::span<const double> pressuresMmHg, std::span<const FurtherReading>,
                                           int count, std::uint32_t seed = 1) const;

    /// How many of the integration's points carry the answer (1 / sum of squared weights).
    double effectivePoints() const;

    struct Content;
    explicit Posterior(std::shared_ptr<const Content>);

private:
    std::shared_ptr<const Content> m_content;
};

/// Carries the readings to the decision pressure. Readings of another quantity, of a view without `contourPerView`, and of
/// stages with an implant in the appendage are kept with weight 0 and the reason.
/// @errors NothingUsable when no reading counts; InvalidArgument (value not above 0, state empty, one state with two
/// pressures, v waves or conditions, decision pressure under 3 mmHg), NonFinite; what validate(priors) says.
Result<Posterior> posterior(std::span<const Observation>, Quantity, Pressure decisionPressure, PressureLaw,
                            const Priors& = {}, const PosteriorOptions& = {});

} // namespace gauge::core
