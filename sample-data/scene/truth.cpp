#include "sample-data/scene/truth.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <deque>
#include <limits>
#include <numbers>

namespace gauge::sample_case {
namespace {

/// Spacing of the grid on which a section's boundary is followed; thinnest tissue told apart, mm.
constexpr double kSectionGridMm = 0.12;
constexpr double kRootMm = 1e-7;

double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

/// Zero of `f` between a point inside (f < 0) and one outside (f >= 0), by bisection with regula falsi steps.
template <class Function, class Point> Point boundary(const Function& f, Point inside, Point outside) {
    double fi = f(inside), fo = f(outside);
    for (int step = 0; step < 60 && (outside - inside).norm() > kRootMm; ++step) {
        const double share = step % 3 == 2 ? 0.5 : std::clamp(fi / (fi - fo), 0.02, 0.98);
        const Point middle = inside + share * (outside - inside);
        if (const double fm = f(middle); fm < 0.0) {
            inside = middle;
            fi = fm;
        } else {
            outside = middle;
            fo = fm;
        }
    }
    return 0.5 * (inside + outside);
}

/// Nodes of a square grid about a point, marked when they belong to the connected inside part that holds it.
class FloodedGrid {
public:
    template <class Function>
    bool flood(const Function& f, const Eigen::Vector2d& start, double spacing, double reach) {
        m_start = start;
        m_spacing = spacing;
        m_half = static_cast<int>(std::ceil(reach / spacing));
        m_marks.assign(static_cast<std::size_t>(width()) * static_cast<std::size_t>(width()), 0);
        std::deque<std::pair<int, int>> open{{0, 0}};
        mark(0, 0) = 1;
        while (!open.empty()) {
            const auto [i, j] = open.front();
            open.pop_front();
            if (std::max(std::abs(i), std::abs(j)) >= m_half) return false;
            for (const auto& [di, dj] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                char& seen = mark(i + di, j + dj);
                if (seen != 0) continue;
                seen = f(at(i + di, j + dj)) < 0.0 ? 1 : 2;
                if (seen == 1) open.emplace_back(i + di, j + dj);
            }
        }
        return true;
    }

    bool inside(int i, int j) const {
        return std::max(std::abs(i), std::abs(j)) <= m_half && m_marks[index(i, j)] == 1;
    }
    Eigen::Vector2d at(int i, int j) const { return m_start + m_spacing * Eigen::Vector2d(i, j); }
    int half() const { return m_half; }

private:
    int width() const { return 2 * m_half + 1; }
    std::size_t index(int i, int j) const {
        return static_cast<std::size_t>(i + m_half) +
               static_cast<std::size_t>(width()) * static_cast<std::size_t>(j + m_half);
    }
    char& mark(int i, int j) { return m_marks[index(i, j)]; }

