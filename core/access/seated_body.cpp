#include "core/access/seated_body.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

namespace gauge::core {
namespace {

using Profile = std::vector<SeatedBody::Ring>;

std::vector<Profile> profilesOf(const SeatedBody& seated) {
    std::vector<Profile> profiles{seated.body};
    if (seated.disc)
        profiles.push_back({{seated.disc->tMm - SeatedBody::Disc::kDiscMm, seated.disc->radiusMm},
                            {seated.disc->tMm, seated.disc->radiusMm}});
    return profiles;
}

/// The rings about t and the share of the way between them; twice the same at the ends.
struct BetweenRings {
    const SeatedBody::Ring &low, &high;
    double share = 0.0;
};
BetweenRings ringsAbout(const Profile& profile, double tMm) {
    const auto next = std::upper_bound(profile.begin(), profile.end(), tMm,
                                       [](double t, const SeatedBody::Ring& ring) { return t < ring.tMm; });
    if (next == profile.begin()) return {profile.front(), profile.front()};
    if (next == profile.end()) return {profile.back(), profile.back()};
    return {*(next - 1), *next, (tMm - (next - 1)->tMm) / (next->tMm - (next - 1)->tMm)};
}

/// Straight between rings, held at the ends.
double radiusAt(const Profile& profile, double tMm) {
    const BetweenRings at = ringsAbout(profile, tMm);
    return at.low.radiusMm + at.share * (at.high.radiusMm - at.low.radiusMm);
}

double sideRadius(const SeatedBody::Ring& ring, std::size_t side) {
    return ring.radiiMm.empty() ? ring.radiusMm : ring.radiiMm[side];
}

const std::array<Eigen::Vector2d, kSeatSides>& sideDirections() {
    static const auto directions = [] {
        std::array<Eigen::Vector2d, kSeatSides> all;
        for (int i = 0; i < kSeatSides; ++i) {
            const double angle = 2.0 * std::numbers::pi * i / kSeatSides;
            all[static_cast<std::size_t>(i)] = {std::cos(angle), std::sin(angle)};
        }
        return all;
    }();
    return directions;
}

double distanceToPiece(const Eigen::Vector2d& p, const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    const Eigen::Vector2d along = b - a;
    const double square = along.squaredNorm();
    const double share = square > 0.0 ? std::clamp((p - a).dot(along) / square, 0.0, 1.0) : 0.0;
    return (p - a - share * along).norm();
}

/// Signed distance of (t, r), r >= 0, from the solid of a profile.
double distanceToProfile(const Profile& profile, const Eigen::Vector2d& p) {
    std::vector<Eigen::Vector2d> line{{profile.front().tMm, 0.0}};
    for (const auto& ring : profile)
        line.emplace_back(ring.tMm, ring.radiusMm);
    line.emplace_back(profile.back().tMm, 0.0);
    double least = std::numeric_limits<double>::max();
    for (std::size_t i = 0; i + 1 < line.size(); ++i)
        least = std::min(least, distanceToPiece(p, line[i], line[i + 1]));
    const bool beside = p.x() >= profile.front().tMm && p.x() <= profile.back().tMm;
    return beside && p.y() < radiusAt(profile, p.x()) ? -least : least;
}

/// Section of the body: its distance to a place in its plane, below 0 inside.
double distanceToSection(const std::array<double, kSeatSides>& radii, const Eigen::Vector2d& p) {
    const auto& sides = sideDirections();
    double least = std::numeric_limits<double>::max();
    bool inside = true;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const std::size_t j = (i + 1) % sides.size();
        const Eigen::Vector2d a = radii[i] * sides[i], b = radii[j] * sides[j];
        least = std::min(least, distanceToPiece(p, a, b));
        // The wedge that holds the place decides.
        if (sides[i].x() * p.y() - sides[i].y() * p.x() >= 0.0 && p.x() * sides[j].y() - p.y() * sides[j].x() >= 0.0)
            inside = (b - a).x() * (p - a).y() - (b - a).y() * (p - a).x() > 0.0;
    }
    return inside ? -least : least;
}

/// Signed distance of a place, t along the line and `across` in the section's coordinates, from a body in the form of the wall: the
/// nearest of its rings and of the section at t.
double distanceToFormed(const Profile& profile, double t, const Eigen::Vector2d& across) {
    const double off = across.norm();
    const bool beside = t >= profile.front().tMm && t <= profile.back().tMm;
    std::array<double, kSeatSides> radii;
    double least = std::numeric_limits<double>::max();
    bool inside = false;
    if (beside) {
        const BetweenRings at = ringsAbout(profile, t);
        for (std::size_t i = 0; i < radii.size(); ++i)
            radii[i] = at.low.radiiMm[i] + at.share * (at.high.radiiMm[i] - at.low.radiiMm[i]);
        const double here = distanceToSection(radii, across);
        inside = here < 0.0;
        least = std::abs(here);
        if (inside) least = std::min({least, t - profile.front().tMm, profile.back().tMm - t});
    }
    for (const SeatedBody::Ring& ring : profile) {
        const double away = std::abs(ring.tMm - t);
        const double widest = *std::max_element(ring.radiiMm.begin(), ring.radiiMm.end());
        if (away >= least || (!inside && std::hypot(away, std::max(0.0, off - widest)) >= least)) continue;
        std::copy(ring.radiiMm.begin(), ring.radiiMm.end(), radii.begin());
        const double there = distanceToSection(radii, across);
        least = std::min(least, std::hypot(away, inside ? there : std::max(0.0, there)));
    }
    return inside ? -least : least;
}

void addSolid(const SeatedBody& seated, const SectionFrame& frame, const Profile& profile, SurfaceMesh& mesh) {
    using Triangle = SurfaceMesh::Triangle;
    const auto first = static_cast<std::uint32_t>(mesh.points.size());
    const auto sides = static_cast<std::uint32_t>(kSeatSides);
    const auto& directions = sideDirections();
    const auto inPatient = [&](const Eigen::Vector2d& p) -> Eigen::Vector3d { return p.x() * frame.u.mm + p.y() * frame.v.mm; };
    const auto addRing = [&](const SeatedBody::Ring& ring, double slope, double cap) {
        for (std::size_t i = 0; i < directions.size(); ++i) {
            const std::size_t before = (i + directions.size() - 1) % directions.size(), after = (i + 1) % directions.size();
            const Eigen::Vector2d along = sideRadius(ring, after) * directions[after] - sideRadius(ring, before) * directions[before];
            const Eigen::Vector3d out = inPatient(Eigen::Vector2d(along.y(), -along.x()).normalized());
            mesh.points.push_back((seated.at(ring.tMm).mm + sideRadius(ring, i) * inPatient(directions[i])).cast<float>());
            const Eigen::Vector3d normal = out - slope * seated.direction.mm + cap * seated.direction.mm;
            mesh.normals.push_back(normal.normalized().cast<float>());
        }
    };
    for (std::size_t k = 0; k < profile.size(); ++k) {
        const auto &a = profile[k == 0 ? 0 : k - 1], &b = profile[std::min(k + 1, profile.size() - 1)];
        const double slope = b.tMm > a.tMm ? (b.radiusMm - a.radiusMm) / (b.tMm - a.tMm) : 0.0;
        addRing(profile[k], slope, k == 0 ? -1.0 : k + 1 == profile.size() ? 1.0 : 0.0);
    }
    const auto rings = static_cast<std::uint32_t>(profile.size());
    for (std::uint32_t k = 0; k + 1 < rings; ++k)
        for (std::uint32_t i = 0; i < sides; ++i) {
            const std::uint32_t j = (i + 1) % sides, a = first + k * sides, b = a + sides;
            mesh.triangles.push_back(Triangle{a + i, a + j, b + j});
            mesh.triangles.push_back(Triangle{a + i, b + j, b + i});
        }
    for (const bool farEnd : {false, true}) {
        const std::uint32_t ring = first + (farEnd ? rings - 1 : 0) * sides;
        const auto middle = static_cast<std::uint32_t>(mesh.points.size());
        const double t = farEnd ? profile.back().tMm : profile.front().tMm;
        mesh.points.push_back(seated.at(t).mm.cast<float>());
        mesh.normals.push_back(((farEnd ? 1.0 : -1.0) * seated.direction.mm).cast<float>());
        for (std::uint32_t i = 0; i < sides; ++i) {
            const std::uint32_t j = (i + 1) % sides;
            mesh.triangles.push_back(farEnd ? Triangle{middle, ring + i, ring + j} : Triangle{middle, ring + j, ring + i});
        }
    }
}

/// The closed lines in which a plane cuts a closed mesh. A point of the mesh that lies in the plane counts as above it.
std::vector<std::vector<Eigen::Vector2d>> cutMesh(const SurfaceMesh& mesh, const SectionFrame& frame) {
    std::vector<double> height;
    height.reserve(mesh.points.size());
    for (std::size_t i = 0; i < mesh.points.size(); ++i)
        height.push_back(signedDistanceMm(frame.plane(), mesh.point(i)));
    using Edge = std::pair<std::uint32_t, std::uint32_t>;
    const auto edge = [](std::uint32_t a, std::uint32_t b) { return Edge{std::min(a, b), std::max(a, b)}; };
    std::map<Edge, Edge> next; // each triangle leads from the edge where the line enters it to that where it leaves
    for (const auto& triangle : mesh.triangles) {
        std::optional<Edge> enters, leaves;
        for (std::size_t k = 0; k < 3; ++k) {
            const std::uint32_t a = triangle[k], b = triangle[(k + 1) % 3];
            if (height[a] < 0.0 && height[b] >= 0.0) enters = edge(a, b);
            if (height[a] >= 0.0 && height[b] < 0.0) leaves = edge(a, b);
        }
        if (enters && leaves) next[*enters] = *leaves;
    }
    std::vector<std::vector<Eigen::Vector2d>> loops;
    while (!next.empty()) {
        auto at = next.begin();
        std::vector<Eigen::Vector2d> loop;
        while (at != next.end()) {
            const auto [a, b] = at->first;
            const double share = height[a] / (height[a] - height[b]);
            const Eigen::Vector3d p = mesh.point(a).mm + share * (mesh.point(b).mm - mesh.point(a).mm);
            loop.push_back(frame.sectionFromPatient({p}));
            const Edge to = at->second;
            next.erase(at);
            at = next.find(to);
        }
        if (loop.size() >= 3) loops.push_back(std::move(loop));
    }
    return loops;
}

} // namespace

