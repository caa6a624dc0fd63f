#include "core/measure/edge_uncertainty.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace gauge::core {
namespace {

constexpr int kHighestWave = 10;    // waves beyond are damped by the smooth contour itself
constexpr int kModelWaves = 4;      // the model's error varies slowly around the contour
constexpr double kModelWaveShare = 0.5;
constexpr std::size_t kPoints = 96; // of the contour used for sensitivities; divides by four
static_assert(kPoints % 4 == 0);

std::vector<Eigen::Vector2d> outwardNormals(const std::vector<Eigen::Vector2d>& contour) {
    const std::size_t n = contour.size();
    std::vector<Eigen::Vector2d> normals(n);
    for (std::size_t i = 0; i < n; ++i) {
        const Eigen::Vector2d along = contour[(i + 1) % n] - contour[(i + n - 1) % n];
        normals[i] = Eigen::Vector2d(along.y(), -along.x()).normalized();
    }
    return normals;
}

/// Cosines of the angles of kPoints places around a circle.
const std::vector<double>& cosinesAround() {
    static const std::vector<double> all = [] {
        std::vector<double> c(kPoints);
        for (std::size_t i = 0; i < kPoints; ++i)
            c[i] = std::cos(2.0 * std::numbers::pi * static_cast<double>(i) / kPoints);
        return c;
    }();
    return all;
}

/// Change of each metric when the contour is shifted along its normals by +-`wave` (mm), halved.
MetricValues sensitivity(const std::vector<Eigen::Vector2d>& contour, const std::vector<Eigen::Vector2d>& normals,
                         const std::vector<double>& wave) {
    std::vector<Eigen::Vector2d> out(contour), in(contour);
    for (std::size_t i = 0; i < contour.size(); ++i) {
        out[i] += wave[i] * normals[i];
        in[i] -= wave[i] * normals[i];
    }
    const MetricValues a = metricValues(out), b = metricValues(in);
    MetricValues d{};
    for (std::size_t m = 0; m < kMetricCount; ++m)
        d[m] = 0.5 * (a[m] - b[m]);
    return d;
}

} // namespace

MetricValues edgeUncertainty(ContourView dense, const EdgeNoise& noise) {
    const auto contour = resampleByArcLength(dense, kPoints);
    const auto normals = outwardNormals(contour);
    const double perimeter = perimeterMm(contour);
    MetricValues variance{};
    std::vector<double> wave(kPoints);
    const std::vector<double>& turn = cosinesAround();
    /// A wave of `order` periods around the contour, late by `quarters` of its period.
    const auto add = [&](double amplitude, std::size_t quarters, int order) {
        for (std::size_t i = 0; i < kPoints; ++i)
            wave[i] = amplitude * turn[(static_cast<std::size_t>(order) * i + (4 - quarters) * kPoints / 4) % kPoints];
        const MetricValues d = sensitivity(contour, normals, wave);
        for (std::size_t m = 0; m < kMetricCount; ++m)
            variance[m] += d[m] * d[m];
    };
    add(std::hypot(std::sqrt(noise.lineDensityMm3 / perimeter), noise.commonMm), 0, 0);
    for (int order = 1; order <= kHighestWave; ++order) {
        const double q = order * noise.correlationMm / perimeter;
        const double damping = std::exp(-0.25 * (2.0 * std::numbers::pi * q) * (2.0 * std::numbers::pi * q));
        const double amplitude = std::hypot(std::sqrt(2.0 * noise.lineDensityMm3 / perimeter) * damping,
                                            order <= kModelWaves ? kModelWaveShare * noise.commonMm : 0.0);
        add(amplitude, 0, order);
        add(amplitude, 1, order);
    }
    MetricValues u{};
    for (std::size_t m = 0; m < kMetricCount; ++m)
        u[m] = std::sqrt(variance[m]);
    return u;
}

} // namespace gauge::core
