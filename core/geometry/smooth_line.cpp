#include "core/geometry/smooth_line.h"

#include <array>
#include <cassert>
#include <cmath>
#include <string>

namespace gauge::core {
namespace {

using PointList = std::vector<Eigen::Vector2d>;

PointList withoutRepeats(std::span<const Eigen::Vector2d> points, bool closed) {
    PointList kept;
    for (const auto& p : points)
        if (kept.empty() || p != kept.back()) kept.push_back(p);
    while (closed && kept.size() > 1 && kept.front() == kept.back())
        kept.pop_back();
    return kept;
}

/// Rows below[i] x[i-1] + diagonal[i] x[i] + above[i] x[i+1] = right[i], diagonally dominant.
struct Tridiagonal {
    std::vector<double> below, diagonal, above;

    explicit Tridiagonal(std::size_t n) : below(n), diagonal(n), above(n) {}
    PointList solve(PointList right) const {
        const std::size_t n = right.size();
        std::vector<double> ratio(n);
        double pivot = diagonal[0];
        right[0] /= pivot;
        for (std::size_t i = 1; i < n; ++i) {
            ratio[i] = above[i - 1] / pivot;
            pivot = diagonal[i] - below[i] * ratio[i];
            right[i] = (right[i] - below[i] * right[i - 1]) / pivot;
        }
        for (std::size_t i = n - 1; i-- > 0;)
            right[i] -= ratio[i + 1] * right[i + 1];
        return right;
    }
};

/// Second derivatives at the points of an open line; h and slope belong to the spans.
PointList openSeconds(const std::vector<double>& h, const PointList& slope) {
    const std::size_t n = h.size() + 1;
    PointList second(n, Eigen::Vector2d::Zero());
    if (n == 2) return second;
    if (n == 3) {
        second.assign(3, 2.0 * (slope[1] - slope[0]) / (h[0] + h[1]));
        return second;
    }
    const std::size_t inner = n - 2;
    Tridiagonal rows(inner);
    PointList right(inner);
    for (std::size_t i = 0; i < inner; ++i) {
        rows.below[i] = h[i];
        rows.diagonal[i] = 2.0 * (h[i] + h[i + 1]);
        rows.above[i] = h[i + 1];
        right[i] = 6.0 * (slope[i + 1] - slope[i]);
    }
    // The second derivatives at the ends, which not-a-knot takes from their neighbours, are put into the outer rows.
    const double a = h[0], b = h[1], y = h[n - 3], z = h[n - 2];
    rows.diagonal.front() += a * (a + b) / b;
    rows.above.front() -= a * a / b;
    rows.diagonal.back() += z * (z + y) / y;
    rows.below.back() -= z * z / y;
    const PointList solved = rows.solve(std::move(right));
    std::copy(solved.begin(), solved.end(), second.begin() + 1);
    second.front() = ((a + b) * second[1] - a * second[2]) / b;
    second.back() = ((z + y) * second[n - 2] - z * second[n - 3]) / y;
    return second;
}

/// The same of a closed line: h and slope of span i lead from point i to point i + 1. Sherman and Morrison's formula takes
/// the two corners of the cyclic rows.
PointList closedSeconds(const std::vector<double>& h, const PointList& slope) {
    const std::size_t n = h.size();
    Tridiagonal rows(n);
    PointList right(n);
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t before = (i + n - 1) % n;
        rows.below[i] = h[before];
        rows.diagonal[i] = 2.0 * (h[before] + h[i]);
        rows.above[i] = h[i];
        right[i] = 6.0 * (slope[i] - slope[before]);
    }
    const double corner = h[n - 1], gamma = -rows.diagonal[0];
    rows.diagonal.front() -= gamma;
    rows.diagonal.back() -= corner * corner / gamma;
    PointList column(n, Eigen::Vector2d::Zero());
    column.front().setConstant(gamma);
    column.back().setConstant(corner);
    PointList x = rows.solve(std::move(right));
    const PointList z = rows.solve(std::move(column));
    const Eigen::Vector2d top = x.front() + corner / gamma * x.back();
    const double below = 1.0 + z.front().x() + corner / gamma * z.back().x();
    for (std::size_t i = 0; i < n; ++i)
        x[i] -= top / below * z[i].x();
    return x;
}

/// Gauss and Legendre's five points on [0, 1] and their weights.
constexpr std::array<double, 5> kAt{0.046910077030668, 0.230765344947158, 0.5, 0.769234655052842, 0.953089922969332};
constexpr std::array<double, 5> kWeight{0.118463442528095, 0.239314335249683, 0.284444444444444, 0.239314335249683,
                                        0.118463442528095};

} // namespace

