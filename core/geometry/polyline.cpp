#include "core/geometry/polyline.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>

namespace gauge::core {

double lengthMm(std::span<const PatientPoint> polyline) {
    double sum = 0.0;
    for (std::size_t i = 1; i < polyline.size(); ++i)
        sum += distanceMm(polyline[i - 1], polyline[i]);
    return sum;
}

double angleBetweenDeg(const PatientVector& a, const PatientVector& b) {
    return std::atan2(a.cross(b).norm(), a.dot(b)) * 180.0 / std::numbers::pi;
}

Result<Polyline> Polyline::make(std::span<const PatientPoint> points) {
    Polyline line;
    line.m_points.reserve(points.size());
    line.m_distances.reserve(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!points[i].mm.allFinite())
            return failure(ErrorCode::NonFinite, "Cannot follow the line: point " + std::to_string(i + 1) + " of " +
                                                     std::to_string(points.size()) + " is not a finite number.");
        const double step = line.m_points.empty() ? 0.0 : distanceMm(line.m_points.back(), points[i]);
        if (!line.m_points.empty() && step == 0.0) continue;
        line.m_distances.push_back(line.m_distances.empty() ? 0.0 : line.m_distances.back() + step);
        line.m_points.push_back(points[i]);
    }
    if (line.m_points.size() < 2)
        return failure(ErrorCode::TooFewPoints, "Cannot follow the line: it has " +
                                                    std::to_string(line.m_points.size()) +
                                                    " different points; at least 2 are needed.");
    return line;
}

std::size_t Polyline::segmentAt(double sMm) const {
    const auto after = std::upper_bound(m_distances.begin() + 1, m_distances.end() - 1, sMm);
    return static_cast<std::size_t>(after - m_distances.begin()) - 1;
}

PatientPoint Polyline::pointAt(double sMm) const {
    const double s = std::clamp(sMm, 0.0, lengthMm());
    const std::size_t i = segmentAt(s);
    const double t = (s - m_distances[i]) / (m_distances[i + 1] - m_distances[i]);
    return m_points[i] + t * (m_points[i + 1] - m_points[i]);
}

PatientVector Polyline::tangentAt(double sMm, double halfWindowMm) const {
    assert(halfWindowMm >= 0.0);
    const double s = std::clamp(sMm, 0.0, lengthMm());
    const std::size_t i = segmentAt(s);
    const PatientVector segment = m_points[i + 1] - m_points[i];
    if (halfWindowMm == 0.0) return segment.normalized();
    const PatientVector chord = pointAt(s + halfWindowMm) - pointAt(s - halfWindowMm);
    return chord.norm() > 0.0 ? chord.normalized() : segment.normalized();
}

Polyline::Place Polyline::nearestTo(const PatientPoint& p) const {
    Place best{0.0, std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i + 1 < m_points.size(); ++i) {
        const PatientVector segment = m_points[i + 1] - m_points[i];
        const double t = std::clamp((p - m_points[i]).dot(segment) / segment.dot(segment), 0.0, 1.0);
        const double distance = distanceMm(p, m_points[i] + t * segment);
        if (distance < best.distanceMm) best = {m_distances[i] + t * (m_distances[i + 1] - m_distances[i]), distance};
    }
    return best;
}

Polyline::Turn Polyline::maximumTurn(double spanMm) const {
    assert(spanMm > 0.0);
    Turn best{0.0, 0.5 * lengthMm()};
    for (const double s : m_distances) {
        if (s < spanMm || s > lengthMm() - spanMm) continue;
        const PatientPoint here = pointAt(s);
        const PatientVector before = here - pointAt(s - spanMm), after = pointAt(s + spanMm) - here;
        if (before.norm() == 0.0 || after.norm() == 0.0) continue;
        const double angle = angleBetweenDeg(before, after);
        if (angle > best.angleDeg) best = {angle, s};
    }
    return best;
}

std::vector<PatientPoint> Polyline::resampled(double stepMm) const {
    assert(stepMm > 0.0);
    const auto steps = static_cast<std::size_t>(std::max(1.0, std::round(lengthMm() / stepMm)));
    std::vector<PatientPoint> out;
    out.reserve(steps + 1);
    out.push_back(m_points.front());
    for (std::size_t i = 1; i < steps; ++i)
        out.push_back(pointAt(lengthMm() * static_cast<double>(i) / static_cast<double>(steps)));
    out.push_back(m_points.back());
    return out;
}

} // namespace gauge::core
