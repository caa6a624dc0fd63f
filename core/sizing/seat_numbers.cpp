#include "core/sizing/seat_numbers.h"

#include "core/geometry/planar_contour.h"

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

SeatedBody bodyInPlace(const SheathWalls& around, const SeatMeasures& size, double outwardsMm, double backMm) {
    SeatedBody seated;
    seated.origin = around.frame.origin;
    seated.direction = around.frame.normal;
    const double from = size.nearMm - backMm, to = size.farMm - backMm;
    const int steps = std::max(1, static_cast<int>(std::lround((to - from) / kProfileStepMm)));
    for (int i = 0; i <= steps; ++i) {
        const double t = from + (to - from) * i / steps;
        // Before the rings lies the atrium, behind them the wall that nobody has to fill.
        const double wide = t < around.fromMm ? size.freeRadiusMm
                                              : around.areaRadiusMm(t).value_or(size.freeRadiusMm) + outwardsMm;
        seated.body.push_back({t, std::clamp(wide, size.narrowestRadiusMm, size.freeRadiusMm)});
    }
    if (size.discRadiusMm) seated.disc = SeatedBody::Disc{size.discMm - backMm, *size.discRadiusMm};
    return seated;
}

void addCover(const SheathWalls& around, const SeatQuestion& question, SeatNumbers& numbers) {
    if (!numbers.seated.disc || question.ostium.size() < 3) return;
    std::vector<Eigen::Vector2d> rim;
    for (const PatientPoint& p : question.ostium)
        rim.push_back(around.frame.sectionFromPatient(p));
    const double radius = numbers.seated.disc->radiusMm;
    const auto farthest = std::max_element(rim.begin(), rim.end(), [](const auto& a, const auto& b) {
        return a.squaredNorm() < b.squaredNorm();
    });
    numbers.overlapMm = radius - farthest->norm();
    const Eigen::Vector2d at = farthest->norm() > 0.0 ? farthest->normalized() : Eigen::Vector2d::UnitX();
    numbers.leastOverlapAt = at.x() * around.frame.u + at.y() * around.frame.v;
    numbers.coverPercent = 100.0 * std::abs(areaWithinCircle(rim, radius) / signedAreaMm2(rim));
}

std::optional<double> gapTowards(const SeatWall& wall, const SheathWalls& around, const PatientVector& side,
                                 const SeatedBody& seated, double outwardsMm) {
    const WallRay ray = rayToWall(wall, around.frame.origin, side, kGapReachMm);
    if (ray.open) return std::nullopt;
    return ray.mm + outwardsMm - seated.radiusMm(0.0);
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

SeatMeasures seatMeasures(const DeviceChart& chart, const ChartSize& size, double landingDepthMm) {
    SeatMeasures measures;
    const double freeMm = size.lobeDiameterMm.value_or(size.nominalMm);
    measures.freeRadiusMm = 0.5 * freeMm;
    measures.narrowestRadiusMm = 0.5 * freeMm * (1.0 - size.compressionPercent.hi / 100.0);
    measures.nearMm = chart.kind == DeviceKind::Plug ? -size.landingOffsetMm : 0.0;
    measures.farMm = size.leastDepthMm - (chart.depthFrom == DepthFrom::Ostium ? landingDepthMm : 0.0);
    if (size.discDiameterMm) measures.discRadiusMm = 0.5 * *size.discDiameterMm;
    measures.discMm = -size.landingOffsetMm;
    return measures;
}

SeatNumbers seatNumbers(const SeatWall& wall, const SheathWalls& around, const SeatQuestion& question,
                        const SeatMeasures& size, double narrowerMm) {
    SeatNumbers numbers;
    const double outwards = 0.5 * question.widenedByMm;
    numbers.stop = slideDisc(wall, around, std::max(0.0, size.narrowestRadiusMm - outwards + narrowerMm));
    // What nothing stopped lies where the chart wants it.
    if (numbers.stop.by != SheathStop::By::Open)
        numbers.standsBackMm = std::max(0.0, size.farMm - numbers.stop.tMm);
    numbers.seated = bodyInPlace(around, size, outwards, numbers.standsBackMm);
    if (question.circumflex) {
        const double far = numbers.seated.farMm(), near = numbers.seated.nearMm();
        const double at = (*question.circumflex - around.frame.origin).dot(around.frame.normal);
        numbers.beyondCircumflexPercent = 100.0 * (far - std::clamp(at, near, far)) / (far - near);
    }
    addCover(around, question, numbers);
    if (const auto superior = superiorAcross(around.frame.normal)) {
        numbers.gapSuperiorMm = gapTowards(wall, around, *superior, numbers.seated, outwards);
        numbers.gapInferiorMm = gapTowards(wall, around, -*superior, numbers.seated, outwards);
    }
    for (const SeatNeighbour& neighbour : question.neighbours)
        numbers.clearancesMm.push_back(distanceToNeighbour(numbers.seated, neighbour));
    return numbers;
}

} // namespace gauge::core