Result<SmoothLine> SmoothLine::through(std::span<const Eigen::Vector2d> points, Ends ends) {
    const bool closed = ends == Ends::Closed;
    for (const auto& p : points)
        if (!p.allFinite())
            return failure(ErrorCode::NonFinite, "Cannot draw a line through points of which one is not finite.");
    const PointList p = withoutRepeats(points, closed);
    const std::size_t least = closed ? 3 : 2;
    if (p.size() < least)
        return failure(ErrorCode::TooFewPoints, "Cannot draw a " + std::string(closed ? "closed line" : "line") + " through " +
                                                    std::to_string(p.size()) + " different point(s): " +
                                                    std::to_string(least) + " are needed.");
    const std::size_t spans = closed ? p.size() : p.size() - 1;
    std::vector<double> h(spans);
    PointList slope(spans);
    for (std::size_t i = 0; i < spans; ++i) {
        const Eigen::Vector2d step = p[(i + 1) % p.size()] - p[i];
        h[i] = step.norm();
        slope[i] = step / h[i];
    }
    const PointList second = closed ? closedSeconds(h, slope) : openSeconds(h, slope);
    SmoothLine line;
    line.m_closed = closed;
    for (std::size_t i = 0; i < spans; ++i) {
        const std::size_t next = (i + 1) % p.size();
        line.m_spans.push_back({h[i], p[i], p[next], second[i], second[next]});
    }
    return line;
}

Eigen::Vector2d SmoothLine::Span::at(double t) const {
    const double b = t / length, a = 1.0 - b;
    return a * from + b * to +
           length * length / 6.0 * ((a * a * a - a) * secondFrom + (b * b * b - b) * secondTo);
}

Eigen::Vector2d SmoothLine::Span::derivativeAt(double t) const {
    const double b = t / length, a = 1.0 - b;
    return (to - from) / length + length / 6.0 * ((1.0 - 3.0 * a * a) * secondFrom + (3.0 * b * b - 1.0) * secondTo);
}

double SmoothLine::Span::speedOver(double begin, double end) const {
    double sum = 0.0;
    for (std::size_t k = 0; k < kAt.size(); ++k)
        sum += kWeight[k] * (end - begin) * derivativeAt(begin + (end - begin) * kAt[k]).norm();
    return sum;
}

/// Halves until halving changes nothing: the speed is no polynomial, and where the curve nearly stands still (a hand's sharp
/// turn) it has a kink that no fixed number of points meets.
double SmoothLine::Span::lengthOver(double begin, double end, double asOne, int halvings) const {
    constexpr double kTolerance = 1e-11; // of the span
    const double middle = 0.5 * (begin + end);
    const double first = speedOver(begin, middle), second = speedOver(middle, end);
    if (halvings == 0 || std::abs(first + second - asOne) <= kTolerance * length) return first + second;
    return lengthOver(begin, middle, first, halvings - 1) + lengthOver(middle, end, second, halvings - 1);
}

double SmoothLine::length() const {
    constexpr int kMostHalvings = 30; // each leaves a kink half as wide
    double sum = 0.0;
    for (const Span& span : m_spans)
        sum += span.lengthOver(0.0, span.length, span.speedOver(0.0, span.length), kMostHalvings);
    return sum;
}

double SmoothLine::signedArea() const {
    assert(m_closed);
    double twice = 0.0;
    const Eigen::Vector2d about = m_spans.front().from; // independent of where the line lies
    for (const Span& span : m_spans)
        for (std::size_t k = 0; k < kAt.size(); ++k) {
            const Eigen::Vector2d p = span.at(span.length * kAt[k]) - about, d = span.derivativeAt(span.length * kAt[k]);
            twice += kWeight[k] * span.length * (p.x() * d.y() - p.y() * d.x());
        }
    return 0.5 * twice;
}

PointList SmoothLine::sampled(int pieces) const {
    PointList points;
    for (const Span& span : m_spans)
        for (int k = 0; k < pieces; ++k)
            points.push_back(span.at(span.length * k / pieces));
    if (!m_closed) points.push_back(m_spans.back().to);
    return points;
}

} // namespace gauge::core
