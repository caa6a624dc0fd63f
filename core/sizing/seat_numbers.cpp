#include "core/sizing/seat_numbers.h"

#include "core/geometry/planar_contour.h"
#include "core/sizing/percent.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kProfileStepMm = 0.5;
constexpr double kGapReachMm = 40.0;
constexpr double kLeastAcross = 0.3; // sine of 17 degrees

/// Signed area that the triangle (0, a, b) and the circle of radius r about 0 share.
double wedgeWithinCircle(const Eigen::Vector2d& a, const Eigen::Vector2d& b, double r) {
    const auto sector = [r](const Eigen::Vector2d& p, const Eigen::Vector2d& q) {
        return 0.5 * r * r * std::atan2(p.x() * q.y() - p.y() * q.x(), p.dot(q));
    };
    const Eigen::Vector2d along = b - a;
    const double square = along.squaredNorm();
    if (square == 0.0) return 0.0;
    // Where the line through a and b meets the circle, as shares of the way.
    const double middle = -a.dot(along) / square, inside = middle * middle - (a.squaredNorm() - r * r) / square;
    if (inside <= 0.0) return sector(a, b);
    const double half = std::sqrt(inside);
    const double enter = std::clamp(middle - half, 0.0, 1.0), leave = std::clamp(middle + half, 0.0, 1.0);
    if (enter >= leave) return sector(a, b);
    const Eigen::Vector2d p = a + enter * along, q = a + leave * along;
    double area = 0.5 * (p.x() * q.y() - p.y() * q.x());
    if (enter > 0.0) area += sector(a, p);
    if (leave < 1.0) area += sector(q, b);
    return area;
}

/// Rings on the line's own rings, and at both ends.
SeatedBody bodyInPlace(const SheathWalls& around, const SeatMeasures& size, double backMm) {
    SeatedBody seated;
    seated.origin = around.frame.origin;
    seated.direction = around.frame.normal;
    const double from = size.nearMm - backMm, to = size.farMm - backMm, step = around.grain.stepMm;
    const auto ringFor = [&](double t, long ring) {
        // Before the rings lies the atrium, behind them the wall that nobody has to fill.
        if (ring < 0 || ring >= static_cast<long>(around.rings.size())) {
            const double radius = 0.5 * size.limits.freeMm;
            return SeatedBody::Ring{t, radius, std::vector<double>(kSeatSides, radius)};
        }
        BodyOutline outline = bodyOutline(around, around.rings[static_cast<std::size_t>(ring)], size.limits, kSeatSides);
        return SeatedBody::Ring{t, 0.5 * outline.widthMm, std::move(outline.radiiMm)};
    };
    const auto ringsBefore = [&](double t) { return (t - around.fromMm) / step; };
    const long first = std::lround(-around.fromMm / step), every = std::max(1L, std::lround(kProfileStepMm / step));
    const auto nearRing = static_cast<long>(std::ceil(ringsBefore(from) - 1e-9));
    const auto farRing = static_cast<long>(std::floor(ringsBefore(to) + 1e-9));
    seated.body.push_back(ringFor(from, std::min(nearRing, farRing)));
    for (long ring = nearRing; ring <= farRing; ++ring) {
        const double t = around.fromMm + static_cast<double>(ring) * step;
        if ((ring - first) % every == 0 && t > from + 1e-6 && t < to - 1e-6) seated.body.push_back(ringFor(t, ring));
    }
    seated.body.push_back(ringFor(to, std::max(nearRing, farRing)));
    if (size.discRadiusMm) seated.disc = SeatedBody::Disc{size.discMm - backMm, *size.discRadiusMm};
    return seated;
}

void addCover(const SheathWalls& around, const SeatQuestion& question, SeatNumbers& numbers) {
    if (!numbers.seated->disc || question.ostium.size() < 3) return;
    std::vector<Eigen::Vector2d> rim;
    for (const PatientPoint& p : question.ostium)
        rim.push_back(around.frame.sectionFromPatient(p));
    const double radius = numbers.seated->disc->radiusMm;
    const auto farthest = std::max_element(rim.begin(), rim.end(), [](const auto& a, const auto& b) {
        return a.squaredNorm() < b.squaredNorm();
    });
    numbers.overlapMm = radius - farthest->norm();
    const Eigen::Vector2d at = farthest->norm() > 0.0 ? farthest->normalized() : Eigen::Vector2d::UnitX();
    numbers.leastOverlapAt = at.x() * around.frame.u + at.y() * around.frame.v;
    numbers.coverPercent = 100.0 * std::abs(areaWithinCircle(rim, radius) / signedAreaMm2(rim));
}

