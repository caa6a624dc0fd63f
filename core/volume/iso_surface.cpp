#include "core/volume/iso_surface.h"

#include "core/parallel/cancelled.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/bit_rows.h"
#include "core/volume/cube_cases.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <limits>
#include <string>

namespace gauge::core {
namespace {

constexpr std::size_t kSlicesAtOnce = 4;

/// Where the numbers of a row's points begin: on edges along i, along j, along k, and the end.
struct RowStarts {
    std::uint32_t along[3] = {0, 0, 0};
};

class Extraction {
public:
    Extraction(const ValueBlock& block, double level, const WorkContext& work)
        : m_block(block), m_level(level), m_work(work), m_bits(block.size),
          m_starts(static_cast<std::size_t>(block.size.y()) * static_cast<std::size_t>(block.size.z())),
          m_triangleStart(static_cast<std::size_t>(block.size.z()) + 1, 0),
          m_outwards(-block.patientFromBlock.linear().inverse().transpose()),
          m_mirrored(block.patientFromBlock.linear().determinant() < 0.0) {}

    Result<SurfaceMesh> run() {
        // Inside: value >= level, which for whole numbers is value > ceil(level) - 1.
        const double below = std::ceil(m_level) - 1.0;
        SurfaceMesh mesh;
        if (below < std::numeric_limits<std::int16_t>::min() || below >= std::numeric_limits<std::int16_t>::max())
            return mesh; // all inside or all outside
        forSlices([&](int k) { classify(k, static_cast<std::int16_t>(below)); }, 0.5);
        forSlices([&](int k) { count(k); }, 0.6);
        if (m_work.stopped())
            return cancelled("Making the surface");
        const auto points = numberPoints();
        if (!points)
            return tl::make_unexpected(points.error());
        mesh.points.resize(*points);
        mesh.normals.resize(*points);
        mesh.triangles.resize(m_triangleStart.back());
        m_mesh = &mesh;
        forSlices([&](int k) { placePoints(k); placeTriangles(k); }, 1.0);
        if (m_work.stopped())
            return cancelled("Making the surface");
        return mesh;
    }

private:
    template <class Body> void forSlices(const Body& body, double shareAfter) {
        parallelFor(static_cast<std::size_t>(m_block.size.z()), kSlicesAtOnce,
                    [&](std::size_t begin, std::size_t end) {
                        for (std::size_t k = begin; k < end && !m_work.stopped(); ++k)
                            body(static_cast<int>(k));
                    });
        m_work.report(shareAfter);
    }

    const std::int16_t* values(int j, int k) const {
        return m_block.values + static_cast<std::ptrdiff_t>(m_block.size.x()) *
                                    (j + static_cast<std::ptrdiff_t>(m_block.size.y()) * k);
    }
    RowStarts& starts(int j, int k) {
        return m_starts[static_cast<std::size_t>(j) +
                        static_cast<std::size_t>(m_block.size.y()) * static_cast<std::size_t>(k)];
    }

    void classify(int k, std::int16_t below) {
        for (int j = 0; j < m_block.size.y(); ++j)
            bitsAbove(values(j, k), m_block.size.x(), below, m_bits.row(j, k));
    }

    /// Crossed edges of row (j, k) along the axis, in one word; edges that leave the block are none.
    Word crossings(int axis, int j, int k, std::size_t word) const {
        const Word* row = m_bits.row(j, k);
        if (axis == 0)
            return (row[word] ^ shifted(row, word, m_bits.words())) & m_bits.withNext(word);
        const bool last = axis == 1 ? j + 1 >= m_block.size.y() : k + 1 >= m_block.size.z();
        return last ? 0 : row[word] ^ m_bits.row(axis == 1 ? j + 1 : j, axis == 2 ? k + 1 : k)[word];
    }

    /// Counts points (into m_starts) and triangles (into m_triangleStart) of a slice.
    void count(int k) {
        std::uint32_t triangles = 0;
        for (int j = 0; j < m_block.size.y(); ++j) {
            RowStarts& row = starts(j, k);
            for (std::size_t word = 0; word < m_bits.words(); ++word)
                for (int axis = 0; axis < 3; ++axis)
                    row.along[axis] += countOf(crossings(axis, j, k, word));
            forCubes(j, k, [&](std::size_t, int, unsigned corners) { triangles += m_cases[corners].count; });
        }
        m_triangleStart[static_cast<std::size_t>(k) + 1] = triangles;
    }

