// What a device chart says of a size, as the limits of a release.
#pragma once

#include "core/release/release_check.h"
#include "core/sizing/device_chart.h"

namespace gauge::core {

/// Kind, nominal size, compression band and least clearances of the chart (basis: Chart); what the chart is silent about
/// keeps its default and that default's basis.
ReleaseLimits limitsFrom(const DeviceChart& chart, const ChartSize& size);

} // namespace gauge::core
