#include "core/volume/cube_cases.h"

#include <cassert>
#include <vector>

namespace gauge::core {
namespace {

constexpr int kEdges = 12, kFaces = 6;

/// Corners of each face, counter-clockwise seen from outside the cube.
constexpr int kFaceCorners[kFaces][4] = {
    {0, 2, 3, 1}, {4, 5, 7, 6},  // z = 0, z = 1
    {0, 1, 5, 4}, {2, 6, 7, 3},  // y = 0, y = 1
    {0, 4, 6, 2}, {1, 3, 7, 5}}; // x = 0, x = 1

int edgeBetween(int a, int b) {
    for (int e = 0; e < kEdges; ++e) {
        const auto ends = cornersOfEdge(e);
        if ((ends[0] == a && ends[1] == b) || (ends[0] == b && ends[1] == a))
            return e;
    }
    assert(false);
    return 0;
}

bool liesInFace(int edge, int face) {
    int found = 0;
    for (const int corner : kFaceCorners[face])
        for (const int end : cornersOfEdge(edge))
            found += corner == end;
    return found == 2;
}

bool shareAFace(int a, int b) {
    for (int face = 0; face < kFaces; ++face)
        if (liesInFace(a, face) && liesInFace(b, face))
            return true;
    return false;
}

/// For each crossed edge, the edge where the line of one face leads from it; -1 for the others.
std::array<int, kEdges> linesOf(unsigned corners) {
    std::array<int, kEdges> next;
    next.fill(-1);
    const auto inside = [&](int corner) { return (corners >> corner & 1u) != 0; };
    for (const auto& face : kFaceCorners)
        for (int i = 0; i < 4; ++i) {
            const int before = face[i], first = face[(i + 1) % 4];
            if (inside(before) || !inside(first))
                continue; // one does not enter here
            int last = i + 1;
            while (inside(face[(last + 1) % 4]))
                ++last;
            next[static_cast<std::size_t>(edgeBetween(before, first))] =
                edgeBetween(face[last % 4], face[(last + 1) % 4]);
        }
    return next;
}

/// Fills a loop with triangles so that as few inner sides as possible lie in a face of the cube.
class LoopFilling {
public:
    LoopFilling(std::vector<int> loop, CubeCase& out) : m_loop(std::move(loop)), m_out(out) {
        fill(0, m_loop.size() - 1);
    }

private:
    /// Inner sides in a face between loop points `from` and `to`, filled at best.
    int cost(std::size_t from, std::size_t to) const {
        if (to - from < 2)
            return 0;
        return costWith(from, bestApex(from, to), to);
    }
    int sideCost(std::size_t a, std::size_t b) const { return b - a > 1 && shareAFace(m_loop[a], m_loop[b]) ? 1 : 0; }
    int costWith(std::size_t from, std::size_t apex, std::size_t to) const {
        return sideCost(from, apex) + sideCost(apex, to) + cost(from, apex) + cost(apex, to);
    }
    std::size_t bestApex(std::size_t from, std::size_t to) const {
        std::size_t best = from + 1;
        for (std::size_t apex = from + 1; apex < to; ++apex)
            if (costWith(from, apex, to) < costWith(from, best, to))
                best = apex;
        return best;
    }
    void fill(std::size_t from, std::size_t to) {
        if (to - from < 2)
            return;
        const std::size_t apex = bestApex(from, to);
        assert(m_out.count < CubeCase::kMostTriangles);
        m_out.triangles[m_out.count++] = {static_cast<std::uint8_t>(m_loop[from]),
                                          static_cast<std::uint8_t>(m_loop[apex]),
                                          static_cast<std::uint8_t>(m_loop[to])};
        fill(from, apex);
        fill(apex, to);
    }

    std::vector<int> m_loop;
    CubeCase& m_out;
};

CubeCase makeCase(unsigned corners) {
    CubeCase result;
    auto next = linesOf(corners);
    for (int start = 0; start < kEdges; ++start) {
        std::vector<int> loop;
        for (int at = start; next[static_cast<std::size_t>(at)] >= 0;) {
            loop.push_back(at);
            const int to = next[static_cast<std::size_t>(at)];
            next[static_cast<std::size_t>(at)] = -1;
            at = to;
        }
        if (!loop.empty())
            LoopFilling(std::move(loop), result);
    }
    return result;
}

} // namespace

std::array<int, 2> cornersOfEdge(int edge) {
    const int a = edge & 1, b = edge >> 1 & 1;
    switch (edge >> 2) {
    case 0:
        return {2 * a + 4 * b, 2 * a + 4 * b + 1};
    case 1:
        return {a + 4 * b, a + 4 * b + 2};
    default:
        return {a + 2 * b, a + 2 * b + 4};
    }
}

const std::array<CubeCase, 256>& cubeCases() {
    static const auto cases = [] {
        std::array<CubeCase, 256> all;
        for (unsigned corners = 0; corners < all.size(); ++corners)
            all[corners] = makeCase(corners);
        return all;
    }();
    return cases;
}

} // namespace gauge::core