    /// Turns counts into first numbers; the number of all points.
    Result<std::size_t> numberPoints() {
        std::uint64_t next = 0;
        for (RowStarts& row : m_starts)
            for (std::uint32_t& start : row.along) {
                const std::uint32_t here = start;
                start = static_cast<std::uint32_t>(next);
                next += here;
            }
        if (next > std::numeric_limits<std::uint32_t>::max())
            return failure(ErrorCode::InvalidArgument,
                           "Cannot make the surface: it has " + std::to_string(next) +
                               " points, more than 2^32. Take a smaller part of the images or a level away from noise.");
        for (std::size_t k = 1; k < m_triangleStart.size(); ++k)
            m_triangleStart[k] += m_triangleStart[k - 1];
        return static_cast<std::size_t>(next);
    }

    /// Calls body(word, bit, corners) for each cube between rows j, j + 1 and k, k + 1 that the surface passes through.
    template <class Body> void forCubes(int j, int k, const Body& body) const {
        if (j + 1 >= m_block.size.y() || k + 1 >= m_block.size.z())
            return;
        const Word* rows[4] = {m_bits.row(j, k), m_bits.row(j + 1, k), m_bits.row(j, k + 1), m_bits.row(j + 1, k + 1)};
        const std::size_t words = m_bits.words();
        for (std::size_t word = 0; word < words; ++word) {
            Word any = 0, all = ~Word{0}, next[4];
            for (int r = 0; r < 4; ++r) {
                next[r] = shifted(rows[r], word, words);
                any |= rows[r][word] | next[r];
                all &= rows[r][word] & next[r];
            }
            for (Word left = any & ~all & m_bits.withNext(word); left != 0; left &= left - 1) {
                const int bit = std::countr_zero(left);
                unsigned corners = 0;
                for (unsigned r = 0; r < 4; ++r)
                    corners |= static_cast<unsigned>((rows[r][word] >> bit & 1) | (next[r] >> bit & 1) << 1) << 2 * r;
                body(word, bit, corners);
            }
        }
    }

    void placePoints(int k) {
        for (int j = 0; j < m_block.size.y(); ++j)
            for (int axis = 0; axis < 3; ++axis) {
                std::uint32_t number = starts(j, k).along[axis];
                for (std::size_t word = 0; word < m_bits.words(); ++word)
                    for (Word left = crossings(axis, j, k, word); left != 0; left &= left - 1)
                        placePoint(number++, axis, {static_cast<int>(64 * word) + std::countr_zero(left), j, k});
            }
    }

    void placePoint(std::uint32_t number, int axis, const Eigen::Vector3i& at) {
        const std::ptrdiff_t row = m_block.size.x(), step[3] = {1, row, row * m_block.size.y()};
        const std::int16_t* from = values(at.y(), at.z()) + at.x();
        const double a = from[0], b = from[step[axis]];
        const double share = crossingShare(m_level, a, b);
        Eigen::Vector3d place = at.cast<double>();
        place[axis] += share;
        m_mesh->points[number] = (m_block.patientFromBlock * place).cast<float>();

        Eigen::Vector3i to = at;
        ++to[axis];
        Eigen::Vector3d gradient;
        for (int d = 0; d < 3; ++d) {
            const double g0 = slope(from, step[d], at[d], m_block.size[d]);
            const double g1 = slope(from + step[axis], step[d], to[d], m_block.size[d]);
            gradient[d] = g0 + (g1 - g0) * share;
        }
        if (gradient.squaredNorm() < 1e-6) // flat on both sides: the edge itself still knows
            gradient = Eigen::Vector3d::Unit(axis) * (b - a);
        m_mesh->normals[number] = (m_outwards * gradient).normalized().cast<float>();
    }

    /// Central difference; at the block's faces one-sided.
    static double slope(const std::int16_t* p, std::ptrdiff_t step, int at, int size) {
        const bool first = at == 0, last = at + 1 >= size;
        const double ahead = p[last ? 0 : step], behind = p[first ? 0 : -step];
        return (ahead - behind) * (first || last ? 1.0 : 0.5);
    }

