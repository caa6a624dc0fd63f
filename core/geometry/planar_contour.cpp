#include "core/geometry/planar_contour.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <string>
#include <tuple>

namespace gauge::core {
namespace {

using Points = std::span<const Eigen::Vector2d>;

double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

/// Twice the signed area of the triangle a, b, c; positive when counter-clockwise.
double turn(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& c) {
    return cross(b - a, c - a);
}

/// Appends `p` to a chain that must keep turning left; `floor` vertices at its start stay.
void pushLeftTurning(std::vector<Eigen::Vector2d>& chain, std::size_t floor, const Eigen::Vector2d& p) {
    while (chain.size() >= floor + 2 && turn(chain[chain.size() - 2], chain.back(), p) <= 0.0)
        chain.pop_back();
    chain.push_back(p);
}

std::size_t next(std::size_t i, std::size_t count) {
    return i + 1 == count ? 0 : i + 1;
}

Caliper caliper(const Eigen::Vector2d& from, const Eigen::Vector2d& to) {
    return {from, to, (to - from).norm()};
}

/// Greatest distance among a handful of points that lie on a line (a hull with fewer than 3 vertices).
Caliper caliperOfLine(Points hull) {
    assert(!hull.empty());
    return caliper(hull.front(), hull.back());
}

/// The width of the hull across its side `i`, whose farthest vertex is `far`.
Caliper widthAcrossSide(Points hull, std::size_t i, std::size_t far) {
    const Eigen::Vector2d& a = hull[i];
    const Eigen::Vector2d side = hull[next(i, hull.size())] - a;
    const double length = side.norm();
    const Eigen::Vector2d u = side / length;
    const Eigen::Vector2d inward(-u.y(), u.x());
    const double width = (hull[far] - a).dot(inward);

    // A parallel opposite side: its other end is as far away. The caliper stands in the middle of what both share.
    double low = (hull[far] - a).dot(u), high = low;
    for (const std::size_t other : {next(far, hull.size()), (far + hull.size() - 1) % hull.size()}) {
        if ((hull[other] - a).dot(inward) >= width * (1.0 - 1e-12)) {
            low = std::min(low, (hull[other] - a).dot(u));
            high = std::max(high, (hull[other] - a).dot(u));
        }
    }
    const double foot = 0.5 * (std::clamp(low, 0.0, length) + std::clamp(high, 0.0, length));
    return {a + foot * u, a + foot * u + width * inward, width};
}

} // namespace

Result<void> validateContour(ContourView contour) {
    if (contour.size() < 3)
        return failure(ErrorCode::TooFewPoints, "Cannot measure the contour: it has " +
                                                    std::to_string(contour.size()) +
                                                    " points; a closed contour needs at least 3.");
    for (std::size_t i = 0; i < contour.size(); ++i)
        if (!contour[i].allFinite())
            return failure(ErrorCode::NonFinite, "Cannot measure the contour: point " + std::to_string(i + 1) +
                                                     " of " + std::to_string(contour.size()) +
                                                     " is not a finite number.");
    const double perimeter = perimeterMm(contour);
    if (!(std::abs(signedAreaMm2(contour)) > 1e-12 * perimeter * perimeter))
        return failure(ErrorCode::Degenerate, "Cannot measure the contour: its " + std::to_string(contour.size()) +
                                                  " points enclose no area (all in one place or on one line).");
    return {};
}

double signedAreaMm2(ContourView contour) {
    assert(contour.size() >= 3);
    const Eigen::Vector2d& o = contour.front();
    double twice = 0.0;
    for (std::size_t i = 1; i + 1 < contour.size(); ++i)
        twice += turn(o, contour[i], contour[i + 1]);
    return 0.5 * twice;
}

double perimeterMm(ContourView contour) {
    assert(contour.size() >= 3);
    double sum = (contour.front() - contour.back()).norm();
    for (std::size_t i = 1; i < contour.size(); ++i)
        sum += (contour[i] - contour[i - 1]).norm();
    return sum;
}

Eigen::Vector2d areaCentroid(ContourView contour) {
    assert(contour.size() >= 3);
    const Eigen::Vector2d& o = contour.front();
    double twice = 0.0;
    Eigen::Vector2d moment = Eigen::Vector2d::Zero();
    for (std::size_t i = 1; i + 1 < contour.size(); ++i) {
        const double t = turn(o, contour[i], contour[i + 1]);
        twice += t;
        moment += t * ((contour[i] - o) + (contour[i + 1] - o));
    }
    assert(twice != 0.0);
    return o + moment / (3.0 * twice);
}

bool contains(ContourView contour, const Eigen::Vector2d& point) {
    assert(contour.size() >= 3);
    bool inside = false;
    for (std::size_t i = 0, j = contour.size() - 1; i < contour.size(); j = i++) {
        const Eigen::Vector2d& a = contour[i];
        const Eigen::Vector2d& b = contour[j];
        const bool straddles = (a.y() > point.y()) != (b.y() > point.y());
        if (straddles && point.x() < a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x()))
            inside = !inside;
    }
    return inside;
}

