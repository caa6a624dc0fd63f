// The posterior against brute force, over random patients of the model.
#include "tests/core/pressure/brute_force.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <gtest/gtest.h>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr Quantity kQuantity = Quantity::LandingZonePerimeterDerivedDiameter;
// The goal: quantiles within 2 % of the SD.
constexpr double kQuantileTolerance = 0.02;
// Counting leaves sqrt(p (1 - p) / 160,000) = 0.00125; four of those, and the code's own error below it.
constexpr double kJointTolerance = 0.006;

bool isLong() { return std::getenv("GAUGE_LONG") != nullptr; }

struct Worst {
    double quantile = 0.0, mean = 0.0, sd = 0.0, joint = 0.0, slope = 0.0;
    int beyond = 0, compared = 0;
};

bool contradicts(const SimulatedPatient& patient) {
    const auto made =
        posterior(patient.readings, kQuantity, Pressure::fromMmHg(patient.decisionMmHg), patient.law, {}, {1024});
    return made && std::any_of(made->notices().begin(), made->notices().end(),
                               [](const Notice& n) { return n.code == "readings-contradict"; });
}

void compare(const SimulatedPatient& patient, int number, Worst& worst) {
    const Priors priors;
    const auto made =
        posterior(patient.readings, kQuantity, Pressure::fromMmHg(patient.decisionMmHg), patient.law, priors);
    ASSERT_TRUE(made) << made.error().message;
    const double pressures[] = {6.0, 19.0, number % 2 ? 23.0 : patient.decisionMmHg};
    const double chances[] = {0.025, 0.5, 0.975};
    std::vector<std::vector<double>> places;
    for (const double p : pressures) {
        const auto d = made->diameter(p);
        places.push_back({d.quantile(chances[0]), d.quantile(chances[1]), d.quantile(chances[2])});
    }
    const Box low{places[0][1] - 1.5, places[0][1] + 1.0}, high{places[1][1] - 1.0, places[1][1] + 2.0};
    BruteForceOptions options;
    options.seed = 1000u + static_cast<unsigned>(number);
    const auto truth =
        bruteForce(patient.readings, patient.decisionMmHg, patient.law, priors, pressures, places, low, high, options);
    EXPECT_GE(truth.effectiveDraws, options.effectiveDraws) << "case " << number;
    EXPECT_LE(truth.quantileError, options.quantileError) << "case " << number;
    for (std::size_t j = 0; j < std::size(pressures); ++j) {
        const auto at = made->diameter(pressures[j]);
        for (std::size_t q = 0; q < std::size(chances); ++q) {
            const double off = (truth.cdf[j][q] - chances[q]) / truth.density[j][q] / truth.sd[j];
            EXPECT_LT(std::abs(off), kQuantileTolerance + 2.0 * truth.quantileError) // brute force is uncertain itself
                << "case " << number << ", " << patient.readings.size() << " readings, " << pressures[j]
                << " mmHg, quantile " << chances[q];
            worst.quantile = std::max(worst.quantile, std::abs(off));
            worst.beyond += std::abs(off) > kQuantileTolerance;
            ++worst.compared;
        }
        worst.mean = std::max(worst.mean, std::abs(at.mean() - truth.mean[j]) / truth.sd[j]);
        worst.sd = std::max(worst.sd, std::abs(at.sd() / truth.sd[j] - 1.0));
    }
    const double joint = made->probabilityBothWithin(pressures[0], low.lowest, low.highest, pressures[1], high.lowest,
                                                     high.highest);
    EXPECT_NEAR(joint, truth.joint, kJointTolerance) << "case " << number;
    worst.joint = std::max(worst.joint, std::abs(joint - truth.joint));
    EXPECT_NEAR(made->slope().meanMmPerMmHg, truth.slopeMean, kQuantileTolerance * truth.slopeSd) << "case " << number;
    EXPECT_NEAR(made->slope().sdMmPerMmHg, truth.slopeSd, kQuantileTolerance * truth.slopeSd) << "case " << number;
    worst.slope = std::max(worst.slope, std::abs(made->slope().meanMmPerMmHg - truth.slopeMean) / truth.slopeSd);
}

} // namespace

// In the long form 200 cases, by GAUGE_LONG=1; the short one is for every day.
TEST(Posterior, QuantilesEqualBruteForceWithinTwoPercentOfTheSd) {
    std::mt19937_64 random(20260101);
    Worst worst;
    const int cases = isLong() ? 200 : 8;
    for (int i = 0; i < cases; ++i) {
        // Readings that contradict each other leave a brute force from the priors too few draws to judge by.
        SimulatedPatient patient = simulatePatient(random, {});
        while (contradicts(patient))
            patient = simulatePatient(random, {});
        compare(patient, i, worst);
        if (isLong()) std::fprintf(stderr, "case %d: worst quantile %.4f, beyond %d\n", i, worst.quantile, worst.beyond);
    }
    std::printf("%d cases; worst: quantile %.4f SD, mean %.4f SD, SD %.4f of itself, joint chance %.4f, slope %.4f SD; %d of %d quantiles beyond 0.02\n",
                cases, worst.quantile, worst.mean, worst.sd, worst.joint, worst.slope, worst.beyond, worst.compared);
}
