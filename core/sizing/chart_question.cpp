#include "core/sizing/chart_question.h"

#include <algorithm>

namespace gauge::core {
namespace {

constexpr Modality kModalities[] = {Modality::Ct, Modality::Echo2d, Modality::Echo3d, Modality::Fluoroscopy};

ChartQuestion questionOf(const InstructedQuantity& asked, bool by2d, PressureLaw law, Pressure decision,
                         const Priors& priors) {
    ChartQuestion q{asked.quantity, asked.derivation, by2d, law, decision, priors};
    if (asked.derivation != Derivation::LargestOfViews) return q;
    auto& biases = q.priors.biases;
    std::erase_if(biases, [](const BiasPrior& b) { return b.derivation == Derivation::LargestOfViews; });
    for (const Modality modality : kModalities)
        biases.push_back(
            {modality,
             Derivation::LargestOfViews,
             {0.0, 0.0, Basis::CommonPractice, "the chart's bands are about this very reading"}});
    return q;
}

/// Puts the readings that can answer to the model and hands the weights back in the readings' own order.
Result<ChartAnswer> answerTo(const ChartQuestion& question, std::span<const Observation> readings,
                             const PosteriorOptions& options) {
    std::vector<Observation> put;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const auto asked = question.asAsked(readings[i]);
        if (!asked) continue;
        put.push_back(*asked);
        places.push_back(i);
    }
    if (put.empty()) return failure(ErrorCode::NothingUsable, "no reading is what the chart asks for");
    auto posterior = core::posterior(put, question.quantity, question.decisionPressure, question.law,
                                     question.priors, options);
    if (!posterior) return tl::make_unexpected(posterior.error());
    std::vector<ReadingWeight> weights(readings.size());
    for (ReadingWeight& weight : weights)
        weight.reason = "The chart's reading by two-dimensional imaging is the " +
                        std::string(plainName(question.derivation)) + "; this one is not.";
    for (std::size_t i = 0; i < places.size(); ++i)
        weights[places[i]] = posterior->weights()[i];
    return ChartAnswer{question, std::move(*posterior), std::move(weights)};
}

std::string listed(std::span<const Observation> readings) {
    std::string text;
    for (const Observation& o : readings)
        text += (text.empty() ? "" : "; ") + std::string(plainName(o.quantity)) + " by " +
                std::string(plainName(o.modality)) + " (" + std::string(plainName(o.derivation)) + ", " +
                std::string(plainName(o.stage)) + ")";
    return text.empty() ? "none" : text;
}

tl::unexpected<Error> nothing(const DeviceChart& chart, std::span<const Observation> readings, Error cause) {
    const InstructedReading& r = chart.reading;
    return failure(ErrorCode::NothingToSize,
                   "Cannot judge the sizes of \"" + chart.name +
                       "\": none of the readings is what it asks for (" +
                       std::string(plainName(r.by3d.quantity)) + " by CT or 3D echo, or " +
                       std::string(plainName(r.by2d.quantity)) + " by 2D echo or fluoroscopy as " +
                       std::string(plainName(r.by2d.derivation)) + "). Found: " + listed(readings) +
                       ". Measure one of these, or load the chart that fits the readings.",
                   std::move(cause));
}

} // namespace

std::optional<Observation> ChartQuestion::asAsked(const Observation& reading) const {
    if (derivation != Derivation::LargestOfViews) return reading;
    if (reading.quantity != quantity || reading.derivation != Derivation::LargestOfViews) return std::nullopt;
    Observation asked = reading;
    asked.contourPerView = 1.0;
    return asked;
}

Result<Posterior> answerAgain(const ChartQuestion& question, std::span<const Observation> readings,
                              const PosteriorOptions& options) {
    std::vector<Observation> put;
    for (const Observation& reading : readings)
        if (auto asked = question.asAsked(reading)) put.push_back(std::move(*asked));
    return posterior(put, question.quantity, question.decisionPressure, question.law, question.priors,
                     options);
}

Result<ChartAnswer> answerChart(const DeviceChart& chart, std::span<const Observation> readings,
                                PressureLaw law, Pressure decisionPressure, const Priors& priors,
                                const PosteriorOptions& options) {
    auto answer =
        answerTo(questionOf(chart.reading.by3d, false, law, decisionPressure, priors), readings, options);
    if (!answer && answer.error().code == ErrorCode::NothingUsable)
        answer =
            answerTo(questionOf(chart.reading.by2d, true, law, decisionPressure, priors), readings, options);
    if (answer) return answer;
    if (answer.error().code == ErrorCode::NothingUsable) return nothing(chart, readings, answer.error());
    if (answer.error().code == ErrorCode::NonFinite || answer.error().code == ErrorCode::InvalidArgument)
        return failure(ErrorCode::ObservationsInvalid, answer.error().message, answer.error());
    return answer;
}

} // namespace gauge::core
