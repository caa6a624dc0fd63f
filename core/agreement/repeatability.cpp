#include "core/agreement/repeatability.h"

#include "core/agreement/quantiles.h"

#include <cmath>
#include <numbers>
#include <string>

namespace gauge::core {

namespace {

constexpr double kTwoSided95 = 1.959963984540054;

} // namespace

Result<Repeatability> repeatability(const std::vector<std::vector<double>>& readings, double confidence) {
    if (!(confidence > 0.0 && confidence < 1.0))
        return failure(ErrorCode::InvalidArgument, "Cannot give repeatability: a confidence must lie between 0 and 1.");
    Repeatability out;
    double squares = 0.0;
    for (const auto& subject : readings) {
        if (subject.size() < 2) continue;
        double mean = 0.0;
        for (const double x : subject) {
            if (!std::isfinite(x))
                return failure(ErrorCode::NonFinite, "Cannot give repeatability: a reading is no finite number.");
            mean += x / static_cast<double>(subject.size());
        }
        for (const double x : subject)
            squares += (x - mean) * (x - mean);
        ++out.subjects;
        out.degrees += static_cast<double>(subject.size()) - 1.0;
    }
    if (out.subjects == 0)
        return failure(ErrorCode::TooFewPoints, "Cannot give repeatability: none of the " +
                                                    std::to_string(readings.size()) + " subjects was read twice.");
    out.withinSubjectSd = std::sqrt(squares / out.degrees);
    out.coefficient = kTwoSided95 * std::numbers::sqrt2 * out.withinSubjectSd;
    const double tail = 0.5 - 0.5 * confidence;
    out.withinSubjectSdInterval = {std::sqrt(squares / agreement::chiSquareQuantile(1.0 - tail, out.degrees)),
                                   std::sqrt(squares / agreement::chiSquareQuantile(tail, out.degrees))};
    return out;
}

Result<Repeatability> repeatabilityOfPairs(std::span<const double> first, std::span<const double> second,
                                           double confidence) {
    if (first.size() != second.size())
        return failure(ErrorCode::InvalidArgument, "Cannot give repeatability of " + std::to_string(first.size()) +
                                                       " first and " + std::to_string(second.size()) +
                                                       " second readings: they must come in pairs.");
    std::vector<std::vector<double>> readings;
    for (std::size_t i = 0; i < first.size(); ++i)
        readings.push_back({first[i], second[i]});
    return repeatability(readings, confidence);
}

} // namespace gauge::core
