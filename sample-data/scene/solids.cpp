#include "sample-data/scene/solids.h"

#include <cassert>

namespace gauge::sample_case {
namespace {

/// Half widths never shrink to nothing: a tube whose table does would have no gradient.
constexpr double kLeastHalfWidthMm = 0.05;

/// rho^2 = sum of (x_i / r_i)^2 as first-order distance to rho = 1.
double ellipsoidalDistance(double p, double q, double t, double a, double b, double c) {
    const double pa = p / a, qb = q / b, tc = t / c;
    const double rho = std::sqrt(pa * pa + qb * qb + tc * tc);
    const double g0 = pa / a, g1 = qb / b, g2 = tc / c;
    const double gradient = std::sqrt(g0 * g0 + g1 * g1 + g2 * g2);
    if (rho < 1e-9) return -std::min({a, b, c});
    return rho * (rho - 1.0) / gradient;
}

double superellipticDistance(double p, double q, double t, double a, double b, double c, double m) {
    const double u = std::abs(p) / a, v = std::abs(q) / b, w = t / c;
    const double um = std::pow(u, m - 1.0), vm = std::pow(v, m - 1.0);
    const double flat = std::pow(um * u + vm * v, 1.0 / m);
    const double rho = std::sqrt(flat * flat + w * w);
    if (rho < 1e-9) return -std::min({a, b, c});
    const double scale = flat > 1e-12 ? std::pow(flat, 1.0 - m) * flat / rho : 0.0;
    const double g0 = scale * um / a, g1 = scale * vm / b, g2 = w / (rho * c);
    const double gradient = std::sqrt(g0 * g0 + g1 * g1 + g2 * g2);
    return (rho - 1.0) / std::max(gradient, 0.5 / std::max({a, b, c}));
}

} // namespace

SmoothTable::SmoothTable(std::vector<std::pair<double, double>> knots)
    : m_knots(std::move(knots)), m_slopes(m_knots.size(), 0.0) {
    assert(!m_knots.empty());
    const std::size_t n = m_knots.size();
    const auto secant = [&](std::size_t i) {
        return (m_knots[i + 1].second - m_knots[i].second) / (m_knots[i + 1].first - m_knots[i].first);
    };
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double before = secant(i - 1), after = secant(i);
        if (before * after > 0.0) m_slopes[i] = 2.0 * before * after / (before + after);
    }
}

double SmoothTable::operator()(double x) const {
    if (x <= m_knots.front().first) return m_knots.front().second;
    if (x >= m_knots.back().first) return m_knots.back().second;
    std::size_t i = 0;
    while (x > m_knots[i + 1].first)
        ++i;
    const double h = m_knots[i + 1].first - m_knots[i].first;
    const double t = (x - m_knots[i].first) / h;
    const double t2 = t * t, t3 = t2 * t;
    return (2 * t3 - 3 * t2 + 1) * m_knots[i].second + (t3 - 2 * t2 + t) * h * m_slopes[i] +
           (3 * t2 - 2 * t3) * m_knots[i + 1].second + (t3 - t2) * h * m_slopes[i + 1];
}

double Ellipsoid::distance(const Eigen::Vector3d& x) const {
    const Eigen::Vector3d local = axes.transpose() * (x - centre);
    return ellipsoidalDistance(local.x(), local.y(), local.z(), semiAxes.x(), semiAxes.y(), semiAxes.z());
}

Eigen::Vector3d Ellipsoid::surfacePoint(const Eigen::Vector3d& normal) const {
    const Eigen::Vector3d n = axes.transpose() * normal.normalized();
    const Eigen::Vector3d scaled = semiAxes.cwiseProduct(n);
    return centre + axes * (semiAxes.cwiseProduct(scaled) / scaled.norm());
}

double Tube::distance(const Eigen::Vector3d& x) const {
    const CentreCurve::Foot foot = curve.nearest(x);
    const double a = std::max(semiA(foot.s), kLeastHalfWidthMm);
    const double b = std::max(semiB(foot.s), kLeastHalfWidthMm);
    double p = foot.alongNormal, q = foot.alongBinormal;
    if (twistRad != 0.0 || twistPerMm != 0.0) {
        const double angle = twistAt(foot.s);
        const double c = std::cos(angle), s = std::sin(angle);
        p = c * foot.alongNormal + s * foot.alongBinormal;
        q = c * foot.alongBinormal - s * foot.alongNormal;
    }
    double t = 0.0, cap = 1.0;
    if (const double tip = curve.lastS() - tipCapMm; foot.s > tip) {
        t = foot.s - tip;
        cap = tipCapMm;
    } else if (const double base = curve.firstS() + baseCapMm; foot.s < base) {
        t = base - foot.s;
        cap = baseCapMm;
    }
    return exponent == 2.0 ? ellipsoidalDistance(p, q, t, a, b, cap)
                           : superellipticDistance(p, q, t, a, b, cap, exponent);
}

} // namespace gauge::sample_case
