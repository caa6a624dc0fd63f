#include "core/geometry/planar_contour.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <string>

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

bool sortedBefore(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() < b.x() || (a.x() == b.x() && a.y() < b.y());
}

/// Sorts by x, then y: finds the runs that are sorted already (turning falling ones round), then merges neighbours.
void sortRuns(std::vector<Eigen::Vector2d>& points) {
    std::vector<std::size_t> starts;
    for (std::size_t begin = 0; begin < points.size();) {
        std::size_t end = begin + 1;
        const bool falling = end < points.size() && sortedBefore(points[end], points[begin]);
        while (end < points.size() && sortedBefore(points[end], points[end - 1]) == falling)
            ++end;
        if (falling)
            std::reverse(points.begin() + static_cast<std::ptrdiff_t>(begin), points.begin() + static_cast<std::ptrdiff_t>(end));
        starts.push_back(begin);
        begin = end;
    }
    std::vector<Eigen::Vector2d> merged(points.size());
    while (starts.size() > 1) {
        std::vector<std::size_t> fewer;
        const auto at = [&](std::size_t run) {
            return points.begin() + static_cast<std::ptrdiff_t>(run < starts.size() ? starts[run] : points.size());
        };
        for (std::size_t run = 0; run < starts.size(); run += 2) {
            fewer.push_back(starts[run]);
            std::merge(at(run), at(run + 1), at(run + 1), at(run + 2), merged.begin() + static_cast<std::ptrdiff_t>(starts[run]),
                       sortedBefore);
        }
        points.swap(merged);
        starts.swap(fewer);
    }
}

/// Every so-many-th point: enough of them to tell roughly where a contour's middle is and which way it runs.
struct RoughShape {
    Eigen::Vector2d middle = Eigen::Vector2d::Zero(); ///< within the hull
    double sense = 1.0;                               ///< -1 where it runs clockwise

    explicit RoughShape(Points points) {
        constexpr std::size_t kSamples = 32;
        const std::size_t step = std::max<std::size_t>(points.size() / kSamples, 1);
        double count = 0.0, twiceArea = 0.0;
        for (std::size_t i = 0; i < points.size(); i += step) {
            middle += points[i];
            ++count;
            twiceArea += i == 0 ? 0.0 : turn(points[0], points[i - step], points[i]);
        }
        middle /= count;
        if (twiceArea < 0.0) sense = -1.0;
    }
};

/// Removes the points that lie inside the triangle of the middle and their two neighbours by more than rounding. Each is
/// compared with the neighbours that it had before: no branch, nothing to wait for.
void dropInner(std::vector<Eigen::Vector2d>& points, const RoughShape& shape) {
    constexpr double kSurely = 1e-12; // of the squares of the distances
    const Eigen::Vector2d first = points.front();
    Eigen::Vector2d a = points.back() - shape.middle, b = first - shape.middle;
    double fromA = shape.sense * cross(a, b), squares = a.squaredNorm() + b.squaredNorm();
    std::size_t kept = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Eigen::Vector2d here = points[i], c = (i + 1 < points.size() ? points[i + 1] : first) - shape.middle;
        const double fromB = shape.sense * cross(b, c), acrossThem = shape.sense * cross(a - b, c - b);
        const double squareOfC = c.squaredNorm(), margin = kSurely * (squares + squareOfC);
        points[kept] = here;
        kept += static_cast<std::size_t>(!((fromA > margin) & (fromB > margin) & (acrossThem > margin)));
        squares = b.squaredNorm() + squareOfC;
        a = b;
        b = c;
        fromA = fromB;
    }
    points.resize(kept);
}

/// Points without those that surely are no corner of the hull. Whatever their order none is lost wrongly; of a noisy contour
/// half go in each round, until little more than the hull is left to sort.
std::vector<Eigen::Vector2d> withoutInnerPoints(Points points) {
    constexpr std::size_t kWorthIt = 128;
    std::vector<Eigen::Vector2d> left(points.begin(), points.end());
    if (points.size() < kWorthIt) return left;
    const RoughShape shape(points);
    for (std::size_t before = 2 * left.size(); 8 * left.size() < 7 * before;) {
        before = left.size();
        dropInner(left, shape);
    }
    return left;
}

