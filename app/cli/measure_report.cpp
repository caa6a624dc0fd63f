#include "app/cli/measure_report.h"

#include "app/cli/section_json.h"
#include "app/format/quantity.h"

#include <nlohmann/json.hpp>
#include <sstream>

namespace gauge::app {
namespace {

using nlohmann::ordered_json;

const auto finite = finiteJson;

ordered_json triple(const Eigen::Vector3d& v) { return {finite(v.x()), finite(v.y()), finite(v.z())}; }

ordered_json sectionJson(const core::Section& section) {
    ordered_json contour = ordered_json::array();
    for (const auto& p : section.contour)
        contour.push_back(triple(section.frame.patientFromSection(p).mm));
    ordered_json json = metricsJson(section.metrics);
    json["contour_lps_mm"] = std::move(contour);
    return json;
}

ordered_json seriesJson(const dicomio::CtVolume& ct) {
    return {{"uid", ct.seriesUid},
            {"phase_percent", ct.phasePercent ? finite(*ct.phasePercent) : ordered_json(nullptr)},
            {"phase_label", ct.phaseLabel},
            {"spacing_mm", triple(ct.spacingMm)},
            {"tilt_deg", finite(ct.tiltDeg)},
            {"frame_of_reference_uid", ct.volume->frameOfReferenceUid()},
            {"notices", noticesJson(ct.notices)}};
}

ordered_json ostiumJson(const core::Ostium& ostium) {
    return {{"center_lps_mm", triple(ostium.section.center.mm)},
            {"normal_lps", triple(ostium.section.frame.normal.mm)},
            {"proposed", ostium.proposed},
            {"confidence", ostium.confidence ? finite(*ostium.confidence) : ordered_json(nullptr)},
            {"section", sectionJson(ostium.section)}};
}

ordered_json landingJson(const core::LandingZone& zone) {
    return {{"kind", zone.kind == core::LandingKind::Plug ? "plug" : "axis"},
            {"depth_mm", finite(zone.depthMm)},
            {"center_lps_mm", triple(zone.section.center.mm)},
            {"normal_lps", triple(zone.section.frame.normal.mm)},
            {"section", sectionJson(zone.section)},
            {"straight_depth_mm", valueJson(zone.straightDepthMm)}};
}

ordered_json enhancementJson(const core::Enhancement& e) {
    const auto optional = [](const std::optional<double>& v) { return v ? finite(*v) : ordered_json(nullptr); };
    return {{"atrium_hu", finite(e.atriumHu)},
            {"appendage_hu", finite(e.appendageHu)},
            {"tip_hu", finite(e.tipHu)},
            {"aorta_hu", optional(e.aortaHu)},
            {"tip_to_aorta", optional(e.tipToAorta)}};
}

std::string words(const core::Estimate& e, Unit unit) { return estimate(e, unit).toStdString(); }

void sectionLines(std::ostream& out, const core::Section& section) {
    const auto& m = section.metrics;
    out << "    longest " << words(m.longestDiameterMm, Unit::Millimetre) << ", shortest "
        << words(m.shortestDiameterMm, Unit::Millimetre) << ", area " << words(m.areaMm2, Unit::SquareMillimetre)
        << "\n    perimeter-derived " << words(m.perimeterDerivedDiameterMm, Unit::Millimetre) << ", area-derived "
        << words(m.areaDerivedDiameterMm, Unit::Millimetre) << '\n';
}

} // namespace

std::string measureJson(const dicomio::CtVolume& ct, const core::AppendageMeasurement& m) {
    ordered_json axis = ordered_json::array();
    for (const auto& p : m.axis.points)
        axis.push_back(triple(p.mm));
    ordered_json landing = ordered_json::array();
    for (const auto& zone : m.landingZones)
        landing.push_back(landingJson(zone));
    ordered_json profile = ordered_json::array();
    for (const auto& p : m.profile)
        profile.push_back({{"s_mm", finite(p.sMm)}, {"section", sectionJson(p.section)}});
    const ordered_json document{
        {"format", "ostium-gauge/measure/1"},
        {"series", seriesJson(ct)},
        {"ostium", ostiumJson(m.ostium)},
        {"axis", {{"points_lps_mm", std::move(axis)}, {"length_mm", finite(m.axis.lengthMm)}}},
        {"landing_zones", std::move(landing)},
        {"depth",
         {{"along_axis_mm", valueJson(m.depthAlongAxisMm)},
          {"from_ostium_plane_mm", valueJson(m.depthFromOstiumPlaneMm)}}},
        {"volume_ml", valueJson(m.volumeMl)},
        {"turn", m.turn ? ordered_json{{"angle_deg", valueJson(m.turn->angleDeg)}, {"at_mm", valueJson(m.turn->atMm)}}
                        : ordered_json(nullptr)},
        {"enhancement", enhancementJson(m.enhancement)},
        {"profile", std::move(profile)},
        {"notices", noticesJson(m.notices)}};
    return document.dump(1, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

std::string measureSummary(const dicomio::CtVolume& ct, const core::AppendageMeasurement& m) {
    std::ostringstream out;
    out << "Series " << ct.seriesUid << ", " << ct.phaseLabel << "\nOstium" << (m.ostium.proposed ? " (proposal)" : "")
        << ":\n";
    sectionLines(out, m.ostium.section);
    for (const auto& zone : m.landingZones) {
        out << (zone.kind == core::LandingKind::Plug ? "Plug plane " : "Landing zone ")
            << quantity(zone.depthMm, Unit::Millimetre).toStdString()
            << (zone.kind == core::LandingKind::Plug ? " beyond the ridge:\n" : " beyond the ostium:\n");
        sectionLines(out, zone.section);
        out << "    straight depth " << words(zone.straightDepthMm, Unit::Millimetre) << '\n';
    }
    out << "Depth along the axis " << words(m.depthAlongAxisMm, Unit::Millimetre) << ", from the ostium plane "
        << words(m.depthFromOstiumPlaneMm, Unit::Millimetre) << "\nVolume beyond the ostium "
        << words(m.volumeMl, Unit::Millilitre) << '\n';
    if (m.turn)
        out << "Turn " << words(m.turn->angleDeg, Unit::Degree) << " at " << words(m.turn->atMm, Unit::Millimetre)
            << '\n';
    for (const auto& n : ct.notices)
        out << "Note: " << n.text << '\n';
    for (const auto& n : m.notices)
        out << "Note: " << n.text << '\n';
    out << "Each value is given with its standard uncertainty. Research and teaching software, not a medical device; "
           "not for sole use in clinical decisions.\n";
    return out.str();
}

} // namespace gauge::app
