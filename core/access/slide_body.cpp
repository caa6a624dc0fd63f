#include "core/access/slide_body.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gauge::core {
namespace {

struct Hindered {
    SheathStop::By by = SheathStop::By::Ahead;
    double leftMm = 0.0;
    std::size_t ray = 0; ///< on which the wall lies that stops it
};

std::size_t shortestRay(const WallRing& ring) {
    return static_cast<std::size_t>(std::min_element(ring.raysMm.begin(), ring.raysMm.end()) - ring.raysMm.begin());
}

/// What stops the body in this ring; nothing where it may pass.
std::optional<Hindered> hindranceIn(const SheathWalls& around, const WallRing& ring, const BodyLimits& limits, const BodySection& start) {
    if (ring.leastMm + std::min(0.0, limits.outwardsMm) <= 0.0) return Hindered{};
    const BodySection section = bodySection(around, ring, limits);
    using enum SheathStop::By;
    if (section.widthMm < limits.narrowestMm) return Hindered{Narrow, section.widthMm, shortestRay(ring)};
    const MovedAside moved = movedAside(section, start);
    if (moved.mm > limits.playMm()) return Hindered{Aside, section.widthMm, moved.awayFromRay};
    if (section.indentMm > limits.playMm()) return Hindered{Indented, section.widthMm, section.indentRay};
    return std::nullopt;
}

} // namespace

SheathStop slideBody(const SeatWall& wall, const SheathWalls& around, const BodyLimits& limits) {
    constexpr double kFineMm = 1e-3, kAheadShare = 0.5;
    const auto first = static_cast<std::size_t>(std::lround(-around.fromMm / around.grain.stepMm));
    SheathStop stop;
    BodySection start;
    for (std::size_t i = first; i < around.rings.size(); ++i) {
        const WallRing& ring = around.rings[i];
        stop.tMm = around.tOf(i);
        if (!ring.inBox) return stop;
        if (i == first) start = bodySection(around, ring, limits);
        auto hindered = hindranceIn(around, ring, limits, start);
        if (!hindered) continue;
        double lo = i == first ? stop.tMm : around.tOf(i - 1), hi = stop.tMm;
        WallRing where = ring;
        while (hi - lo > kFineMm) {
            const double mid = 0.5 * (lo + hi);
            WallRing between = ringAt(wall, around, mid);
            if (auto there = hindranceIn(around, between, limits, start)) {
                hi = mid;
                hindered = there;
                where = std::move(between);
            } else {
                lo = mid;
            }
        }
        // Where the lumen ends square to the line the rays shorten all at once.
        if (i != first && hindered->by != SheathStop::By::Ahead) {
            const WallRing beyond = ringAt(wall, around, hi + around.grain.stepMm);
            if (beyond.leastMm <= 0.0 || bodySection(around, beyond, limits).widthMm < kAheadShare * limits.narrowestMm)
                hindered->by = SheathStop::By::Ahead;
        }
        stop.by = hindered->by;
        stop.atOnce = i == first;
        stop.tMm = lo;
        stop.leftMm = hindered->leftMm;
        stop.contact = around.at(hi);
        if (hindered->by != SheathStop::By::Ahead)
            stop.contact = stop.contact + where.raysMm[hindered->ray] * around.towards(hindered->ray);
        return stop;
    }
    return stop;
}

} // namespace gauge::core
