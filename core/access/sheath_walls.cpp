#include "core/access/sheath_walls.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

std::vector<PatientVector> rayDirections(const SectionFrame& frame, int rays) {
    std::vector<PatientVector> directions;
    directions.reserve(static_cast<std::size_t>(rays));
    for (int i = 0; i < rays; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / rays;
        directions.push_back({std::cos(angle) * frame.u.mm + std::sin(angle) * frame.v.mm});
    }
    return directions;
}

/// The shortest ray at t, rays no longer than `radiusMm`: nothing where none of them meets the wall.
std::optional<std::pair<double, std::size_t>> shortestWithin(const SeatWall& wall, const SheathWalls& around, double tMm,
                                                             double radiusMm, const std::vector<PatientVector>& directions) {
    const PatientPoint axis = around.at(tMm);
    std::optional<std::pair<double, std::size_t>> shortest;
    for (std::size_t i = 0; i < directions.size(); ++i) {
        const double within = shortest ? std::min(radiusMm, shortest->first) : radiusMm;
        const WallRay ray = rayToWall(wall, axis, directions[i], within);
        if (!ray.open && ray.mm < within) shortest = {ray.mm, i};
    }
    return shortest;
}

} // namespace

std::optional<double> SheathWalls::areaRadiusMm(double tMm) const {
    const double place = (tMm - fromMm) / grain.stepMm;
    if (rings.empty() || !(place >= 0.0) || place > static_cast<double>(rings.size() - 1)) return std::nullopt;
    const auto low = std::min(static_cast<std::size_t>(place), rings.size() - 1);
    const auto high = std::min(low + 1, rings.size() - 1);
    const double share = place - static_cast<double>(low);
    return rings[low].areaRadiusMm + share * (rings[high].areaRadiusMm - rings[low].areaRadiusMm);
}

SheathWalls lookAround(const SeatWall& wall, const PatientPoint& origin, const PatientVector& direction, double beforeMm,
                       double reachMm, const RingGrain& grain) {
    SheathWalls around;
    around.frame = frameOf(Plane{origin, direction});
    around.grain = grain;
    around.reachMm = reachMm;
    const auto before = static_cast<int>(std::ceil(beforeMm / grain.stepMm));
    around.fromMm = -before * grain.stepMm;
    const auto directions = rayDirections(around.frame, grain.rays);
    const auto most = static_cast<std::size_t>(before) +
                      static_cast<std::size_t>(SheathWalls::kFarthestMm / grain.stepMm) + 1;
    for (std::size_t i = 0; i < most; ++i) {
        const PatientPoint axis = around.at(around.tOf(i));
        WallRing ring;
        ring.inBox = wall.holds(axis);
        ring.leastMm = reachMm;
        double squares = 0.0;
        for (const PatientVector& d : directions) {
            const WallRay ray = rayToWall(wall, axis, d, reachMm);
            // Beyond the box nothing is known: as wide as anybody looks.
            const double radius = ray.open ? reachMm : ray.mm;
            if (!ray.open) ring.leastMm = std::min(ring.leastMm, radius);
            squares += radius * radius;
        }
        ring.areaRadiusMm = std::sqrt(squares / grain.rays);
        around.rings.push_back(ring);
        if (around.tOf(i) >= 0.0 && (!ring.inBox || ring.leastMm <= 0.0)) break;
    }
    return around;
}

SheathStop slideDisc(const SeatWall& wall, const SheathWalls& around, double radiusMm) {
    constexpr double kFineMm = 1e-3, kAheadShare = 0.5;
    const auto first = static_cast<std::size_t>(std::lround(-around.fromMm / around.grain.stepMm));
    const auto directions = rayDirections(around.frame, around.grain.rays);
    SheathStop stop;
    for (std::size_t i = first; i < around.rings.size(); ++i) {
        const WallRing& ring = around.rings[i];
        stop.tMm = around.tOf(i);
        if (!ring.inBox) return stop;
        if (ring.leastMm >= radiusMm) continue;
        double lo = i == first ? stop.tMm : around.tOf(i - 1), hi = stop.tMm;
        while (hi - lo > kFineMm) {
            const double mid = 0.5 * (lo + hi);
            (shortestWithin(wall, around, mid, radiusMm, directions) ? hi : lo) = mid;
        }
        stop.by = i == first ? SheathStop::By::NoRoom : SheathStop::By::Wall;
        stop.tMm = lo;
        const auto touched = shortestWithin(wall, around, hi, radiusMm, directions);
        const double aside = touched ? touched->first : 0.0;
        stop.contact = around.at(hi) + aside * directions[touched ? touched->second : 0];
        // Where the lumen ends square to the line the rays shorten all at once.
        const auto beyond = shortestWithin(wall, around, hi + around.grain.stepMm, radiusMm, directions);
        stop.ahead = (beyond ? beyond->first : 0.0) < kAheadShare * radiusMm;
        return stop;
    }
    return stop;
}

} // namespace gauge::core
