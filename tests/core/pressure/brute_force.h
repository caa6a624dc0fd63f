// The posterior of the pressure model by plain weighted Monte Carlo, written apart from the code under test: unknown slope,
// v wave share, pressures, phases and departures are drawn from their priors; each draw is weighted by the density of
// the readings in covariance form, D* and the biases integrated out as in generalised least squares.
#pragma once

#include "core/pressure/posterior.h"

#include <random>
#include <span>
#include <vector>

namespace gauge::test {

struct BruteForceOptions {
    double effectiveDraws = 160000.0; ///< drawn until 1 / sum of squared weights reaches this
    double quantileError = 0.005;     ///< and until its own standard error of every quantile is below this, in SDs
    long mostDraws = 80'000'000;
    unsigned seed = 1;
};

/// Weighted tail chances and moments of D at each asked pressure.
struct BruteForceAnswer {
    double effectiveDraws = 0.0;
    double quantileError = 0.0; ///< largest standard error of a quantile, in SDs
    /// by pressure
    std::vector<double> mean, sd;
    /// by pressure and place: P(D <= place) and the density there
    std::vector<std::vector<double>> cdf, density;
    double slopeMean = 0.0, slopeSd = 0.0;
    /// P(D at the first asked pressure within box1 and D at the second within box2), by simple counting.
    double joint = 0.0;
};

struct Box {
    double lowest, highest;
};

/// @param places  by pressure: where cdf and density are wanted.
BruteForceAnswer bruteForce(std::span<const core::Observation>, double decisionMmHg, core::PressureLaw,
                            const core::Priors&, std::span<const double> pressuresMmHg,
                            const std::vector<std::vector<double>>& places, Box box1, Box box2,
                            const BruteForceOptions&);

/// One random patient of the model and readings of them.
struct SimulatedPatient {
    std::vector<core::Observation> readings;
    double decisionMmHg = 12.0;
    core::PressureLaw law = core::PressureLaw::Logarithmic;
    double baseMm = 0.0;  ///< D at the decision pressure
    double slope = 0.0;
    double diameterAt(double mmHg) const; ///< inside the valid range
};

struct PatientOptions {
    int mostReadings = 5;
    bool insideRangeOnly = false; ///< decision pressure within 8 to 16 mmHg, so that diameterAt is the truth there
};

SimulatedPatient simulatePatient(std::mt19937_64&, const core::Priors&, const PatientOptions& = {});

} // namespace gauge::test
