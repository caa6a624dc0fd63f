#include "core/geometry/smoothing_spline.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace gauge::core {
namespace {

using Row = Eigen::Vector3d;

/// Symmetric positive definite matrix with two bands on each side of the diagonal: entry (i, i + b) is band[b][i].
struct Pentadiagonal {
    std::vector<double> band[3];

    explicit Pentadiagonal(std::size_t n) {
        for (auto& b : band)
            b.assign(n, 0.0);
    }

    /// Solves for three right sides at once (the columns x, y, z), by L D L^T in place.
    std::vector<Row> solve(std::vector<Row> rhs) && {
        auto& [d, e, f] = band;
        const std::size_t n = d.size();
        for (std::size_t i = 0; i < n; ++i) {
            if (i >= 2) d[i] -= d[i - 2] * f[i - 2] * f[i - 2];
            if (i >= 1) {
                d[i] -= d[i - 1] * e[i - 1] * e[i - 1];
                e[i] -= d[i - 1] * e[i - 1] * f[i - 1];
            }
            e[i] /= d[i];
            f[i] /= d[i];
        }
        for (std::size_t i = 1; i < n; ++i)
            rhs[i] -= e[i - 1] * rhs[i - 1] + (i >= 2 ? f[i - 2] * rhs[i - 2] : Row(Row::Zero()));
        for (std::size_t i = n; i-- > 0;) {
            rhs[i] /= d[i];
            if (i + 1 < n) rhs[i] -= e[i] * rhs[i + 1];
            if (i + 2 < n) rhs[i] -= f[i] * rhs[i + 2];
        }
        return rhs;
    }
};

/// Row j of Q^T: the second difference about interior knot j + 1, entries at knots j, j + 1, j + 2.
struct SecondDifference {
    double before, at, after;
};

std::vector<SecondDifference> secondDifferences(const std::vector<double>& h) {
    std::vector<SecondDifference> q;
    for (std::size_t j = 0; j + 1 < h.size(); ++j)
        q.push_back({1.0 / h[j], -1.0 / h[j] - 1.0 / h[j + 1], 1.0 / h[j + 1]});
    return q;
}

/// R + lambda Q^T W^-1 Q of Reinsch's algorithm.
Pentadiagonal reinschMatrix(const std::vector<double>& h, const std::vector<SecondDifference>& q,
                            std::span<const double> weights, double lambda) {
    Pentadiagonal m(q.size());
    for (std::size_t j = 0; j < q.size(); ++j) {
        const double a = lambda / weights[j], b = lambda / weights[j + 1], c = lambda / weights[j + 2];
        m.band[0][j] = (h[j] + h[j + 1]) / 3.0 + a * q[j].before * q[j].before + b * q[j].at * q[j].at +
                       c * q[j].after * q[j].after;
        if (j + 1 < q.size())
            m.band[1][j] = h[j + 1] / 6.0 + b * q[j].at * q[j + 1].before + c * q[j].after * q[j + 1].at;
        if (j + 2 < q.size()) m.band[2][j] = c * q[j].after * q[j + 2].before;
    }
    return m;
}

Result<void> checkInput(std::span<const PatientPoint> points, std::span<const double> weights, double lambda) {
    const std::string attempt = "Cannot smooth the line: ";
    if (points.size() < 2)
        return failure(ErrorCode::TooFewPoints,
                       attempt + "it has " + std::to_string(points.size()) + " points; at least 2 are needed.");
    if (weights.size() != points.size())
        return failure(ErrorCode::InvalidArgument, attempt + std::to_string(weights.size()) +
                                                       " weights were given for " + std::to_string(points.size()) +
                                                       " points.");
    if (!(lambda >= 0.0) || !std::isfinite(lambda))
        return failure(ErrorCode::InvalidArgument,
                       attempt + "lambda is " + std::to_string(lambda) + "; it must be finite and not negative.");
    for (std::size_t i = 0; i < points.size(); ++i) {
        const std::string which = "point " + std::to_string(i + 1) + " of " + std::to_string(points.size());
        if (!points[i].mm.allFinite())
            return failure(ErrorCode::NonFinite, attempt + which + " is not a finite number.");
        if (!(weights[i] > 0.0) || !std::isfinite(weights[i]))
            return failure(ErrorCode::InvalidArgument, attempt + "the weight of " + which + " is " +
                                                           std::to_string(weights[i]) +
                                                           "; it must be finite and above 0.");
        if (i > 0 && points[i].mm == points[i - 1].mm)
            return failure(ErrorCode::Degenerate, attempt + which + " repeats the one before it.");
    }
    return {};
}

} // namespace