double SeatedBody::radiusMm(double tMm) const {
    assert(!body.empty());
    return radiusAt(body, tMm);
}

double distanceMm(const SeatedBody& seated, const PatientPoint& p) {
    const PatientVector q = p - seated.origin;
    const double t = q.dot(seated.direction);
    const Eigen::Vector2d place(t, (q.mm - t * seated.direction.mm).norm());
    double least = std::numeric_limits<double>::max();
    for (const Profile& profile : profilesOf(seated)) {
        if (profile.front().radiiMm.empty()) {
            least = std::min(least, distanceToProfile(profile, place));
            continue;
        }
        const SectionFrame frame = frameOf(Plane{seated.origin, seated.direction});
        least = std::min(least, distanceToFormed(profile, t, frame.sectionFromPatient(p)));
    }
    return least;
}

SurfaceMesh seatedMesh(const SeatedBody& seated) {
    const SectionFrame frame = frameOf(Plane{seated.origin, seated.direction});
    SurfaceMesh mesh;
    for (const Profile& profile : profilesOf(seated))
        addSolid(seated, frame, profile, mesh);
    return mesh;
}

std::vector<std::vector<Eigen::Vector2d>> outlinesIn(const SeatedBody& seated, const SectionFrame& frame) {
    const SectionFrame about = frameOf(Plane{seated.origin, seated.direction});
    std::vector<std::vector<Eigen::Vector2d>> outlines;
    for (const Profile& profile : profilesOf(seated)) {
        SurfaceMesh mesh;
        addSolid(seated, about, profile, mesh);
        for (auto& loop : cutMesh(mesh, frame))
            outlines.push_back(std::move(loop));
    }
    return outlines;
}

