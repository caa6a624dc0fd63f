// From the text of a chart file (resources/charts/chart.schema.json, format ostium-gauge/chart/1) to a
// DeviceChart.
#pragma once

#include "core/sizing/device_chart.h"

#include <string_view>

namespace gauge::core {

/// A chart and what is worth knowing about it.
struct ChartReading {
    DeviceChart chart;
    /// chart-bands-overlap, chart-bands-gap: readings that two sizes, or none, accept (touching bands are
    /// neither); chart-band-outside-compression: a size whose band accepts readings outside its own
    /// compression band; chart-invented: a demonstration chart.
    std::vector<Notice> notices;
};

/// Reads and checks a chart. Fields that it does not know are left alone.
/// @param json   the document, UTF-8.
/// @param name   of the file, for messages.
/// @errors ChartInvalid; the message names the row (by number and name) and the field, what stands there and
/// what is allowed. Version, date (YYYY-MM-DD) and source of the instructions are required.
Result<ChartReading> readChart(std::string_view json, std::string_view name);

} // namespace gauge::core
