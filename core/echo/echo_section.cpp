#include "core/echo/echo_section.h"

#include "core/echo/ellipse_moments.h"
#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kLeastUncertaintyMm = 1e-6; // weights need one; 0 is stated as "exact"

/// Chi-square that is exceeded by chance in 5 % (table in any text on statistics; beyond ten: Wilson and Hilferty).
double chiSquareAt5Percent(int freedom) {
    constexpr std::array<double, 10> table{3.841, 5.991, 7.815, 9.488, 11.070, 12.592, 14.067, 15.507, 16.919, 18.307};
    if (freedom <= 10) return table[static_cast<std::size_t>(freedom - 1)];
    const double k = freedom, z = 2.0 / (9.0 * k);
    return k * std::pow(1.0 - z + 1.6449 * std::sqrt(z), 3);
}

std::vector<AngledWidth> inSection(const ViewWidths& views, const BeamTilt& tilt) {
    std::vector<AngledWidth> widths;
    for (const auto& v : views.views) {
        const double t = v.angleDeg * kRadPerDegree, shown = sectionWidthMm(tilt, t, v.widthMm);
        widths.push_back({sectionDirectionRad(tilt, t), shown,
                          std::max(v.standardUncertaintyMm * shown / v.widthMm, kLeastUncertaintyMm)});
    }
    return widths;
}

/// Power of the length in a metric: what a relative error of the scale multiplies.
double powerOf(Metric metric) {
    return metric == Metric::Area ? 2.0 : metric == Metric::EccentricityIndex ? 0.0 : 1.0;
}

SectionMetrics estimates(const WidthEllipse& e, const EllipseMoments& moments, double scale, const std::string& method) {
    SectionMetrics m;
    const MetricValues values = metricsOf(e);
    for (std::size_t k = 0; k < kMetricCount; ++k) {
        const auto metric = static_cast<Metric>(k);
        estimateOf(m, metric) = {values[k],
                                 {.observer = moments.uncertainty[k], .scale = scale * powerOf(metric) * values[k]},
                                 method};
    }
    return m;
}

std::string methodOf(std::size_t views, OvalityVerdict verdict) {
    std::string text = "ellipse through " + std::to_string(views) + " echo widths";
    if (verdict == OvalityVerdict::Reduced) text += ", ovality corrected for noise";
    if (verdict == OvalityVerdict::Round) text += ", reported round: its ovality cannot be told from noise";
    return text;
}

void ovalityNotice(EchoSection& s, bool stated) {
    auto& notices = s.notices;
    const std::string plain = fixed(s.uncorrected.longestDiameterMm.value, 1) + " x " +
                              fixed(s.uncorrected.shortestDiameterMm.value, 1) + " mm";
    if (s.ovality.verdict == OvalityVerdict::Round)
        notices.push_back({"ovality-within-noise",
                           "The plain ellipse, " + plain + ", is no more oval than the error of reading makes a round "
                           "neck look: it is reported round, and its direction says nothing.",
                           {}});
    if (s.ovality.verdict == OvalityVerdict::Reduced)
        notices.push_back({"ovality-reduced",
                           "Part of the ovality of the plain ellipse, " + plain +
                               ", is likely error of reading and was taken off. Area- and perimeter-derived "
                               "diameters are nearly free of this.",
                           {}});
    if (s.ovality.verdict == OvalityVerdict::NotCorrected)
        notices.push_back({"ovality-uncorrected",
                           "Three widths leave nothing over to judge their error by, and none was stated: longest and "
                           "shortest diameter may look more different than they are. State the width uncertainty, or "
                           "read a fourth view.",
                           {}});
    if (!stated)
        notices.push_back({"width-uncertainty-assumed",
                           "No uncertainty of the widths was stated; " + fixed(kAssumedWidthUncertaintyMm, 1) +
                               " mm was taken, an assumption.",
                           {}});
}

