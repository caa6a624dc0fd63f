#include "app/cli/section_json.h"

#include <cmath>

namespace gauge::app {

using nlohmann::ordered_json;

ordered_json finiteJson(double value) { return std::isfinite(value) ? ordered_json(value) : ordered_json(nullptr); }

ordered_json valueJson(const core::Estimate& e) {
    return {{"value", finiteJson(e.value)},
            {"standard_uncertainty", finiteJson(e.standardUncertainty())},
            {"components",
             {{"edge", finiteJson(e.components.edge)},
              {"plane", finiteJson(e.components.plane)},
              {"observer", finiteJson(e.components.observer)},
              {"scale", finiteJson(e.components.scale)}}}};
}

ordered_json metricsJson(const core::SectionMetrics& m) {
    return {{"area_mm2", valueJson(m.areaMm2)},
            {"perimeter_mm", valueJson(m.perimeterMm)},
            {"longest_diameter_mm", valueJson(m.longestDiameterMm)},
            {"shortest_diameter_mm", valueJson(m.shortestDiameterMm)},
            {"least_width_mm", valueJson(m.leastWidthMm)},
            {"mean_diameter_mm", valueJson(m.meanDiameterMm)},
            {"perimeter_derived_diameter_mm", valueJson(m.perimeterDerivedDiameterMm)},
            {"area_derived_diameter_mm", valueJson(m.areaDerivedDiameterMm)},
            {"eccentricity_index", valueJson(m.eccentricityIndex)}};
}

ordered_json noticesJson(const std::vector<core::Notice>& notices) {
    ordered_json list = ordered_json::array();
    for (const auto& n : notices)
        list.push_back({{"code", n.code}, {"text", n.text}});
    return list;
}

} // namespace gauge::app
