#include "core/agreement/bland_altman.h"

#include "core/agreement/line_fit.h"
#include "core/agreement/quantiles.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace gauge::core {

namespace {

constexpr double kLimitSds = 1.959963984540054; // 97.5 % of the normal distribution

Result<void> check(std::span<const double> a, std::span<const double> b, double confidence) {
    if (a.size() != b.size())
        return failure(ErrorCode::InvalidArgument, "Cannot compare " + std::to_string(a.size()) + " readings with " +
                                                       std::to_string(b.size()) + ": they must come in pairs.");
    if (a.size() < 3)
        return failure(ErrorCode::TooFewPoints, "Cannot give limits of agreement from " + std::to_string(a.size()) +
                                                    " pairs; at least 3 are needed.");
    const auto isFinite = [](double x) { return std::isfinite(x); };
    if (!std::all_of(a.begin(), a.end(), isFinite) || !std::all_of(b.begin(), b.end(), isFinite))
        return failure(ErrorCode::NonFinite, "Cannot give limits of agreement: a reading is no finite number.");
    if (!(confidence > 0.0 && confidence < 1.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot give limits of agreement: a confidence must lie between 0 and 1.");
    return {};
}

} // namespace

Result<BlandAltman> blandAltman(std::span<const double> a, std::span<const double> b, double confidence) {
    if (auto checked = check(a, b, confidence); !checked) return tl::make_unexpected(checked.error());
    const auto n = static_cast<double>(a.size());
    std::vector<double> differences, means;
    BlandAltman out;
    out.pairs = static_cast<int>(a.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        differences.push_back(a[i] - b[i]);
        means.push_back(0.5 * (a[i] + b[i]));
        out.bias += differences.back() / n;
    }
    double squares = 0.0;
    for (const double d : differences)
        squares += (d - out.bias) * (d - out.bias);
    out.sd = std::sqrt(squares / (n - 1.0));
    out.biasStandardError = out.sd / std::sqrt(n);
    out.limitStandardError = out.sd * std::sqrt(3.0 / n);
    out.lowerLimit = out.bias - kLimitSds * out.sd;
    out.upperLimit = out.bias + kLimitSds * out.sd;
    const double t = agreement::studentQuantile(0.5 + 0.5 * confidence, n - 1.0);
    const auto about = [t](double value, double error) { return Interval{value - t * error, value + t * error}; };
    out.biasInterval = about(out.bias, out.biasStandardError);
    out.lowerLimitInterval = about(out.lowerLimit, out.limitStandardError);
    out.upperLimitInterval = about(out.upperLimit, out.limitStandardError);
    if (const auto line = fitLine(means, differences)) {
        out.proportionalSlope = line->slope;
        if (line->slopeStandardError > 0.0)
            out.proportionalChance = agreement::studentTwoSided(line->slope / line->slopeStandardError, n - 2.0);
        else
            out.proportionalChance = line->slope == 0.0 ? 1.0 : 0.0;
    }
    return out;
}

} // namespace gauge::core