void tiltNotice(EchoSection& s, const std::optional<BeamTilt>& tilt) {
    if (!tilt) return;
    s.notices.push_back({"tilt-corrected",
                         "The beam is tilted by " + fixed(tilt->tiltDeg, 0) +
                             " degrees to the appendage's axis; the directions of the widths were corrected for it.",
                         {}});
    if (tilt->tiltDeg > 45.0)
        s.notices.push_back({"tilt-large",
                             "With a tilt of more than 45 degrees a width across the appendage is hard to draw: "
                             "errors of drawing grow beyond what is stated.",
                             {}});
}

Result<void> checkOptions(const EchoSectionOptions& o) {
    if (!std::isfinite(o.scaleUncertainty) || o.scaleUncertainty < 0.0)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot measure on echo: the relative uncertainty of the scale must be 0 or more.");
    if (o.tilt && !(o.tilt->tiltDeg >= 0.0 && o.tilt->tiltDeg < 85.0 && std::isfinite(o.tilt->towardsDeg)))
        return failure(ErrorCode::InvalidArgument, "Cannot measure on echo: the beam is tilted by " +
                                                       fixed(o.tilt->tiltDeg, 0) +
                                                       " degrees to the axis; below 85 is needed.");
    return {};
}

void fillFrom(EchoSection& s, WidthEllipseFit fit, std::span<const AngledWidth> widths,
              const EchoSectionOptions& options) {
    s.residualMm = fit.rmsResidualMm;
    s.chiSquared = fit.chiSquared;
    s.freedom = fit.freedom;
    double factor = 1.0;
    if (fit.freedom > 0 && fit.chiSquared > chiSquareAt5Percent(fit.freedom)) {
        factor = fit.chiSquared / fit.freedom;
        fit.covariance *= factor;
        s.notices.push_back({"widths-disagree",
                             "The widths lie on no common ellipse within their uncertainty (residual " +
                                 fixed(s.residualMm, 1) +
                                 " mm); no single view can be blamed. Each view's agreeing width is given, and the "
                                 "uncertainties were enlarged.",
                             {}});
    }
    if (options.correctOvality) s.ovality = correctOvality(fit, widths, s.views.uncertaintyStated, factor);
    s.ellipse = corrected(fit, s.ovality, widths);
    const std::size_t n = s.views.views.size();
    const EllipseMoments moments = ellipseMoments(s.ellipse, fit.ellipse, fit.covariance);
    s.metrics = estimates(s.ellipse, moments, options.scaleUncertainty, methodOf(n, s.ovality.verdict));
    const EllipseMoments plain =
        s.ovality.factor == 1.0 ? moments : ellipseMoments(fit.ellipse, fit.ellipse, fit.covariance);
    s.uncorrected = estimates(fit.ellipse, plain, options.scaleUncertainty, methodOf(n, OvalityVerdict::AsRead));
    s.covariance = moments.covariance;
    const BeamTilt tilt = options.tilt.value_or(BeamTilt{});
    s.directionDeg = {probeAngleIn180(probeAngleRad(tilt, fit.ellipse.directionRad()) / kRadPerDegree),
                      {.observer = moments.directionDeg},
                      "direction of the longest diameter, as a probe angle"};
}

} // namespace

Result<EchoSection> measureEchoSection(std::span<const WidthReading> readings, const EchoSectionOptions& options) {
    if (const auto ok = checkOptions(options); !ok) return tl::make_unexpected(ok.error());
    auto views = averageViews(readings);
    if (!views) return tl::make_unexpected(views.error());
    EchoSection s;
    s.views = std::move(*views);
    s.notices = s.views.notices;
    const BeamTilt tilt = options.tilt.value_or(BeamTilt{});
    const auto widths = inSection(s.views, tilt);
    const auto fit = fitWidthEllipse(widths);
    if (!fit) return tl::make_unexpected(fit.error());
    fillFrom(s, *fit, widths, options);
    s.wouldAgreeMm = agreeingWidthsMm(widths);
    for (std::size_t i = 0; i < s.wouldAgreeMm.size(); ++i) // back to how the view shows it
        if (s.wouldAgreeMm[i]) *s.wouldAgreeMm[i] *= s.views.views[i].widthMm / widths[i].widthMm;
    ovalityNotice(s, s.views.uncertaintyStated);
    tiltNotice(s, options.tilt);
    return s;
}

} // namespace gauge::core
