// A width read on a fluoroscopy beside the width that the CT contour predicts at the same angles.
#pragma once

#include "core/fluoro/projected_width.h"
#include "core/measure/estimate.h"
#include "core/result.h"

#include <span>
#include <string>

namespace gauge::core {

/// Fluoroscopic width against the CT contour's at the same angles; an assumption.
inline constexpr double kFluoroBiasMm = -0.5;
inline constexpr double kFluoroBiasSdMm = 2.0;

struct WidthComparison {
    CArmAngles angles;
    Estimate measured;                  ///< on the fluoroscopy
    Estimate predicted;                 ///< by the CT contour
    double differenceMm = 0.0;          ///< measured - predicted
    double standardUncertaintyMm = 0.0; ///< of the difference: both in quadrature
    double biasMm = kFluoroBiasMm;      ///< what the modality alone explains
    double biasSdMm = kFluoroBiasSdMm;
    /// The difference less the bias lies beyond twice all uncertainties together: size, pressure, phase or
    /// place differ.
    bool unexplained = false;
    std::string text; ///< one sentence for a table or a report
};

/// @errors those of predictedWidth(); NonFinite; InvalidArgument for a measured width that is not above zero.
Result<WidthComparison> compareWidth(const Estimate& measured, const CArmAngles& angles,
                                     std::span<const PatientPoint> contour,
                                     const PredictionOptions& options = {});

} // namespace gauge::core
