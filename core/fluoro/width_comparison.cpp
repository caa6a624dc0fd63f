#include "core/fluoro/width_comparison.h"

#include <cmath>
#include <cstdio>

namespace gauge::core {
namespace {

std::string withUncertainty(double value, double uncertainty, const char* form) {
    char text[96];
    std::snprintf(text, sizeof text, form, value, uncertainty);
    return text;
}

} // namespace

Result<WidthComparison> compareWidth(const Estimate& measured, const CArmAngles& angles,
                                     std::span<const PatientPoint> contour,
                                     const PredictionOptions& options) {
    const double u = measured.standardUncertainty();
    if (!std::isfinite(measured.value) || !std::isfinite(u))
        return failure(ErrorCode::NonFinite,
                       "Cannot compare the width: the measured one is no finite number.");
    if (!(measured.value > 0.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot compare the width: the measured one is not above zero.");
    auto predicted = predictedWidth(contour, angles, options);
    if (!predicted) return tl::make_unexpected(predicted.error());
    WidthComparison out;
    out.angles = angles;
    out.measured = measured;
    out.predicted = std::move(*predicted);
    const double uPredicted = out.predicted.standardUncertainty();
    out.differenceMm = measured.value - out.predicted.value;
    out.standardUncertaintyMm = std::hypot(u, uPredicted);
    out.unexplained =
        std::abs(out.differenceMm - out.biasMm) > 2.0 * std::hypot(out.standardUncertaintyMm, out.biasSdMm);
    out.text = "At " + words(angles) + " the fluoroscopy reads " +
               withUncertainty(measured.value, u, "%.1f ± %.1f mm") + ", the CT contour predicts " +
               withUncertainty(out.predicted.value, uPredicted, "%.1f ± %.1f mm") + ": " +
               withUncertainty(out.differenceMm, out.standardUncertaintyMm, "%+.1f ± %.1f mm") +
               (out.unexplained ? ", more than the modality explains." : ", as the modality explains.");
    return out;
}

} // namespace gauge::core
