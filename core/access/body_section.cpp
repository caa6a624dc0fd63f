#include "core/access/body_section.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

using StarPoints = std::vector<Eigen::Vector2d>;

double turnOf(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

/// Ends of the rays, cut at `mostMm`.
void endsOf(const SheathWalls& around, const WallRing& ring, double outwardsMm, double mostMm, StarPoints& ends) {
    ends.resize(ring.raysMm.size());
    for (std::size_t i = 0; i < ends.size(); ++i)
        ends[i] = std::clamp(ring.raysMm[i] + outwardsMm, 0.0, mostMm) * around.directions[i];
}

/// Indices of the hull of points in the order of their angles about 0, which lies inside. Begins and ends at the farthest.
void hullOfStar(const StarPoints& ends, std::vector<std::size_t>& hull) {
    const std::size_t count = ends.size();
    std::size_t first = 0;
    for (std::size_t i = 1; i < count; ++i)
        if (ends[i].squaredNorm() > ends[first].squaredNorm()) first = i;
    hull.clear();
    for (std::size_t k = 0; k <= count; ++k) {
        const std::size_t i = (first + k) % count;
        while (hull.size() >= 2 && turnOf(ends[hull[hull.size() - 2]], ends[hull.back()], ends[i]) <= 0.0)
            hull.pop_back();
        hull.push_back(i);
    }
}

double measureOf(BodyMeasure by, const StarPoints& ends, const std::vector<std::size_t>& hull) {
    double perimeter = 0.0, twice = 0.0, longest = 0.0;
    switch (by) {
    case BodyMeasure::PerimeterDerived:
        for (std::size_t k = 0; k + 1 < hull.size(); ++k)
            perimeter += (ends[hull[k + 1]] - ends[hull[k]]).norm();
        return perimeter / std::numbers::pi;
    case BodyMeasure::AreaDerived:
        for (std::size_t k = 0; k + 1 < hull.size(); ++k)
            twice += ends[hull[k]].x() * ends[hull[k + 1]].y() - ends[hull[k]].y() * ends[hull[k + 1]].x();
        return 2.0 * std::sqrt(std::max(0.0, 0.5 * twice) / std::numbers::pi);
    case BodyMeasure::Longest:
        break;
    }
    for (std::size_t a = 0; a + 1 < hull.size(); ++a)
        for (std::size_t b = a + 1; b + 1 < hull.size(); ++b)
            longest = std::max(longest, (ends[hull[a]] - ends[hull[b]]).squaredNorm());
    return std::sqrt(longest);
}

/// From 0 along the unit vector `to` as far as the straight piece from a to b, which lies across.
double radiusOfChord(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& to) {
    const Eigen::Vector2d along = b - a;
    const double across = to.x() * along.y() - to.y() * along.x();
    if (std::abs(across) < 1e-12) return std::max(a.dot(to), b.dot(to));
    return (a.x() * along.y() - a.y() * along.x()) / across;
}

} // namespace

double BodyLimits::farthestMm() const {
    return 0.25 * std::numbers::pi * freeMm;
}

BodySection bodySection(const SheathWalls& around, const WallRing& ring, const BodyLimits& limits) {
    BodySection section;
    if (ring.leastMm <= 0.0) return section;
    StarPoints ends;
    std::vector<std::size_t> hull;
    endsOf(around, ring, limits.outwardsMm, limits.farthestMm(), ends);
    hullOfStar(ends, hull);
    section.widthMm = measureOf(limits.by, ends, hull) + limits.measuresMoreMm;
    endsOf(around, ring, limits.outwardsMm, 0.5 * limits.freeMm, ends);
    for (const Eigen::Vector2d& end : ends)
        section.sidesMm.push_back(end.norm());
    hullOfStar(ends, hull);
    const std::size_t count = ends.size();
    for (std::size_t k = 0; k + 1 < hull.size(); ++k)
        for (std::size_t i = (hull[k] + 1) % count; i != hull[k + 1]; i = (i + 1) % count) {
            const double depth = radiusOfChord(ends[hull[k]], ends[hull[k + 1]], around.directions[i]) - section.sidesMm[i];
            if (depth <= section.indentMm) continue;
            section.indentMm = depth;
            section.indentRay = i;
        }
    return section;
}

MovedAside movedAside(const BodySection& section, const BodySection& start) {
    MovedAside most;
    const std::size_t count = std::min(section.sidesMm.size(), start.sidesMm.size());
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t opposite = (i + count / 2) % count;
        const double moved = 0.5 * (section.sidesMm[opposite] - section.sidesMm[i] - start.sidesMm[opposite] + start.sidesMm[i]);
        if (moved > most.mm) most = {moved, i};
    }
    return most;
}

BodyOutline bodyOutline(const SheathWalls& around, const WallRing& ring, const BodyLimits& limits, int count) {
    constexpr double kSpreadMm = 0.005;
    BodyOutline outline;
    StarPoints ends;
    std::vector<std::size_t> hull;
    const auto widthWithin = [&](double radius) {
        endsOf(around, ring, limits.outwardsMm, radius, ends);
        hullOfStar(ends, hull);
        return measureOf(limits.by, ends, hull) + limits.measuresMoreMm;
    };
    double hi = limits.farthestMm();
    double width = ring.leastMm > 0.0 ? widthWithin(hi) : 0.0;
    if (width > limits.freeMm) {
        double lo = 0.5 * limits.narrowestMm;
        while (hi - lo > kSpreadMm) {
            const double mid = 0.5 * (lo + hi);
            (widthWithin(mid) > limits.freeMm ? hi : lo) = mid;
        }
        width = std::min(widthWithin(hi), limits.freeMm);
    }
    const double pressesOut = std::max(0.0, 0.5 * (limits.narrowestMm - width));
    outline.widthMm = std::max(width, limits.narrowestMm);
    outline.radiiMm.reserve(static_cast<std::size_t>(count));
    if (ring.leastMm <= 0.0) { // in the wall: nothing to take the form of
        outline.radiiMm.assign(static_cast<std::size_t>(count), 0.5 * limits.narrowestMm);
        return outline;
    }
    // Hull pieces by the angles of their ends, walked through once.
    const std::size_t rays = ends.size();
    const double share = static_cast<double>(rays) / count;
    for (int i = 0; i < count; ++i) {
        const double at = share * i;
        std::size_t k = 0;
        const double turned = std::fmod(at - static_cast<double>(hull.front()) + static_cast<double>(rays), static_cast<double>(rays));
        const auto placeOf = [&](std::size_t index) { // of a hull point, in rays from the first
            return index + 1 == hull.size() ? static_cast<double>(rays)
                                            : static_cast<double>((hull[index] + rays - hull.front()) % rays);
        };
        while (k + 2 < hull.size() && placeOf(k + 1) <= turned) ++k;
        const double angle = 2.0 * std::numbers::pi * i / count;
        outline.radiiMm.push_back(pressesOut +
                                  radiusOfChord(ends[hull[k]], ends[hull[k + 1]], {std::cos(angle), std::sin(angle)}));
    }
    return outline;
}

} // namespace gauge::core