std::vector<Eigen::Vector2d> convexHull(std::span<const Eigen::Vector2d> points) {
    std::vector<Eigen::Vector2d> sorted(points.begin(), points.end());
    std::sort(sorted.begin(), sorted.end(),
              [](const auto& a, const auto& b) { return std::tuple(a.x(), a.y()) < std::tuple(b.x(), b.y()); });
    sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
    if (sorted.size() < 3) return sorted;

    std::vector<Eigen::Vector2d> hull;
    hull.reserve(sorted.size() + 1);
    for (const auto& p : sorted)
        pushLeftTurning(hull, 0, p);
    const std::size_t lower = hull.size() - 1;
    for (auto p = sorted.rbegin() + 1; p != sorted.rend(); ++p)
        pushLeftTurning(hull, lower, *p);
    hull.pop_back(); // the first vertex, reached again
    return hull;
}

Caliper maximumCaliper(ContourView contour) {
    assert(contour.size() >= 3);
    const auto hull = convexHull(contour);
    if (hull.size() < 3) return caliperOfLine(hull);
    Caliper best;
    const auto consider = [&](std::size_t a, std::size_t b) {
        const Caliper candidate = caliper(hull[a], hull[b]);
        if (candidate.lengthMm > best.lengthMm) best = candidate;
    };
    std::size_t far = 1;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const std::size_t end = next(i, hull.size());
        consider(i, far);
        consider(end, far);
        while (turn(hull[i], hull[end], hull[next(far, hull.size())]) > turn(hull[i], hull[end], hull[far])) {
            far = next(far, hull.size());
            consider(i, far);
            consider(end, far);
        }
        // A parallel opposite side: its other end pairs with both ends of this side too.
        consider(i, next(far, hull.size()));
        consider(end, next(far, hull.size()));
    }
    return best;
}

Caliper minimumCaliper(ContourView contour) {
    assert(contour.size() >= 3);
    const auto hull = convexHull(contour);
    if (hull.size() < 3) return {hull.front(), hull.front(), 0.0};
    Caliper best;
    best.lengthMm = std::numeric_limits<double>::infinity();
    std::size_t far = 1;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const std::size_t end = next(i, hull.size());
        while (turn(hull[i], hull[end], hull[next(far, hull.size())]) > turn(hull[i], hull[end], hull[far]))
            far = next(far, hull.size());
        const Caliper candidate = widthAcrossSide(hull, i, far);
        if (candidate.lengthMm < best.lengthMm) best = candidate;
    }
    return best;
}

Caliper extentAlong(ContourView contour, const Eigen::Vector2d& direction) {
    assert(contour.size() >= 3);
    assert(std::abs(direction.norm() - 1.0) < 1e-6);
    const auto along = [&](const auto& a, const auto& b) { return a.dot(direction) < b.dot(direction); };
    const auto [low, high] = std::minmax_element(contour.begin(), contour.end(), along);
    const Eigen::Vector2d across(-direction.y(), direction.x());
    const Eigen::Vector2d middle = 0.5 * (low->dot(across) + high->dot(across)) * across;
    const double from = low->dot(direction), to = high->dot(direction);
    return {middle + from * direction, middle + to * direction, to - from};
}

std::vector<Eigen::Vector2d> resampleByArcLength(ContourView contour, std::size_t count) {
    assert(contour.size() >= 3 && count >= 3);
    const double step = perimeterMm(contour) / static_cast<double>(count);
    std::vector<Eigen::Vector2d> out;
    out.reserve(count);
    double sideStart = 0.0; // arc length at contour[i]
    for (std::size_t i = 0; i < contour.size() && out.size() < count; ++i) {
        const Eigen::Vector2d& a = contour[i];
        const Eigen::Vector2d& b = contour[next(i, contour.size())];
        const double side = (b - a).norm();
        for (double s = step * static_cast<double>(out.size()); s < sideStart + side && out.size() < count;
             s = step * static_cast<double>(out.size()))
            out.push_back(a + (s - sideStart) / side * (b - a));
        sideStart += side;
    }
    while (out.size() < count) // rounding left the last place just past the end
        out.push_back(contour.front());
    return out;
}

} // namespace gauge::core
