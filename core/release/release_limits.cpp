#include "core/release/release_limits.h"

namespace gauge::core {

ReleaseLimits limitsFrom(const DeviceChart& chart, const ChartSize& size) {
    ReleaseLimits l;
    l.hasDisc = chart.kind == DeviceKind::LobeAndDisc;
    l.nominalMm = size.nominalMm;
    l.compressionPercent = {size.compressionPercent.lo, size.compressionPercent.hi, RangeBasis::Chart};
    for (const auto& [structure, least] : chart.leastClearanceMm) {
        const ReleaseRange range{least, std::nullopt, RangeBasis::Chart};
        switch (structure) {
        case Structure::CircumflexArtery: l.circumflexMm = range; break;
        case Structure::Ridge: l.ridgeMm = range; break;
        case Structure::PulmonaryArtery: l.pulmonaryArteryMm = range; break;
        case Structure::MitralAnnulus: l.mitralAnnulusMm = range; break;
        }
    }
    return l;
}

} // namespace gauge::core