std::vector<std::vector<PatientPoint>> seatedLines(const SeatedBody& seated) {
    constexpr std::size_t kSideLines = 8;
    constexpr double kRingEveryMm = 4.0;
    const SectionFrame frame = frameOf(Plane{seated.origin, seated.direction});
    const auto& directions = sideDirections();
    const auto on = [&](double t, double radius, std::size_t side) {
        return PatientPoint{seated.at(t).mm +
                            radius * (directions[side].x() * frame.u.mm + directions[side].y() * frame.v.mm)};
    };
    std::vector<std::vector<PatientPoint>> lines;
    for (const Profile& profile : profilesOf(seated)) {
        const double from = profile.front().tMm, to = profile.back().tMm;
        const int pieces = std::max(1, static_cast<int>(std::lround((to - from) / kRingEveryMm)));
        for (int i = 0; i <= pieces; ++i) {
            const double t = from + (to - from) * i / pieces;
            const BetweenRings at = ringsAbout(profile, t);
            std::vector<PatientPoint> ring;
            for (std::size_t side = 0; side <= directions.size(); ++side) {
                const std::size_t k = side % directions.size();
                const double low = sideRadius(at.low, k), high = sideRadius(at.high, k);
                ring.push_back(on(t, low + at.share * (high - low), k));
            }
            lines.push_back(std::move(ring));
        }
        for (std::size_t line = 0; line < kSideLines; ++line) {
            const std::size_t side = line * directions.size() / kSideLines;
            std::vector<PatientPoint> points;
            for (const auto& at : profile)
                points.push_back(on(at.tMm, sideRadius(at, side), side));
            lines.push_back(std::move(points));
        }
    }
    return lines;
}

} // namespace gauge::core