    Eigen::Vector2d m_start;
    double m_spacing = 0.0;
    int m_half = 0;
    std::vector<char> m_marks;
};

/// Follows the outer border of the flooded nodes counter-clockwise; each step from an inside node to an
/// outside neighbour gives one boundary point.
template <class Function>
std::vector<Eigen::Vector2d> followBorder(const FloodedGrid& grid, const Function& f) {
    // The node with the greatest i, and among those the greatest j, has an outside neighbour at i + 1.
    int i = 0, j = 0;
    for (int a = -grid.half(); a <= grid.half(); ++a)
        for (int b = -grid.half(); b <= grid.half(); ++b)
            if (grid.inside(a, b) && (a > i || (a == i && b > j))) i = a, j = b;
    constexpr int kStep[4][2] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    const int startI = i, startJ = j;
    int towards = 0; // direction of the outside neighbour
    std::vector<Eigen::Vector2d> points;
    do {
        points.push_back(boundary(f, grid.at(i, j), grid.at(i + kStep[towards][0], j + kStep[towards][1])));
        // Turn left about the crossing: the next crossing is in the cell to the left of "inside -> outside".
        const int left = (towards + 1) % 4;
        const int li = i + kStep[left][0], lj = j + kStep[left][1];
        const int di = li + kStep[towards][0], dj = lj + kStep[towards][1];
        if (!grid.inside(li, lj)) {
            towards = left; // the corner node: same node, next side
        } else if (!grid.inside(di, dj)) {
            i = li, j = lj; // straight on
        } else {
            i = di, j = dj; // inner corner
            towards = (towards + 3) % 4;
        }
    } while (i != startI || j != startJ || towards != 0);
    return points;
}

std::vector<Eigen::Vector2d> convexHull(std::vector<Eigen::Vector2d> points) {
    std::sort(points.begin(), points.end(), [](const auto& a, const auto& b) {
        return a.x() < b.x() || (a.x() == b.x() && a.y() < b.y());
    });
    std::vector<Eigen::Vector2d> hull;
    for (int pass = 0; pass < 2; ++pass) {
        const std::size_t floor = hull.size() + 1;
        for (const auto& p : points) {
            while (hull.size() > floor && cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= 0.0)
                hull.pop_back();
            hull.push_back(p);
        }
        hull.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return hull;
}

double extentAlong(const std::vector<Eigen::Vector2d>& points, const Eigen::Vector2d& direction) {
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const auto& p : points) {
        low = std::min(low, p.dot(direction));
        high = std::max(high, p.dot(direction));
    }
    return high - low;
}

} // namespace

TrueMetrics trueMetrics(const std::vector<Eigen::Vector2d>& polygon) {
    TrueMetrics m;
    const Eigen::Vector2d reference = polygon.front();
    double twice = 0.0;
    Eigen::Vector2d moment = Eigen::Vector2d::Zero();
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Eigen::Vector2d a = polygon[i] - reference, b = polygon[(i + 1) % polygon.size()] - reference;
        twice += cross(a, b);
        moment += cross(a, b) * (a + b);
        m.perimeterMm += (b - a).norm();
    }
    m.areaMm2 = 0.5 * twice;
    m.centroid = reference + moment / (3.0 * twice);
    const auto hull = convexHull(polygon);
    Eigen::Vector2d longest = Eigen::Vector2d::UnitX();
    for (std::size_t i = 0; i < hull.size(); ++i)
        for (std::size_t j = i + 1; j < hull.size(); ++j)
            if (const double d = (hull[j] - hull[i]).norm(); d > m.longestDiameterMm) {
                m.longestDiameterMm = d;
                longest = (hull[j] - hull[i]) / d;
            }
    m.shortestDiameterMm = extentAlong(hull, {-longest.y(), longest.x()});
    m.leastWidthMm = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Eigen::Vector2d edge = hull[(i + 1) % hull.size()] - hull[i];
        if (edge.norm() > 1e-12)
            m.leastWidthMm = std::min(m.leastWidthMm,
                                      extentAlong(hull, Eigen::Vector2d(-edge.y(), edge.x()).normalized()));
    }
    m.meanDiameterMm = 0.5 * (m.longestDiameterMm + m.shortestDiameterMm);
    m.perimeterDerivedDiameterMm = m.perimeterMm / std::numbers::pi;
    m.areaDerivedDiameterMm = 2.0 * std::sqrt(m.areaMm2 / std::numbers::pi);
    m.eccentricityIndex = 1.0 - m.shortestDiameterMm / m.longestDiameterMm;
    return m;
}

bool TrueSection::contains(const Eigen::Vector2d& ab) const {
    bool inside = false;
    for (std::size_t i = 0, j = contour.size() - 1; i < contour.size(); j = i++) {
        const Eigen::Vector2d &a = contour[i], &b = contour[j];
        if ((a.y() > ab.y()) != (b.y() > ab.y()) &&
            ab.x() < a.x() + (ab.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x()))
            inside = !inside;
    }
    return inside;
}

std::optional<TrueSection> trueSection(const Scene& scene, const core::Plane& plane,
                                       const core::PatientPoint& near, double reachMm) {
    TrueSection section;
    section.frame = core::frameOf(plane);
    const Eigen::Isometry3d sceneFromPatient = scene.patientFromScene.inverse();
    const Eigen::Vector3d origin = sceneFromPatient * section.frame.origin.mm;
    const Eigen::Vector3d u = sceneFromPatient.linear() * section.frame.u.mm;
    const Eigen::Vector3d v = sceneFromPatient.linear() * section.frame.v.mm;
    const auto f = [&](const Eigen::Vector2d& ab) { return scene.pool(origin + ab.x() * u + ab.y() * v); };

    const Eigen::Vector2d start = section.frame.sectionFromPatient(near);
    FloodedGrid grid;
    if (!(f(start) < 0.0) || !grid.flood(f, start, kSectionGridMm, reachMm)) return std::nullopt;
    section.contour = followBorder(grid, f);
    section.metrics = trueMetrics(section.contour);
    section.center = section.frame.patientFromSection(section.metrics.centroid);
    return section;
}

