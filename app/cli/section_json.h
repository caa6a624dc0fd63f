// What the command line's JSON documents share: values, sections, notices.
#pragma once

#include "core/measure/section.h"
#include "core/result.h"

#include <nlohmann/json.hpp>
#include <vector>

namespace gauge::app {

/// JSON knows no NaN: what is not finite is null.
nlohmann::ordered_json finiteJson(double value);

/// {"value", "standard_uncertainty", "components": {"edge", "plane", "observer", "scale"}}
nlohmann::ordered_json valueJson(const core::Estimate& estimate);

/// The metrics of a section as values, without its contour.
nlohmann::ordered_json metricsJson(const core::SectionMetrics& metrics);

/// [{"code", "text"}]
nlohmann::ordered_json noticesJson(const std::vector<core::Notice>& notices);

} // namespace gauge::app