/// Of the body at the landing zone, straight between its sides.
double radiusTowards(const SeatedBody& seated, const SheathWalls& around, const PatientVector& side) {
    const auto ring = std::min_element(seated.body.begin(), seated.body.end(),
                                       [](const auto& a, const auto& b) { return std::abs(a.tMm) < std::abs(b.tMm); });
    const double angle = std::atan2(side.dot(around.frame.v), side.dot(around.frame.u));
    const double place = kSeatSides * (angle / (2.0 * std::numbers::pi) + 1.0);
    const auto low = static_cast<std::size_t>(place);
    const double share = place - static_cast<double>(low);
    const std::size_t sides = ring->radiiMm.size();
    return (1.0 - share) * ring->radiiMm[low % sides] + share * ring->radiiMm[(low + 1) % sides];
}

std::optional<double> gapTowards(const SeatWall& wall, const SheathWalls& around, const PatientVector& side,
                                 const SeatedBody& seated, double outwardsMm) {
    const WallRay ray = rayToWall(wall, around.frame.origin, side, kGapReachMm);
    if (ray.open) return std::nullopt;
    return ray.mm + outwardsMm - radiusTowards(seated, around, side);
}

double distanceToNeighbour(const SeatedBody& seated, const SeatNeighbour& neighbour) {
    double least = std::numeric_limits<double>::max();
    const std::size_t count = neighbour.points.size();
    for (std::size_t i = 0; i < count; ++i) {
        const PatientPoint& a = neighbour.points[i];
        least = std::min(least, distanceMm(seated, a));
        if (!neighbour.closed || count < 3) continue;
        const PatientVector along = neighbour.points[(i + 1) % count] - a;
        const int pieces = static_cast<int>(std::ceil(along.norm() / kProfileStepMm));
        for (int k = 1; k < pieces; ++k)
            least = std::min(least, distanceMm(seated, a + (static_cast<double>(k) / pieces) * along));
    }
    return least;
}

} // namespace

double areaWithinCircle(std::span<const Eigen::Vector2d> polygon, double radiusMm) {
    double area = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i)
        area += wedgeWithinCircle(polygon[i], polygon[(i + 1) % polygon.size()], radiusMm);
    return area;
}

std::optional<PatientVector> superiorAcross(const PatientVector& direction) {
    const PatientVector head{Eigen::Vector3d::UnitZ()};
    const PatientVector across = head - head.dot(direction) * direction;
    if (across.norm() < kLeastAcross) return std::nullopt;
    return across.normalized();
}

SeatMeasures seatMeasures(const SeatQuestion& question, const ChartSize& size) {
    const DeviceChart& chart = question.chart;
    SeatMeasures measures;
    measures.limits.by = measureOf(chart);
    measures.limits.freeMm = size.lobeDiameterMm.value_or(size.nominalMm);
    measures.limits.narrowestMm = diameterAtCompression(size.nominalMm, size.compressionPercent.hi);
    measures.limits.outwardsMm = 0.5 * question.widenedByMm;
    measures.nearMm = chart.kind == DeviceKind::Plug ? -size.landingOffsetMm : 0.0;
    measures.farMm = size.leastDepthMm - (chart.depthFrom == DepthFrom::Ostium ? question.landingDepthMm : 0.0);
    if (size.discDiameterMm) measures.discRadiusMm = 0.5 * *size.discDiameterMm;
    measures.discMm = -size.landingOffsetMm;
    return measures;
}

SeatNumbers seatNumbers(const SeatWall& wall, const SheathWalls& around, const SeatQuestion& question,
                        const SeatMeasures& size) {
    SeatNumbers numbers;
    numbers.stop = slideBody(wall, around, size.limits);
    if (numbers.stop.atOnce) return numbers;
    // What nothing stopped lies where the chart wants it.
    if (numbers.stop.by != SheathStop::By::Open)
        numbers.standsBackMm = std::max(0.0, size.farMm - numbers.stop.tMm);
    numbers.seated = bodyInPlace(around, size, numbers.standsBackMm);
    const SeatedBody& seated = *numbers.seated;
    if (question.circumflex) {
        const double far = seated.farMm(), near = seated.nearMm();
        const double at = (*question.circumflex - around.frame.origin).dot(around.frame.normal);
        numbers.beyondCircumflexPercent = 100.0 * (far - std::clamp(at, near, far)) / (far - near);
    }
    addCover(around, question, numbers);
    if (const auto superior = superiorAcross(around.frame.normal)) {
        numbers.gapSuperiorMm = gapTowards(wall, around, *superior, seated, size.limits.outwardsMm);
        numbers.gapInferiorMm = gapTowards(wall, around, -*superior, seated, size.limits.outwardsMm);
    }
    for (const SeatNeighbour& neighbour : question.neighbours)
        numbers.clearancesMm.push_back(distanceToNeighbour(seated, neighbour));
    return numbers;
}

} // namespace gauge::core
