#include "core/echo/drawn_contour.h"

#include "core/geometry/smooth_line.h"
#include "core/measure/section_metrics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace gauge::core {
namespace {

constexpr int kDraws = 200;           // 5 % of each uncertainty
constexpr std::size_t kCurvePoints = 256;
constexpr int kPiecesPerSide = 16;

using Contour = std::vector<Eigen::Vector2d>;

/// The smooth line through every point, counter-clockwise, evenly spaced.
Result<Contour> smoothCurve(std::span<const Eigen::Vector2d> points) {
    const auto line = SmoothLine::through(points, SmoothLine::Ends::Closed);
    if (!line) return tl::make_unexpected(line.error());
    Contour fine = line->sampled(kPiecesPerSide);
    if (signedAreaMm2(fine) < 0.0) std::reverse(fine.begin(), fine.end());
    return resampleByArcLength(fine, kCurvePoints);
}

/// Outward unit normals of a counter-clockwise contour.
Contour normals(const Contour& c) {
    Contour out;
    for (std::size_t i = 0; i < c.size(); ++i) {
        const Eigen::Vector2d t = c[(i + 1) % c.size()] - c[(i + c.size() - 1) % c.size()];
        out.push_back(Eigen::Vector2d(t.y(), -t.x()).normalized());
    }
    return out;
}

/// The line strayed: a common shift and waves round the contour whose variances fall with a Gaussian of their
/// number, for the stated correlation length.
Contour redrawn(const Contour& c, const Contour& outward, double perimeter, const DrawnContourOptions& o,
                std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    const int waves = std::min(40, static_cast<int>(2.0 * perimeter / o.correlationMm) + 2);
    std::vector<double> sd(static_cast<std::size_t>(waves)), re = sd, im = sd;
    double sum = 0.0;
    for (int m = 1; m <= waves; ++m) {
        const double x = std::numbers::pi * m * o.correlationMm / perimeter;
        sd[static_cast<std::size_t>(m - 1)] = std::exp(-0.5 * x * x);
        sum += std::exp(-x * x);
    }
    for (std::size_t m = 0; m < sd.size(); ++m) {
        re[m] = normal(random) * sd[m] * o.observerMm / std::sqrt(sum);
        im[m] = normal(random) * sd[m] * o.observerMm / std::sqrt(sum);
    }
    const double common = normal(random) * o.commonMm;
    Contour out;
    for (std::size_t i = 0; i < c.size(); ++i) {
        const double t = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(c.size());
        double off = common;
        for (std::size_t m = 0; m < sd.size(); ++m) {
            const double phase = t * static_cast<double>(m + 1);
            off += re[m] * std::cos(phase) + im[m] * std::sin(phase);
        }
        out.push_back(c[i] + off * outward[i]);
    }
    return out;
}

/// Spread of every metric over redraws about their own mean: waves lengthen every redraw alike, which is no error of
/// the line at hand.
MetricValues observerSpread(const Contour& curve, const DrawnContourOptions& o) {
    std::mt19937_64 random(20260101); // always the same redraws: the same line gives the same uncertainty
    const Contour outward = normals(curve);
    const double perimeter = perimeterMm(curve);
    MetricValues mean{}, squares{};
    for (int i = 0; i < kDraws; ++i) {
        const MetricValues v = metricValues(redrawn(curve, outward, perimeter, o, random));
        for (std::size_t k = 0; k < kMetricCount; ++k) {
            const double d = v[k] - mean[k];
            mean[k] += d / (i + 1);
            squares[k] += d * (v[k] - mean[k]);
        }
    }
    for (auto& s : squares)
        s = std::sqrt(s / (kDraws - 1));
    return squares;
}

Result<void> check(std::span<const Eigen::Vector2d> contour, const DrawnContourOptions& o) {
    if (!(o.observerMm >= 0.0 && o.commonMm >= 0.0 && o.scaleUncertainty >= 0.0 && o.correlationMm >= 1.0))
        return failure(ErrorCode::InvalidArgument, "Cannot measure the drawn contour: uncertainties of 0 or more and a "
                                                   "correlation length of at least 1 mm are needed.");
    if (contour.size() < 5)
        return failure(ErrorCode::TooFewPoints, "Cannot measure the drawn contour: it has " +
                                                    std::to_string(contour.size()) + " point(s); five or more are needed.");
    return validateContour(contour);
}

} // namespace

Result<std::shared_ptr<const Volume>> brightBlood(const Volume& echo) {
    if (echo.quantity() != VoxelQuantity::EchoIntensity)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot turn the brightness of this volume round: it is no echo, and blood in it is bright already.");
    std::vector<std::int16_t> voxels(echo.data(), echo.data() + echo.voxelCount());
    const auto [least, greatest] = std::minmax_element(voxels.begin(), voxels.end());
    const int sum = int{*least} + int{*greatest};
    for (auto& v : voxels)
        v = static_cast<std::int16_t>(sum - int{v});
    return Volume::make(echo.size(), std::move(voxels), echo.patientFromVoxel(), echo.quantity(),
                        echo.frameOfReferenceUid());
}

Result<Section> measureDrawnContour(const SectionFrame& frame, std::span<const Eigen::Vector2d> contour,
                                    const DrawnContourOptions& options) {
    if (const auto ok = check(contour, options); !ok) return tl::make_unexpected(ok.error());
    Section s;
    s.frame = frame;
    auto curve = smoothCurve(contour);
    if (!curve) return tl::make_unexpected(curve.error());
    s.contour = std::move(*curve);
    s.center = frame.patientFromSection(areaCentroid(s.contour));
    const MetricValues values = metricValues(s.contour), spread = observerSpread(s.contour, options);
    for (std::size_t k = 0; k < kMetricCount; ++k) {
        const auto metric = static_cast<Metric>(k);
        const double power = metric == Metric::Area ? 2.0 : metric == Metric::EccentricityIndex ? 0.0 : 1.0;
        estimateOf(s.metrics, metric) = {
            values[k],
            {.observer = spread[k], .scale = power * options.scaleUncertainty * values[k]},
            "contour drawn by hand"};
    }
    const Caliper longest = maximumCaliper(s.contour);
    const Eigen::Vector2d along = (longest.to - longest.from).normalized();
    const Caliper shortest = extentAlong(s.contour, {-along.y(), along.x()});
    s.longestFrom = longest.from;
    s.longestTo = longest.to;
    s.shortestFrom = shortest.from;
    s.shortestTo = shortest.to;
    return s;
}

} // namespace gauge::core