std::pair<Eigen::Vector3d, double> ostiumDirection(const Scene& scene, const core::PatientPoint& circumflex,
                                                   const core::PatientPoint& ridge) {
    const Eigen::Vector3d from = scene.sceneFrom(circumflex), to = scene.sceneFrom(ridge);
    const Eigen::Vector3d u = (to - from).normalized();
    const CentreCurve& curve = scene.lobes.front().curve;
    double s = curve.nearest(0.5 * (from + to)).s;
    Eigen::Vector3d n = Eigen::Vector3d::UnitZ();
    for (int turn = 0; turn < 50; ++turn) {
        const CentreCurve::Frame frame = curve.at(s);
        n = (frame.tangent - frame.tangent.dot(u) * u).normalized();
        const double step = (to - frame.point).dot(n) / frame.tangent.dot(n);
        s += step;
        if (std::abs(step) < 1e-10) break;
    }
    return {n, s};
}

std::optional<TrueOstium> trueOstium(const Scene& scene, const core::PatientPoint& circumflex,
                                     const core::PatientPoint& ridge) {
    const auto [n, s] = ostiumDirection(scene, circumflex, ridge);
    const core::Plane through{scene.patientFrom(scene.lobes.front().curve.at(s).point),
                              scene.patientFromDirection(n)};
    const auto section = trueSection(scene, through, through.point, 30.0);
    if (!section) return std::nullopt;
    return TrueOstium{{section->center, through.normal}, *section, s};
}

double trueAxisLengthMm(const Scene& scene, const TrueOstium& ostium) {
    return scene.lobes.front().curve.lastS() - ostium.axisS;
}

core::Plane trueAxisPlane(const Scene& scene, const TrueOstium& ostium, double sMm) {
    const CentreCurve::Frame frame = scene.lobes.front().curve.at(ostium.axisS + sMm);
    return {scene.patientFrom(frame.point), scene.patientFromDirection(frame.tangent)};
}

std::vector<core::PatientPoint> trueAxis(const Scene& scene, const TrueOstium& ostium, double stepMm) {
    const double length = trueAxisLengthMm(scene, ostium);
    const int steps = std::max(1, static_cast<int>(std::ceil(length / stepMm)));
    std::vector<core::PatientPoint> points;
    for (int i = 0; i <= steps; ++i)
        points.push_back(trueAxisPlane(scene, ostium, length * i / steps).point);
    return points;
}

bool insidePool(const Scene& scene, const core::PatientPoint& p) {
    return scene.pool(scene.sceneFrom(p)) < 0.0;
}

bool insideBlood(const Scene& scene, const core::PatientPoint& p) {
    const Tissue tissue = scene.tissueAt(scene.sceneFrom(p));
    return tissue == Tissue::Pool || tissue == Tissue::CavityBlood;
}

bool insideAppendage(const Scene& scene, const TrueOstium& ostium, const core::PatientPoint& p) {
    const Eigen::Vector3d x = scene.sceneFrom(p);
    if (!(scene.pool(x) < 0.0) || core::signedDistanceMm(ostium.plane, p) < 0.0) return false;
    const double appendage = scene.appendage(x);
    if (appendage < 0.0) return true;
    // In the fillet of the junction: nearer to the appendage than to the vein.
    return appendage < scene.junctionFilletMm &&
           (scene.veins.empty() || appendage < scene.veins.front().distance(x));
}

double distanceToWallMm(const Scene& scene, const core::PatientPoint& from,
                        const core::PatientVector& direction) {
    const Eigen::Vector3d start = scene.sceneFrom(from);
    const Eigen::Vector3d d = scene.patientFromScene.linear().transpose() * direction.mm;
    constexpr double kStepMm = 0.1, kLongestMm = 200.0;
    if (!(scene.pool(start) < 0.0)) return 0.0;
    for (double t = kStepMm; t < kLongestMm; t += kStepMm)
        if (!(scene.pool(start + t * d) < 0.0))
            return (boundary([&](const Eigen::Vector3d& x) { return scene.pool(x); },
                             Eigen::Vector3d(start + (t - kStepMm) * d), Eigen::Vector3d(start + t * d)) -
                    start)
                .norm();
    return kLongestMm;
}

std::optional<TrueChord> trueChord(const Scene& scene, const core::PatientPoint& through,
                                   const core::PatientVector& direction) {
    if (!insidePool(scene, through)) return std::nullopt;
    const core::PatientVector unit = direction.normalized();
    TrueChord chord;
    chord.first = through - unit * distanceToWallMm(scene, through, -unit);
    chord.second = through + unit * distanceToWallMm(scene, through, unit);
    chord.lengthMm = core::distanceMm(chord.first, chord.second);
    return chord;
}

} // namespace gauge::sample_case
