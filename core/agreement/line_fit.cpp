#include "core/agreement/line_fit.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace gauge::core {

namespace {

Result<void> check(std::span<const double> x, std::span<const double> y) {
    const auto isFinite = [](double v) { return std::isfinite(v); };
    if (x.size() != y.size())
        return failure(ErrorCode::InvalidArgument, "Cannot fit a line to " + std::to_string(x.size()) + " x and " +
                                                       std::to_string(y.size()) + " y: they must come in pairs.");
    if (x.size() < 3)
        return failure(ErrorCode::TooFewPoints, "Cannot fit a line to " + std::to_string(x.size()) +
                                                    " points; at least 3 are needed.");
    if (!std::all_of(x.begin(), x.end(), isFinite) || !std::all_of(y.begin(), y.end(), isFinite))
        return failure(ErrorCode::NonFinite, "Cannot fit a line: a value is no finite number.");
    if (*std::max_element(x.begin(), x.end()) == *std::min_element(x.begin(), x.end()))
        return failure(ErrorCode::Degenerate, "Cannot fit a line: all x are equal.");
    return {};
}

double weighted(std::span<const double> weights, std::span<const double> values) {
    double sum = 0.0, total = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        total += weights[i];
        sum += weights[i] * values[i];
    }
    return sum / total;
}

double squared(double v) { return v * v; }

/// One pass of York's iteration.
struct YorkPass {
    std::vector<double> weights, adjusted; ///< W_i and beta_i
    double meanX = 0.0, meanY = 0.0, slope = 0.0;
};

YorkPass yorkPass(std::span<const double> x, std::span<const double> ux, std::span<const double> y,
                  std::span<const double> uy, double slope) {
    YorkPass out;
    for (std::size_t i = 0; i < x.size(); ++i)
        out.weights.push_back(1.0 / (squared(uy[i]) + squared(slope * ux[i])));
    out.meanX = weighted(out.weights, x);
    out.meanY = weighted(out.weights, y);
    double above = 0.0, below = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double u = x[i] - out.meanX, v = y[i] - out.meanY;
        const double beta = out.weights[i] * (u * squared(uy[i]) + slope * v * squared(ux[i]));
        out.adjusted.push_back(beta);
        above += out.weights[i] * beta * v;
        below += out.weights[i] * beta * u;
    }
    out.slope = above / below;
    return out;
}

LineFit yorkResult(const YorkPass& pass, std::span<const double> x, std::span<const double> y) {
    LineFit out;
    out.points = static_cast<int>(x.size());
    out.slope = pass.slope;
    out.intercept = pass.meanY - pass.slope * pass.meanX;
    std::vector<double> expected; // adjusted x
    double total = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        expected.push_back(pass.meanX + pass.adjusted[i]);
        total += pass.weights[i];
        out.residualSquares += pass.weights[i] * squared(y[i] - out.intercept - out.slope * x[i]);
    }
    const double mean = weighted(pass.weights, expected);
    double spread = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i)
        spread += pass.weights[i] * squared(expected[i] - mean);
    out.slopeStandardError = std::sqrt(1.0 / spread);
    out.interceptStandardError = std::sqrt(1.0 / total + squared(mean) / spread);
    return out;
}

} // namespace

Result<LineFit> fitLine(std::span<const double> x, std::span<const double> y) {
    if (auto checked = check(x, y); !checked) return tl::make_unexpected(checked.error());
    const auto n = static_cast<double>(x.size());
    const std::vector<double> ones(x.size(), 1.0);
    const double meanX = weighted(ones, x), meanY = weighted(ones, y);
    double xx = 0.0, xy = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += squared(x[i] - meanX);
        xy += (x[i] - meanX) * (y[i] - meanY);
    }
    LineFit out;
    out.points = static_cast<int>(x.size());
    out.slope = xy / xx;
    out.intercept = meanY - out.slope * meanX;
    for (std::size_t i = 0; i < x.size(); ++i)
        out.residualSquares += squared(y[i] - meanY - out.slope * (x[i] - meanX));
    const double variance = out.residualSquares / (n - 2.0);
    out.slopeStandardError = std::sqrt(variance / xx);
    out.interceptStandardError = std::sqrt(variance * (1.0 / n + squared(meanX) / xx));
    return out;
}

Result<LineFit> fitLineWithErrors(std::span<const double> x, std::span<const double> ux, std::span<const double> y,
                                  std::span<const double> uy) {
    auto start = fitLine(x, y);
    if (!start) return start;
    const auto isGood = [](double u) { return std::isfinite(u) && u > 0.0; };
    if (ux.size() != x.size() || uy.size() != y.size() || !std::all_of(ux.begin(), ux.end(), isGood) ||
        !std::all_of(uy.begin(), uy.end(), isGood))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot fit a line with errors in both variables: every point needs two standard uncertainties above 0.");
    double slope = start->slope;
    for (int i = 0; i < 500; ++i) {
        const YorkPass pass = yorkPass(x, ux, y, uy, slope);
        if (!std::isfinite(pass.slope)) break;
        if (std::abs(pass.slope - slope) <= 1e-14 * (1.0 + std::abs(slope)))
            return yorkResult(yorkPass(x, ux, y, uy, pass.slope), x, y);
        slope = pass.slope;
    }
    return failure(ErrorCode::Degenerate,
                   "Cannot fit a line with errors in both variables: the slope does not settle; the points show no line.");
}

} // namespace gauge::core
