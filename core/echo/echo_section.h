// A section measured from echo widths: ellipse, section metrics with uncertainty, direction, residual, and for each
// view the width that would agree with the others.
#pragma once

#include "core/echo/beam_tilt.h"
#include "core/echo/ovality.h"
#include "core/echo/width_reading.h"
#include "core/measure/section.h"

#include <optional>
#include <span>
#include <vector>

namespace gauge::core {

struct EchoSectionOptions {
    /// Relative standard uncertainty of the image's millimetre (0.01 = 1 %); becomes the component `scale`.
    double scaleUncertainty = 0.0;
    bool correctOvality = true;
    /// Beam against the appendage's axis, where CT or the views tell it; directions are then corrected (beam_tilt.h).
    std::optional<BeamTilt> tilt;
};

struct EchoSection {
    SectionMetrics metrics;          ///< of `ellipse`
    WidthEllipse ellipse;            ///< reported: ovality corrected for noise
    SectionMetrics uncorrected;      ///< of the plain fit
    OvalityCorrection ovality;
    Estimate directionDeg;           ///< of the longest diameter, as a probe angle in [0, 180)
    /// Of (semi-major mm, semi-minor mm, direction degrees) about the reported values.
    Eigen::Matrix3d covariance = Eigen::Matrix3d::Zero();
    double residualMm = 0.0;         ///< root mean square of width - ellipse over the views; 0 for three
    double chiSquared = 0.0;         ///< residuals over the stated uncertainties
    int freedom = 0;                 ///< views - 3
    ViewWidths views;
    std::vector<std::optional<double>> wouldAgreeMm; ///< for each of `views.views`
    std::vector<Notice> notices;
};

/// @errors those of averageViews and fitWidthEllipse; InvalidArgument for options out of range.
/// Where the views disagree more than their uncertainties allow (5 %), these are enlarged to what the residual shows.
/// Accuracy: exact chords of a clearly oval ellipse, and of any ellipse seen in four views or more, give its axes to
/// 1e-9 mm. Bias and coverage under noise: DEVELOPERS.md, "Accuracy".
Result<EchoSection> measureEchoSection(std::span<const WidthReading> readings, const EchoSectionOptions& options = {});

} // namespace gauge::core
