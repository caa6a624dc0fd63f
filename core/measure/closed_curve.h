// A smooth closed curve through noisy edge points: truncated elliptic Fourier series whose order follows from the
// noise. A polygon through the points themselves would be too long: noise folds the perimeter.
#pragma once

#include <Eigen/Core>
#include <span>
#include <vector>

namespace gauge::core {

/// x(t), y(t) = sum over m <= order of cosine and sine terms, t in [0, 1).
class ClosedCurve {
public:
    /// Least squares fit to points taken as equally spaced in t.
    /// @param points  at least 2 * order + 1, section coordinates, mm.
    static ClosedCurve fit(std::span<const Eigen::Vector2d> points, int order);

    Eigen::Vector2d at(double t) const;
    /// Derivative by t; counter-clockwise curves have the outside on its right.
    Eigen::Vector2d tangentAt(double t) const;
    Eigen::Vector2d secondAt(double t) const;
    /// Both at once.
    struct Derivatives {
        Eigen::Vector2d tangent, second;
    };
    Derivatives derivativesAt(double t) const;
    /// `count` points at equal steps of t.
    std::vector<Eigen::Vector2d> sample(std::size_t count) const;
    int order() const { return m_order; }

private:
    friend ClosedCurve smoothClosedCurve(std::span<const Eigen::Vector2d> points, double noiseLengthMm, double finestMm);

    int m_order = 0;
    Eigen::Matrix2Xd m_cosine; // column m: coefficient of cos(2 pi m t); column 0 the mean
    Eigen::Matrix2Xd m_sine;
};

/// The curve of the order that a corrected Akaike criterion prefers.
/// @param points  equally spaced edge points, at least 16.
/// @param noiseLengthMm  length over which errors of neighbouring points are alike; the perimeter divided by it is
/// the number of independent points.
/// @param finestMm  no wave shorter than this is let in.
ClosedCurve smoothClosedCurve(std::span<const Eigen::Vector2d> points, double noiseLengthMm, double finestMm);

} // namespace gauge::core
