// The uncertainty of what is read off an ellipse from widths: mean squares over the normal distribution of its
// parameters (M, p, q), so that it holds for near circles too, where a first-order propagation fails.
#pragma once

#include "core/echo/width_ellipse.h"
#include "core/measure/section_metrics.h"

namespace gauge::core {

/// All section metrics of an ellipse with these diameters; exact (perimeter by core/geometry/ellipse.h).
MetricValues metricsOf(const WidthEllipse& ellipse);

struct EllipseMoments {
    MetricValues uncertainty{}; ///< root mean square deviation from the metrics of `reported`
    double directionDeg = 0.0;  ///< the same of the direction; at most 52 (known nothing about)
    /// Mean products of the deviations of (semi-major mm, semi-minor mm, direction degrees).
    Eigen::Matrix3d covariance = Eigen::Matrix3d::Zero();
};

/// @param reported  the ellipse that is reported; @param center, covariance  the fit and its spread.
/// Accuracy of the quadrature: 2 % of each uncertainty.
EllipseMoments ellipseMoments(const WidthEllipse& reported, const WidthEllipse& center,
                              const Eigen::Matrix3d& covariance);

} // namespace gauge::core
