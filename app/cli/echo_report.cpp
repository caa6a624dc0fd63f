#include "app/cli/echo_report.h"

#include "app/cli/section_json.h"
#include "app/format/quantity.h"
#include "core/echo/view_effects.h"

#include <sstream>

namespace gauge::app {
namespace {

using nlohmann::ordered_json;

std::string words(const core::Estimate& e, Unit unit) { return estimate(e, unit).toStdString(); }
std::string words(double value, Unit unit) { return quantity(value, unit).toStdString(); }

const char* name(core::OvalityVerdict verdict) {
    switch (verdict) {
    case core::OvalityVerdict::AsRead: return "as-read";
    case core::OvalityVerdict::Reduced: return "reduced";
    case core::OvalityVerdict::Round: return "round";
    case core::OvalityVerdict::NotCorrected: break;
    }
    return "not-corrected";
}

ordered_json covarianceJson(const Eigen::Matrix3d& c) {
    ordered_json rows = ordered_json::array();
    for (int i = 0; i < 3; ++i)
        rows.push_back({finiteJson(c(i, 0)), finiteJson(c(i, 1)), finiteJson(c(i, 2))});
    return rows;
}

struct Largest {
    const core::ViewWidth* view;
    core::Shortfall shortfall;
};

/// The largest of the views, and how far such a one falls short of the longest diameter of this ellipse.
Largest largestOf(const core::EchoSection& s) {
    Largest l{&s.views.views.front(), {}};
    std::vector<double> angles;
    for (const auto& v : s.views.views) {
        angles.push_back(v.angleDeg);
        if (v.widthMm > l.view->widthMm) l.view = &v;
    }
    l.shortfall = core::expectedShortfall(s.ellipse.longestMm(), s.ellipse.shortestMm(), angles);
    return l;
}

ordered_json largestJson(const core::EchoSection& s) {
    const Largest l = largestOf(s);
    return {{"value_mm", finiteJson(l.view->widthMm)},
            {"standard_uncertainty_mm", finiteJson(l.view->standardUncertaintyMm)},
            {"at_deg", finiteJson(l.view->angleDeg)},
            {"expected_shortfall_mm", finiteJson(l.shortfall.meanMm)},
            {"greatest_shortfall_mm", finiteJson(l.shortfall.greatestMm)}};
}

ordered_json agreeingJson(const core::EchoSection& s, const std::vector<std::string>& typedAngles) {
    ordered_json json = ordered_json::object();
    for (std::size_t i = 0; i < typedAngles.size(); ++i) {
        const auto& width = s.wouldAgreeMm[s.views.viewOfReading[i]];
        json[typedAngles[i]] = width ? finiteJson(*width) : ordered_json(nullptr);
    }
    return json;
}

} // namespace

std::string echoJson(const core::EchoSection& s, const std::vector<std::string>& typedAngles) {
    const ordered_json document{
        {"format", "ostium-gauge/echo/1"},
        {"section", metricsJson(s.metrics)},
        {"direction_deg", finiteJson(s.directionDeg.value)},
        {"direction_standard_uncertainty_deg", finiteJson(s.directionDeg.standardUncertainty())},
        {"residual_mm", finiteJson(s.residualMm)},
        {"covariance", covarianceJson(s.covariance)},
        {"covariance_of", {"semi_major_mm", "semi_minor_mm", "direction_deg"}},
        {"would_agree_mm", agreeingJson(s, typedAngles)},
        {"ovality", {{"verdict", name(s.ovality.verdict)}, {"noise_ratio", finiteJson(s.ovality.noiseRatio)}}},
        {"largest_of_views", largestJson(s)},
        {"uncorrected", metricsJson(s.uncorrected)},
        {"notices", noticesJson(s.notices)}};
    return document.dump(1, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

std::string echoSummary(const core::EchoSection& s) {
    const auto& m = s.metrics;
    std::ostringstream out;
    out << "Ellipse through " << s.views.views.size() << " views:\n"
        << "    longest " << words(m.longestDiameterMm, Unit::Millimetre) << ", shortest "
        << words(m.shortestDiameterMm, Unit::Millimetre) << ", area " << words(m.areaMm2, Unit::SquareMillimetre)
        << "\n    perimeter-derived " << words(m.perimeterDerivedDiameterMm, Unit::Millimetre) << ", area-derived "
        << words(m.areaDerivedDiameterMm, Unit::Millimetre) << "\n    longest seen at probe angle "
        << words(s.directionDeg, Unit::Degree) << ", residual " << words(s.residualMm, Unit::Millimetre) << '\n';
    for (std::size_t i = 0; i < s.views.views.size(); ++i) {
        const auto& v = s.views.views[i];
        out << "    at " << words(v.angleDeg, Unit::Degree) << ": read " << words(v.widthMm, Unit::Millimetre);
        if (v.readings > 1)
            out << " (mean of " << v.readings << ", spread " << words(*v.spreadMm, Unit::Millimetre) << ")";
        if (s.wouldAgreeMm[i]) out << "; " << words(*s.wouldAgreeMm[i], Unit::Millimetre) << " would agree with the others";
        out << '\n';
    }
    const Largest l = largestOf(s);
    out << "    largest of the views " << words(l.view->widthMm, Unit::Millimetre)
        << ", a quantity of its own: such views miss the longest diameter of this ellipse by "
        << words(l.shortfall.meanMm, Unit::Millimetre) << " on average, up to "
        << words(l.shortfall.greatestMm, Unit::Millimetre) << '\n';
    for (const auto& n : s.notices)
        out << "Note: " << n.text << '\n';
    out << "Each value is given with its standard uncertainty.\n"
           "Research and teaching software, not a medical device; not for sole use in clinical decisions.\n";
    return out.str();
}

} // namespace gauge::app