/// Appends `p` to a chain of `count` points that must keep turning left; `floor` vertices at its start stay.
std::size_t pushLeftTurning(Eigen::Vector2d* chain, std::size_t count, std::size_t floor, const Eigen::Vector2d& p) {
    while (count >= floor + 2 && turn(chain[count - 2], chain[count - 1], p) <= 0.0)
        --count;
    chain[count] = p;
    return count + 1;
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

/// The sides of a hull one after the other, each with its farthest vertex (rotating calipers). Distances are compared
/// by squares first: a root is taken only where the result may change.
class HullWalk {
public:
    explicit HullWalk(Points hull) : m_hull(hull) {}

    template <bool Longest, bool LeastWidth> Calipers walk() {
        m_found.leastWidth.lengthMm = std::numeric_limits<double>::infinity();
        std::size_t far = 1;
        for (std::size_t i = 0; i < m_hull.size(); ++i) {
            const std::size_t end = next(i, m_hull.size());
            const Eigen::Vector2d &a = m_hull[i], side = m_hull[end] - a;
            if constexpr (Longest) considerSide(i, end, far);
            double height = cross(side, m_hull[far] - a);
            for (;;) {
                const std::size_t further = next(far, m_hull.size());
                const double higher = cross(side, m_hull[further] - a);
                if (!(higher > height)) break;
                far = further;
                height = higher;
                if constexpr (Longest) considerSide(i, end, far);
            }
            // A parallel opposite side: its other end pairs with both ends of this side too.
            if constexpr (Longest) considerSide(i, end, next(far, m_hull.size()));
            if constexpr (LeastWidth) considerWidth(i, side, far, height);
        }
        return m_found;
    }

private:
    void considerSide(std::size_t i, std::size_t end, std::size_t far) {
        consider(i, far);
        consider(end, far);
    }

    void consider(std::size_t a, std::size_t b) {
        const double square = (m_hull[b] - m_hull[a]).squaredNorm();
        if (square <= m_longestSquare) return;
        const Caliper candidate = caliper(m_hull[a], m_hull[b]);
        if (candidate.lengthMm <= m_found.longest.lengthMm) return;
        m_found.longest = candidate;
        m_longestSquare = square;
    }

    /// The width across side `i` is height / length of the side.
    void considerWidth(std::size_t i, const Eigen::Vector2d& side, std::size_t far, double height) {
        constexpr double kSurelyGreater = 1.0 + 1e-9; // far above rounding
        const double least = m_found.leastWidth.lengthMm;
        if (height * height > least * least * side.squaredNorm() * kSurelyGreater) return;
        const double length = side.norm();
        const Eigen::Vector2d u = side / length;
        const Eigen::Vector2d inward(-u.y(), u.x());
        const Eigen::Vector2d& a = m_hull[i];
        const double width = (m_hull[far] - a).dot(inward);
        if (width < least) m_found.leastWidth = placedWidth(a, u, length, far, width);
    }

    /// A parallel opposite side: its other end is as far away. The caliper stands in the middle of what both share.
    Caliper placedWidth(const Eigen::Vector2d& a, const Eigen::Vector2d& u, double length, std::size_t far, double width) const {
        const Eigen::Vector2d inward(-u.y(), u.x());
        double low = (m_hull[far] - a).dot(u), high = low;
        for (const std::size_t other : {next(far, m_hull.size()), (far + m_hull.size() - 1) % m_hull.size()}) {
            if ((m_hull[other] - a).dot(inward) >= width * (1.0 - 1e-12)) {
                low = std::min(low, (m_hull[other] - a).dot(u));
                high = std::max(high, (m_hull[other] - a).dot(u));
            }
        }
        const double foot = 0.5 * (std::clamp(low, 0.0, length) + std::clamp(high, 0.0, length));
        return {a + foot * u, a + foot * u + width * inward, width};
    }

    Points m_hull;
    double m_longestSquare = 0.0;
    Calipers m_found;
};

template <bool Longest, bool LeastWidth> Calipers calipersOfHull(ContourView contour) {
    const auto hull = convexHull(contour);
    if (hull.size() < 3) return {caliperOfLine(hull), {hull.front(), hull.front(), 0.0}};
    return HullWalk(hull).walk<Longest, LeastWidth>();
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
    std::vector<Eigen::Vector2d> sorted = withoutInnerPoints(points);
    sortRuns(sorted);
    sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
    if (sorted.size() < 3) return sorted;

    std::vector<Eigen::Vector2d> hull(2 * sorted.size());
    std::size_t count = 0;
    for (const auto& p : sorted)
        count = pushLeftTurning(hull.data(), count, 0, p);
    const std::size_t lower = count - 1;
    for (auto p = sorted.rbegin() + 1; p != sorted.rend(); ++p)
        count = pushLeftTurning(hull.data(), count, lower, *p);
    hull.resize(count - 1); // without the first vertex, reached again
    return hull;
}

Caliper maximumCaliper(ContourView contour) {
    assert(contour.size() >= 3);
    return calipersOfHull<true, false>(contour).longest;
}

Caliper minimumCaliper(ContourView contour) {
    assert(contour.size() >= 3);
    return calipersOfHull<false, true>(contour).leastWidth;
}

Calipers calipers(ContourView contour) {
    assert(contour.size() >= 3);
    return calipersOfHull<true, true>(contour);
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
