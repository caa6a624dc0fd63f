#include "core/measure/closed_curve.h"

#include "core/geometry/planar_contour.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;
constexpr int kLeastOrder = 2;
constexpr int kOrdersWithoutGain = 5;

/// Fourier coefficients of equally spaced points for one order; least squares, since the base is orthogonal.
void projectOrder(std::span<const Eigen::Vector2d> points, int m, Eigen::Matrix2Xd& cosine, Eigen::Matrix2Xd& sine) {
    const auto n = static_cast<double>(points.size());
    const double weight = (m == 0 ? 1.0 : 2.0) / n;
    // Rotation by recurrence: one sine and cosine per harmonic instead of per point.
    const double step = kTwoPi * m / n;
    const double c1 = std::cos(step), s1 = std::sin(step);
    double c = 1.0, s = 0.0;
    Eigen::Vector2d ofCosine = Eigen::Vector2d::Zero(), ofSine = ofCosine;
    for (const auto& p : points) {
        ofCosine += weight * c * p;
        ofSine += weight * s * p;
        const double next = c * c1 - s * s1;
        s = s * c1 + c * s1;
        c = next;
    }
    cosine.col(m) = ofCosine;
    sine.col(m) = ofSine;
}

void project(std::span<const Eigen::Vector2d> points, int order, Eigen::Matrix2Xd& cosine, Eigen::Matrix2Xd& sine) {
    cosine.setZero(2, order + 1);
    sine.setZero(2, order + 1);
    for (int m = 0; m <= order; ++m)
        projectOrder(points, m, cosine, sine);
}

/// Adds one harmonic at equal steps of t.
void addHarmonic(std::vector<Eigen::Vector2d>& points, int m, const Eigen::Vector2d& cosine, const Eigen::Vector2d& sine) {
    const double step = kTwoPi * m / static_cast<double>(points.size());
    const double c1 = std::cos(step), s1 = std::sin(step);
    double c = 1.0, s = 0.0;
    for (auto& p : points) {
        p += c * cosine + s * sine;
        const double next = c * c1 - s * s1;
        s = s * c1 + c * s1;
        c = next;
    }
}

} // namespace

ClosedCurve ClosedCurve::fit(std::span<const Eigen::Vector2d> points, int order) {
    ClosedCurve curve;
    curve.m_order = order;
    project(points, order, curve.m_cosine, curve.m_sine);
    return curve;
}

Eigen::Vector2d ClosedCurve::at(double t) const {
    Eigen::Vector2d p = m_cosine.col(0);
    for (int m = 1; m <= m_order; ++m) {
        const double a = kTwoPi * m * t;
        p += std::cos(a) * m_cosine.col(m) + std::sin(a) * m_sine.col(m);
    }
    return p;
}

Eigen::Vector2d ClosedCurve::tangentAt(double t) const {
    Eigen::Vector2d d = Eigen::Vector2d::Zero();
    for (int m = 1; m <= m_order; ++m) {
        const double a = kTwoPi * m * t;
        d += kTwoPi * m * (std::cos(a) * m_sine.col(m) - std::sin(a) * m_cosine.col(m));
    }
    return d;
}

Eigen::Vector2d ClosedCurve::secondAt(double t) const {
    Eigen::Vector2d d = Eigen::Vector2d::Zero();
    for (int m = 1; m <= m_order; ++m) {
        const double a = kTwoPi * m * t, w = kTwoPi * m;
        d -= w * w * (std::cos(a) * m_cosine.col(m) + std::sin(a) * m_sine.col(m));
    }
    return d;
}

ClosedCurve::Derivatives ClosedCurve::derivativesAt(double t) const {
    Derivatives d{Eigen::Vector2d::Zero(), Eigen::Vector2d::Zero()};
    // Harmonic by harmonic, the angle's multiple by rotation: one sine and cosine a place.
    const double c1 = std::cos(kTwoPi * t), s1 = std::sin(kTwoPi * t);
    double c = c1, s = s1;
    for (int m = 1; m <= m_order; ++m) {
        const double w = kTwoPi * m;
        d.tangent += w * (c * m_sine.col(m) - s * m_cosine.col(m));
        d.second -= w * w * (c * m_cosine.col(m) + s * m_sine.col(m));
        const double next = c * c1 - s * s1;
        s = s * c1 + c * s1;
        c = next;
    }
    return d;
}

std::vector<Eigen::Vector2d> ClosedCurve::sample(std::size_t count) const {
    std::vector<Eigen::Vector2d> points(count, m_cosine.col(0));
    for (int m = 1; m <= m_order; ++m)
        addHarmonic(points, m, m_cosine.col(m), m_sine.col(m));
    return points;
}

ClosedCurve smoothClosedCurve(std::span<const Eigen::Vector2d> points, double noiseLengthMm, double finestMm) {
    const double perimeter = perimeterMm(points);
    const auto n = static_cast<double>(points.size());
    const double independent = std::max(8.0, std::min(n, perimeter / noiseLengthMm));
    const int highest = std::clamp(static_cast<int>(perimeter / finestMm), kLeastOrder,
                                   std::max(kLeastOrder, static_cast<int>(0.4 * independent)));

    const int last = std::min(highest, static_cast<int>((points.size() - 1) / 2));
    double best = 0.0;
    int bestOrder = kLeastOrder;
    // A harmonic is the same whatever the order: each order adds one to the curve before.
    Eigen::Matrix2Xd cosine = Eigen::Matrix2Xd::Zero(2, last + 1), sine = cosine;
    int known = 0;
    projectOrder(points, 0, cosine, sine);
    std::vector<Eigen::Vector2d> fitted(points.size(), cosine.col(0));
    const auto know = [&](int order) {
        while (known < order) {
            projectOrder(points, ++known, cosine, sine);
            addHarmonic(fitted, known, cosine.col(known), sine.col(known));
        }
    };
    for (int order = kLeastOrder; order <= last; ++order) {
        know(order);
        double power = 0.0;
        for (std::size_t i = 0; i < points.size(); ++i)
            power += (points[i] - fitted[i]).squaredNorm();
        // Each harmonic frees 2 parameters across the curve (the 2 along it only move points on it).
        const double parameters = 2.0 * order + 2.0;
        if (independent - parameters - 1.0 <= 0.0)
            break;
        const double criterion = independent * std::log(std::max(power / n, 1e-8)) + 2.0 * parameters +
                                 2.0 * parameters * (parameters + 1.0) / (independent - parameters - 1.0);
        if (order == kLeastOrder || criterion < best) {
            best = criterion;
            bestOrder = order;
        } else if (order - bestOrder >= kOrdersWithoutGain) {
            break;
        }
    }
    // The criterion weighs error over the whole contour; two orders more keep the ends of the longest diameter, where
    // the curve bends most, from being drawn in (0.02 mm on oval necks).
    ClosedCurve curve;
    curve.m_order = std::min(bestOrder + 2, last);
    know(curve.m_order);
    curve.m_cosine = cosine.leftCols(curve.m_order + 1);
    curve.m_sine = sine.leftCols(curve.m_order + 1);
    return curve;
}

} // namespace gauge::core
