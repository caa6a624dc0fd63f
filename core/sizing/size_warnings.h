// What speaks against one size, in sentences with numbers. Codes: undersized-at-highest-pressure,
// over-compressed, depth-short, depth-lower-bound, disc-does-not-cover, too-near, folded-placement.
#pragma once

#include "core/sizing/size_fit.h"

namespace gauge::core {

/// A chance from which on a sentence is due.
inline constexpr double kWarningChance = 0.1;

/// @param widths  those that the fit was made with.
std::vector<Notice> sizeWarnings(const SizeFit& fit, const ChartSize& size, const DeviceChart& chart,
                                 const WidthsAt& widths, const AppendageFacts& facts,
                                 const DepthKnown& depth);

} // namespace gauge::core
