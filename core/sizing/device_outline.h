// How a size of a chart would lie in the appendage, as far as the chart's dimensions say: for drawing, not for judging
// (size_fit.h judges).
//
//      disc  ┌┐                        width
//            ││   ┌────────────┐
//            └┘   │   body     │
//   ───────── o ──┴────────────┴──────► depth along the axis
//         seat    landing     end
#pragma once

#include "core/pressure/profile_bands.h"
#include "core/sizing/device_chart.h"

#include <optional>
#include <span>
#include <vector>

namespace gauge::core {

struct DeviceOutline {
    struct Place {
        double depthMm = 0.0;
        double widthMm = 0.0;
    };
    std::vector<Place> body; ///< width of plug or lobe, compressed to the appendage, from near to far
    double freeMm = 0.0;     ///< its width without compression
    /// Disc of a lobe-and-disc, where the chart gives its width; it stands before the seat, `kDrawnDiscMm` thick.
    std::optional<double> discMm;
    double seatMm = 0.0; ///< depth of the landing zone less the size's landing offset
    /// Charts give no thickness: drawn so thick.
    static constexpr double kDrawnDiscMm = 1.5;
};

/// The outline of `size` with its landing plane at `landingMm`: a plug reaches from its seat, a lobe from the landing
/// plane, to the least depth that the chart asks for (from the ostium or from the landing plane, as the chart measures it). Where the appendage is narrower than the free width it is as
/// wide as the appendage.
/// @param profile  widths at the pressure of interest, ascending by depth, median in `band`; beyond its ends the free width.
/// @errors InvalidArgument when profile and band have different lengths, or the least depth leaves nothing to draw.
Result<DeviceOutline> deviceOutline(const DeviceChart& chart, const ChartSize& size, double landingMm,
                                    std::span<const ProfileWidth> profile, const PressureBand& band);

} // namespace gauge::core
