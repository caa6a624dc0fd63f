#include "core/access/sheath_walls.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {

WallRing ringAt(const SeatWall& wall, const SheathWalls& around, double tMm) {
    const PatientPoint axis = around.at(tMm);
    WallRing ring;
    ring.inBox = wall.holds(axis);
    ring.leastMm = around.reachMm;
    ring.raysMm.reserve(around.directions.size());
    for (std::size_t i = 0; i < around.directions.size(); ++i) {
        const WallRay ray = rayToWall(wall, axis, around.towards(i), around.reachMm);
        // Beyond the box nothing is known: as wide as anybody looks.
        ring.raysMm.push_back(ray.open ? around.reachMm : ray.mm);
        if (!ray.open) ring.leastMm = std::min(ring.leastMm, ray.mm);
    }
    return ring;
}

SheathWalls lookAround(const SeatWall& wall, const PatientPoint& origin, const PatientVector& direction, double beforeMm,
                       double reachMm, const RingGrain& grain) {
    SheathWalls around;
    around.frame = frameOf(Plane{origin, direction});
    around.grain = grain;
    around.reachMm = reachMm;
    for (int i = 0; i < grain.rays; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / grain.rays;
        around.directions.emplace_back(std::cos(angle), std::sin(angle));
    }
    const auto before = static_cast<int>(std::ceil(beforeMm / grain.stepMm));
    around.fromMm = -before * grain.stepMm;
    const auto most = static_cast<std::size_t>(before) +
                      static_cast<std::size_t>(SheathWalls::kFarthestMm / grain.stepMm) + 1;
    for (std::size_t i = 0; i < most; ++i) {
        around.rings.push_back(ringAt(wall, around, around.tOf(i)));
        const WallRing& ring = around.rings.back();
        if (around.tOf(i) >= 0.0 && (!ring.inBox || ring.leastMm <= 0.0)) break;
    }
    return around;
}

} // namespace gauge::core
