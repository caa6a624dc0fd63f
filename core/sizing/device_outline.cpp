#include "core/sizing/device_outline.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {
namespace {

/// Median width at a depth, between its neighbours; none beyond the profile.
std::optional<double> widthAt(std::span<const ProfileWidth> profile, const PressureBand& band, double depthMm) {
    const auto next = std::lower_bound(profile.begin(), profile.end(), depthMm,
                                       [](const ProfileWidth& at, double depth) { return at.depthMm < depth; });
    if (next == profile.end())
        return std::nullopt;
    const auto i = static_cast<std::size_t>(next - profile.begin());
    if (next->depthMm == depthMm)
        return band.widths[i].medianMm;
    if (i == 0)
        return std::nullopt;
    const double share = (depthMm - profile[i - 1].depthMm) / (profile[i].depthMm - profile[i - 1].depthMm);
    return band.widths[i - 1].medianMm + share * (band.widths[i].medianMm - band.widths[i - 1].medianMm);
}

} // namespace

Result<DeviceOutline> deviceOutline(const DeviceChart& chart, const ChartSize& size, double landingMm,
                                    std::span<const ProfileWidth> profile, const PressureBand& band) {
    if (profile.size() != band.widths.size())
        return failure(ErrorCode::InvalidArgument, "Cannot draw the size: the profile has " +
                                                       std::to_string(profile.size()) + " depths and the band " +
                                                       std::to_string(band.widths.size()) + " widths.");
    DeviceOutline outline;
    outline.freeMm = size.lobeDiameterMm.value_or(size.nominalMm);
    outline.seatMm = landingMm - size.landingOffsetMm;
    outline.discMm = size.discDiameterMm;
    const double from = chart.kind == DeviceKind::Plug ? outline.seatMm : landingMm;
    const double to = size.leastDepthMm + (chart.depthFrom == DepthFrom::Ostium ? 0.0 : landingMm);
    if (!(to > from))
        return failure(ErrorCode::InvalidArgument, "Cannot draw size " + size.name +
                                                       ": its least depth ends before it begins; check the chart.");
    constexpr double kStepMm = 0.5;
    const int steps = std::max(1, static_cast<int>(std::lround((to - from) / kStepMm)));
    for (int i = 0; i <= steps; ++i) {
        const double depth = from + (to - from) * i / steps;
        outline.body.push_back({depth, std::min(outline.freeMm, widthAt(profile, band, depth).value_or(outline.freeMm))});
    }
    return outline;
}

} // namespace gauge::core
