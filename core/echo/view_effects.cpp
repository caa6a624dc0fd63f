#include "core/echo/view_effects.h"

#include "core/echo/beam_tilt.h"
#include "core/echo/width_ellipse.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace gauge::core {
namespace {

constexpr int kDirections = 360, kTilts = 60; // within half a turn

} // namespace

Result<LargestOfViews> largestOfViews(std::span<const WidthReading> readings) {
    const auto views = averageViews(readings);
    if (!views) return tl::make_unexpected(views.error());
    const auto largest = std::max_element(views->views.begin(), views->views.end(),
                                          [](const auto& a, const auto& b) { return a.widthMm < b.widthMm; });
    return LargestOfViews{{largest->widthMm,
                           {.observer = largest->standardUncertaintyMm},
                           "largest of " + std::to_string(views->views.size()) + " echo views"},
                          largest->angleDeg};
}

Shortfall expectedShortfall(double longestMm, double shortestMm, std::span<const double> probeAnglesDeg, double tiltDeg) {
    Shortfall s;
    const int tilts = tiltDeg > 0.0 ? kTilts : 1;
    for (int i = 0; i < kDirections; ++i)
        for (int j = 0; j < tilts; ++j) {
            const double direction = std::numbers::pi * i / kDirections;
            const BeamTilt tilt{tiltDeg, 180.0 * j / kTilts};
            double largest = 0.0;
            for (const double angle : probeAnglesDeg) {
                const double t = sectionDirectionRad(tilt, angle * kRadPerDegree) - direction;
                largest = std::max(largest, 1.0 / std::hypot(std::cos(t) / longestMm, std::sin(t) / shortestMm));
            }
            s.meanMm += (longestMm - largest) / (kDirections * tilts);
            s.greatestMm = std::max(s.greatestMm, longestMm - largest);
        }
    return s;
}

double chordThroughMm(double longestMm, double shortestMm, const Eigen::Vector2d& point, double directionRad) {
    // In coordinates that make the ellipse a unit circle: |p + r d| = 1.
    const Eigen::Vector2d p(2.0 * point.x() / longestMm, 2.0 * point.y() / shortestMm);
    const Eigen::Vector2d d(2.0 * std::cos(directionRad) / longestMm, 2.0 * std::sin(directionRad) / shortestMm);
    if (p.squaredNorm() >= 1.0) return 0.0;
    const double a = d.squaredNorm(), b = p.dot(d), c = p.squaredNorm() - 1.0;
    return 2.0 * std::sqrt(b * b - a * c) / a;
}

Result<OffCentreEffect> offCentreEffect(double longestMm, double shortestMm, double directionDeg,
                                        const Eigen::Vector2d& point, std::span<const double> probeAnglesDeg) {
    std::vector<AngledWidth> widths;
    for (const double angle : probeAnglesDeg) {
        const double chord = chordThroughMm(longestMm, shortestMm, point, (angle - directionDeg) * kRadPerDegree);
        if (chord <= 0.0)
            return failure(ErrorCode::InvalidArgument,
                           "Cannot tell what views beside the centre do: their common axis passes outside the section.");
        widths.push_back({angle * kRadPerDegree, chord, 1.0});
    }
    const auto fit = fitWidthEllipse(widths);
    if (!fit) return tl::make_unexpected(fit.error());
    const auto& e = fit->ellipse;
    return OffCentreEffect{e.longestMm() - longestMm, e.shortestMm() - shortestMm,
                           std::sqrt(e.longestMm() * e.shortestMm()) - std::sqrt(longestMm * shortestMm)};
}

} // namespace gauge::core