Result<SpaceSpline> SpaceSpline::smooth(std::span<const PatientPoint> points, std::span<const double> weights,
                                        double lambda) {
    if (auto ok = checkInput(points, weights, lambda); !ok) return tl::make_unexpected(ok.error());

    const std::size_t n = points.size();
    SpaceSpline spline;
    spline.m_g.assign(points.begin(), points.end());
    spline.m_second.assign(n, PatientVector{});
    spline.m_t.assign(n, 0.0);
    std::vector<double> h;
    for (std::size_t i = 1; i < n; ++i) {
        h.push_back(distanceMm(points[i - 1], points[i]));
        spline.m_t[i] = spline.m_t[i - 1] + h.back();
    }
    if (n == 2) return spline;

    const auto q = secondDifferences(h);
    std::vector<Row> rhs;
    for (std::size_t j = 0; j < q.size(); ++j)
        rhs.push_back(q[j].before * points[j].mm + q[j].at * points[j + 1].mm + q[j].after * points[j + 2].mm);
    const auto gamma = reinschMatrix(h, q, weights, lambda).solve(std::move(rhs));

    for (std::size_t j = 0; j < q.size(); ++j) {
        spline.m_second[j + 1].mm = gamma[j];
        spline.m_g[j].mm -= lambda / weights[j] * q[j].before * gamma[j];
        spline.m_g[j + 1].mm -= lambda / weights[j + 1] * q[j].at * gamma[j];
        spline.m_g[j + 2].mm -= lambda / weights[j + 2] * q[j].after * gamma[j];
    }
    return spline;
}

std::size_t SpaceSpline::intervalAt(double t) const {
    const auto after = std::upper_bound(m_t.begin() + 1, m_t.end() - 1, t);
    return static_cast<std::size_t>(after - m_t.begin()) - 1;
}

PatientPoint SpaceSpline::pointAt(double t) const {
    const double held = std::clamp(t, m_t.front(), m_t.back());
    const std::size_t i = intervalAt(held);
    const double h = m_t[i + 1] - m_t[i], b = (held - m_t[i]) / h, a = 1.0 - b;
    const Eigen::Vector3d inside =
        a * m_g[i].mm + b * m_g[i + 1].mm +
        h * h / 6.0 * ((a * a * a - a) * m_second[i].mm + (b * b * b - b) * m_second[i + 1].mm);
    return {inside + (t - held) * derivativeAt(held).mm};
}

PatientVector SpaceSpline::derivativeAt(double t) const {
    const double held = std::clamp(t, m_t.front(), m_t.back());
    const std::size_t i = intervalAt(held);
    const double h = m_t[i + 1] - m_t[i], b = (held - m_t[i]) / h, a = 1.0 - b;
    return {(m_g[i + 1].mm - m_g[i].mm) / h +
            h / 6.0 * ((1.0 - 3.0 * a * a) * m_second[i].mm + (3.0 * b * b - 1.0) * m_second[i + 1].mm)};
}

PatientVector SpaceSpline::secondDerivativeAt(double t) const {
    if (t <= m_t.front() || t >= m_t.back()) return {};
    const std::size_t i = intervalAt(t);
    const double b = (t - m_t[i]) / (m_t[i + 1] - m_t[i]);
    return {(1.0 - b) * m_second[i].mm + b * m_second[i + 1].mm};
}

Result<std::vector<PatientPoint>> smoothPolyline(std::span<const PatientPoint> points,
                                                 std::span<const double> weights, double lambda) {
    return SpaceSpline::smooth(points, weights, lambda).map([](const SpaceSpline& s) { return s.values(); });
}

} // namespace gauge::core
