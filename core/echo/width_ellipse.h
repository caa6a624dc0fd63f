// The ellipse whose chords through its centre are the widths seen at known angles.
//
//   1/w^2 = A + B cos 2t + C sin 2t     linear in (A, B, C); three angles determine it, four leave one freedom.
//
// Parameters of the fit: mean diameter M and half the difference of the diameters as a vector,
//   (p, q) = h (cos 2d, sin 2d),   longest M + h, shortest M - h, d = direction of the longest,
// because they are regular at the circle, where longest, shortest and direction are not:
//   w = (M^2 - h^2) / sqrt(M^2 + h^2 - 2 M (p cos 2t + q sin 2t)).
#pragma once

#include "core/result.h"

#include <Eigen/Core>
#include <optional>
#include <span>
#include <vector>

namespace gauge::core {

/// A width at an angle in the section's plane.
struct AngledWidth {
    double angleRad = 0.0;
    double widthMm = 0.0;
    double standardUncertaintyMm = 1.0; ///< > 0: the weight
};

/// An ellipse about the axis point; diameters, mm.
struct WidthEllipse {
    double meanMm = 0.0;                          ///< M
    Eigen::Vector2d ovalityMm{0.0, 0.0};          ///< (p, q)

    double longestMm() const { return meanMm + ovalityMm.norm(); }
    double shortestMm() const { return meanMm - ovalityMm.norm(); }
    double directionRad() const; ///< of the longest diameter, [0, pi); 0 for a circle
    double widthMm(double angleRad) const;
};

struct WidthEllipseFit {
    WidthEllipse ellipse;
    Eigen::Matrix3d covariance = Eigen::Matrix3d::Zero(); ///< of (M, p, q), mm2, from the stated uncertainties
    double chiSquared = 0.0;
    int freedom = 0; ///< number of widths - 3
    double rmsResidualMm = 0.0;
};

/// Sum over the widths of ((width - ellipse) / uncertainty)^2.
double chiSquared(const WidthEllipse& ellipse, std::span<const AngledWidth> widths);

/// Weighted least squares in widths: linear in 1/w^2 first (exact for three), then Gauss-Newton, which weighs the
/// noise where it arises.
/// @param widths  at least 3, at different angles modulo pi.
/// @errors TooFewPoints; NotAnEllipse when the curve through the widths is open (A^2 <= B^2 + C^2 or A <= 0), or no
/// ellipse comes within a quarter of the mean width; Degenerate when the angles are too close to tell a size.
/// Accuracy: exact chords give the diameters to 1e-11 of their size.
Result<WidthEllipseFit> fitWidthEllipse(std::span<const AngledWidth> widths);

/// The ellipse of this ovality whose mean diameter fits the widths best (weighted least squares in M alone).
/// Precondition: the norm of `ovalityMm` is at most that of `start`, a fit to the same widths.
WidthEllipse withOvality(const WidthEllipse& start, const Eigen::Vector2d& ovalityMm,
                         std::span<const AngledWidth> widths);

/// For each width, the one that would agree with all others: the chord, at its angle, of the ellipse through the
/// others. For 0/45/90/135 degrees that is the relation 1/w0^2 + 1/w90^2 = 1/w45^2 + 1/w135^2. Empty where fewer
/// than three others remain or these lie on no ellipse.
std::vector<std::optional<double>> agreeingWidthsMm(std::span<const AngledWidth> widths);

} // namespace gauge::core
