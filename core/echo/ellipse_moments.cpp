#include "core/echo/ellipse_moments.h"

#include "core/geometry/ellipse.h"

#include <Eigen/Dense>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr int kNodes = 10;

struct Rule {
    Eigen::Matrix<double, kNodes, 1> at, weight;
};

/// Gauss-Hermite rule for the standard normal distribution: eigenvalues of its Jacobi matrix (Golub and Welsch).
Rule normalRule() {
    Eigen::Matrix<double, kNodes, kNodes> jacobi = Eigen::Matrix<double, kNodes, kNodes>::Zero();
    for (int i = 1; i < kNodes; ++i)
        jacobi(i, i - 1) = jacobi(i - 1, i) = std::sqrt(static_cast<double>(i));
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix<double, kNodes, kNodes>> solved(jacobi);
    return {solved.eigenvalues(), solved.eigenvectors().row(0).transpose().array().square()};
}

Eigen::Matrix3d root(const Eigen::Matrix3d& covariance) {
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solved(covariance);
    return solved.eigenvectors() * solved.eigenvalues().cwiseMax(0.0).cwiseSqrt().asDiagonal();
}

/// Keeps a drawn ellipse an ellipse: the shortest diameter at least a hundredth of the mean.
WidthEllipse held(double mean, Eigen::Vector2d v, double leastMean) {
    mean = std::max(mean, leastMean);
    const double most = 0.99 * mean;
    if (v.norm() > most) v *= most / v.norm();
    return {mean, v};
}

} // namespace

MetricValues metricsOf(const WidthEllipse& e) {
    const double longest = e.longestMm(), shortest = e.shortestMm();
    const Ellipse ellipse{Eigen::Vector2d::Zero(), 0.5 * longest, 0.5 * shortest, 0.0};
    const double area = areaMm2(ellipse), perimeter = perimeterMm(ellipse);
    return {area,
            perimeter,
            longest,
            shortest,
            shortest,
            0.5 * (longest + shortest),
            perimeter / std::numbers::pi,
            2.0 * std::sqrt(area / std::numbers::pi),
            1.0 - shortest / longest};
}

EllipseMoments ellipseMoments(const WidthEllipse& reported, const WidthEllipse& center,
                              const Eigen::Matrix3d& covariance) {
    static const Rule rule = normalRule();
    const Eigen::Matrix3d factor = root(covariance);
    const MetricValues told = metricsOf(reported);
    const double direction = center.directionRad();
    EllipseMoments m;
    MetricValues squares{};
    for (int i = 0; i < kNodes * kNodes * kNodes; ++i) {
        const int a = i % kNodes, b = i / kNodes % kNodes, c = i / (kNodes * kNodes);
        const double weight = rule.weight[a] * rule.weight[b] * rule.weight[c];
        const Eigen::Vector3d d = factor * Eigen::Vector3d(rule.at[a], rule.at[b], rule.at[c]);
        const WidthEllipse e =
            held(center.meanMm + d[0], center.ovalityMm + d.tail<2>(), 0.05 * center.meanMm);
        const MetricValues values = metricsOf(e);
        for (std::size_t k = 0; k < kMetricCount; ++k)
            squares[k] += weight * (values[k] - told[k]) * (values[k] - told[k]);
        const double turn = std::remainder(e.directionRad() - direction, std::numbers::pi) * 180.0 / std::numbers::pi;
        const Eigen::Vector3d off(0.5 * (e.longestMm() - reported.longestMm()),
                                  0.5 * (e.shortestMm() - reported.shortestMm()), turn);
        m.covariance += weight * off * off.transpose();
    }
    for (std::size_t k = 0; k < kMetricCount; ++k)
        m.uncertainty[k] = std::sqrt(squares[k]);
    m.directionDeg = std::sqrt(m.covariance(2, 2));
    return m;
}

} // namespace gauge::core
