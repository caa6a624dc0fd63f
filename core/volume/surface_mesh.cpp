#include "core/volume/surface_mesh.h"

#include <algorithm>
#include <numeric>

namespace gauge::core {
namespace {

/// An edge of a triangle: lower and higher index in one number, and whether the triangle runs from lower to higher.
struct HalfEdge {
    std::uint64_t ends;
    bool upwards;
};

std::vector<HalfEdge> halfEdges(const SurfaceMesh& mesh) {
    std::vector<HalfEdge> edges;
    edges.reserve(3 * mesh.triangles.size());
    for (const auto& t : mesh.triangles)
        for (std::size_t i = 0; i < 3; ++i) {
            const std::uint64_t a = t[i], b = t[(i + 1) % 3];
            edges.push_back({std::min(a, b) << 32 | std::max(a, b), a < b});
        }
    std::sort(edges.begin(), edges.end(), [](const HalfEdge& a, const HalfEdge& b) { return a.ends < b.ends; });
    return edges;
}

/// Union-find over points: the representative of each one's piece.
std::vector<std::uint32_t> pieceOfPoint(const SurfaceMesh& mesh) {
    std::vector<std::uint32_t> parent(mesh.points.size());
    std::iota(parent.begin(), parent.end(), 0u);
    const auto root = [&](std::uint32_t p) {
        while (parent[p] != p)
            p = parent[p] = parent[parent[p]];
        return p;
    };
    const auto join = [&](std::uint32_t p, std::uint32_t q) {
        const std::uint32_t a = root(p), b = root(q);
        parent[std::max(a, b)] = std::min(a, b);
    };
    for (const auto& t : mesh.triangles) {
        join(t[0], t[1]);
        join(t[1], t[2]);
    }
    for (std::uint32_t p = 0; p < parent.size(); ++p)
        parent[p] = root(p);
    return parent;
}

} // namespace

double areaMm2(const SurfaceMesh& mesh) {
    double sum = 0.0;
    for (const auto& t : mesh.triangles) {
        const Eigen::Vector3d a = mesh.point(t[0]).mm;
        sum += 0.5 * (mesh.point(t[1]).mm - a).cross(mesh.point(t[2]).mm - a).norm();
    }
    return sum;
}

double enclosedVolumeMm3(const SurfaceMesh& mesh) {
    if (mesh.empty())
        return 0.0;
    const Eigen::Vector3d about = mesh.point(mesh.triangles.front()[0]).mm;
    double sum = 0.0;
    for (const auto& t : mesh.triangles) {
        const Eigen::Vector3d a = mesh.point(t[0]).mm - about, b = mesh.point(t[1]).mm - about;
        sum += a.dot(b.cross(mesh.point(t[2]).mm - about)) / 6.0;
    }
    return sum;
}

MeshTopology topology(const SurfaceMesh& mesh) {
    MeshTopology result;
    result.triangles = mesh.triangles.size();
    const auto edges = halfEdges(mesh);
    for (std::size_t begin = 0; begin < edges.size();) {
        std::size_t end = begin;
        int upwards = 0;
        for (; end < edges.size() && edges[end].ends == edges[begin].ends; ++end)
            upwards += edges[end].upwards ? 1 : -1;
        ++result.edges;
        if (end - begin == 1)
            ++result.borderEdges;
        else if (end - begin > 2 || upwards != 0)
            ++result.tangledEdges;
        begin = end;
    }
    const auto piece = pieceOfPoint(mesh);
    std::vector<std::uint8_t> used(mesh.points.size(), 0);
    for (const auto& t : mesh.triangles)
        for (const std::uint32_t p : t)
            used[p] = 1;
    for (std::uint32_t p = 0; p < used.size(); ++p) {
        result.points += used[p];
        result.pieces += used[p] && piece[p] == p;
    }
    return result;
}

SurfaceMesh withoutCrumbs(const SurfaceMesh& mesh, double leastShare, std::vector<std::uint32_t>* kept) {
    const auto piece = pieceOfPoint(mesh);
    std::vector<std::size_t> size(mesh.points.size(), 0);
    for (const auto& t : mesh.triangles)
        ++size[piece[t[0]]];
    const double least = leastShare * static_cast<double>(mesh.triangles.size());
    constexpr std::uint32_t kNone = 0xFFFFFFFFu;
    std::vector<std::uint32_t> renumbered(mesh.points.size(), kNone);
    SurfaceMesh result;
    if (kept)
        kept->clear();
    for (std::uint32_t p = 0; p < mesh.points.size(); ++p) {
        const std::size_t triangles = size[piece[p]];
        if (triangles == 0 || static_cast<double>(triangles) < least)
            continue;
        renumbered[p] = static_cast<std::uint32_t>(result.points.size());
        result.points.push_back(mesh.points[p]);
        result.normals.push_back(mesh.normals[p]);
        if (kept)
            kept->push_back(p);
    }
    for (const auto& t : mesh.triangles)
        if (renumbered[t[0]] != kNone)
            result.triangles.push_back({renumbered[t[0]], renumbered[t[1]], renumbered[t[2]]});
    return result;
}

void calmNormals(SurfaceMesh& mesh, int rounds) {
    for (int round = 0; round < rounds; ++round) {
        std::vector<Eigen::Vector3f> sum = mesh.normals;
        for (const auto& t : mesh.triangles) {
            const Eigen::Vector3f all = mesh.normals[t[0]] + mesh.normals[t[1]] + mesh.normals[t[2]];
            for (const std::uint32_t p : t)
                sum[p] += all;
        }
        for (std::size_t p = 0; p < sum.size(); ++p)
            if (const float length = sum[p].norm(); length > 1e-6f)
                mesh.normals[p] = sum[p] / length;
    }
}

} // namespace gauge::core