    /// The four edge rows of each direction around a cube row, with the number of points before the word in hand.
    struct EdgeRows {
        Word bits[8];
        std::uint32_t before[8];
    };
    /// Edge rows in the order of cube_cases.h: along i at (j, k), along j at k, along k at j.
    struct EdgeRow {
        int axis, dj, dk;
    };
    static constexpr EdgeRow kEdgeRows[8] = {{0, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0, 1, 1},
                                             {1, 0, 0}, {1, 0, 1}, {2, 0, 0}, {2, 1, 0}};

    void placeTriangles(int k) {
        auto* out = m_mesh->triangles.data() + m_triangleStart[static_cast<std::size_t>(k)];
        for (int j = 0; j + 1 < m_block.size.y(); ++j) {
            EdgeRows rows{};
            std::size_t counted = 0, loaded = std::numeric_limits<std::size_t>::max();
            for (int r = 0; r < 8; ++r)
                if (k + kEdgeRows[r].dk < m_block.size.z())
                    rows.before[r] = starts(j + kEdgeRows[r].dj, k + kEdgeRows[r].dk).along[kEdgeRows[r].axis];
            forCubes(j, k, [&](std::size_t word, int bit, unsigned corners) {
                if (word != loaded) {
                    loadRows(j, k, word, counted, rows);
                    loaded = word;
                }
                const CubeCase& cube = m_cases[corners];
                for (int t = 0; t < cube.count; ++t, ++out) {
                    for (std::size_t i = 0; i < 3; ++i)
                        (*out)[i] = numberOf(rows, cube.triangles[static_cast<std::size_t>(t)][i], bit);
                    if (m_mirrored)
                        std::swap((*out)[1], (*out)[2]);
                }
            });
        }
    }

    /// Counts on from word `counted` to `word` and takes its bits.
    void loadRows(int j, int k, std::size_t word, std::size_t& counted, EdgeRows& rows) const {
        for (int r = 0; r < 8; ++r) {
            const EdgeRow& e = kEdgeRows[r];
            for (std::size_t w = counted; w < word; ++w)
                rows.before[r] += countOf(crossings(e.axis, j + e.dj, k + e.dk, w));
            rows.bits[r] = crossings(e.axis, j + e.dj, k + e.dk, word);
        }
        counted = word;
    }

    static std::uint32_t numberOf(const EdgeRows& rows, int edge, int bit) {
        // Edges 0-3: one row each; 4-7 and 8-11: two in each row, the odd ones at i + 1.
        const int row = edge < 4 ? edge : edge < 8 ? 4 + (edge - 4) / 2 : 6 + (edge - 8) / 2;
        const int at = edge < 4 ? bit : bit + (edge & 1);
        return rows.before[row] + countBelow(rows.bits[row], at);
    }

    const ValueBlock& m_block;
    const double m_level;
    const WorkContext& m_work;
    BitRows m_bits;
    std::vector<RowStarts> m_starts;
    std::vector<std::size_t> m_triangleStart;
    const std::array<CubeCase, 256>& m_cases = cubeCases();
    const Eigen::Matrix3d m_outwards; ///< turns a gradient of the grid into an outward direction of the patient
    const bool m_mirrored;
    SurfaceMesh* m_mesh = nullptr;
};

} // namespace

double crossingShare(double level, double a, double b) {
    constexpr double kHeld = 0.001; // points of different edges never coincide
    return std::clamp((level - a) / (b - a), kHeld, 1.0 - kHeld);
}

Result<SurfaceMesh> isoSurface(const ValueBlock& block, double level, const WorkContext& work) {
    if (!block.values || (block.size.array() < 2).any())
        return failure(ErrorCode::InvalidArgument,
                       "Cannot make a surface: the block has " + std::to_string(block.size.x()) + " x " +
                           std::to_string(block.size.y()) + " x " + std::to_string(block.size.z()) +
                           " values; at least 2 along each axis are needed.");
    if (!std::isfinite(level))
        return failure(ErrorCode::NonFinite, "Cannot make a surface: its level is not a finite number.");
    const double volume = block.patientFromBlock.linear().determinant();
    if (!block.patientFromBlock.matrix().allFinite() || !std::isfinite(volume) || volume == 0.0)
        return failure(ErrorCode::Degenerate,
                       "Cannot make a surface: the grid's placement in the patient has no inverse.");
    return Extraction(block, level, work).run();
}

Result<SurfaceMesh> isoSurface(const Volume& volume, double level, const WorkContext& work) {
    return isoSurface(ValueBlock{volume.data(), volume.size(), volume.patientFromVoxel()}, level, work);
}

} // namespace gauge::core
