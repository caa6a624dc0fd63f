// What a chart asks of the readings at hand: its number by three-dimensional imaging where one of them
// answers that, otherwise its number by two-dimensional imaging. The two are never mixed.
#pragma once

#include "core/pressure/posterior.h"
#include "core/sizing/device_chart.h"

#include <span>

namespace gauge::core {

/// The question in the terms of core/pressure.
struct ChartQuestion {
    Quantity quantity = Quantity::LandingZonePerimeterDerivedDiameter;
    Derivation derivation = Derivation::Contour;
    bool by2d = false; ///< the chart's number by two-dimensional imaging
    PressureLaw law = PressureLaw::Logarithmic;
    Pressure decisionPressure = Pressure::fromMmHg(12.0);
    Priors priors;

    /// A reading as it enters this question; none when it cannot answer it. Only where the largest of the
    /// views is the very number asked for it stands for itself, without a bias.
    std::optional<Observation> asAsked(const Observation& reading) const;
};

/// The question, what the readings answer, and the weight of each.
struct ChartAnswer {
    ChartQuestion question;
    Posterior posterior;
    std::vector<ReadingWeight>
        weights; ///< one per reading, in their order, the reason where one does not count
};

/// @errors NothingToSize when no reading answers the chart: the message lists what each reading is and what
/// is asked; ObservationsInvalid and InvalidArgument as the model says.
Result<ChartAnswer> answerChart(const DeviceChart& chart, std::span<const Observation> readings,
                                PressureLaw law, Pressure decisionPressure, const Priors& priors,
                                const PosteriorOptions& options);

/// The same question put to other readings of the patient: what simulating a further reading needs.
Result<Posterior> answerAgain(const ChartQuestion& question, std::span<const Observation> readings,
                              const PosteriorOptions& options);

} // namespace gauge::core
