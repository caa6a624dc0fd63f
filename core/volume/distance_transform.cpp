#include "core/volume/distance_transform.h"

#include "core/fast/fast_path.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/distance_columns.h"

#include <algorithm>
#include <vector>

namespace gauge::core {
namespace {

/// One transform. With both sides, squares in the background are kept as negative numbers: a node is on one side
/// only, and no second array is needed.
class DistanceTransform {
public:
    DistanceTransform(const MaskBlock& mask, bool bothSides, float* out)
        : m_mask(mask), m_bothSides(bothSides), m_out(out),
          m_rowLength(mask.size.x()), m_sliceLength(m_rowLength * mask.size.y()) {
        const Eigen::Vector3d& mm = mask.spacingMm;
        // Whole squares of steps where they are equal, else mm2.
        const bool even = mm.x() == mm.y() && mm.y() == mm.z();
        m_scale = even ? mm.x() : 1.0;
        for (int axis = 0; axis < 3; ++axis)
            for (int d = 0; d <= mask.size[axis]; ++d) {
                const double way = even ? d : d * mm[axis];
                m_squares[axis].push_back(static_cast<float>(way * way));
            }
    }

    void run() {
        const int ny = m_mask.size.y(), nz = m_mask.size.z();
        parallelFor(static_cast<std::size_t>(nz), 1, [&](std::size_t begin, std::size_t end) {
            Columns columns(ny);
            for (auto k = static_cast<std::ptrdiff_t>(begin); k < static_cast<std::ptrdiff_t>(end); ++k) {
                for (int j = 0; j < ny; ++j)
                    alongRow(k * m_sliceLength + j * m_rowLength);
                alongColumns(columns, k * m_sliceLength, m_rowLength, 1);
            }
        });
        parallelFor(static_cast<std::size_t>(ny), 1, [&](std::size_t begin, std::size_t end) {
            Columns columns(nz);
            for (auto j = static_cast<std::ptrdiff_t>(begin); j < static_cast<std::ptrdiff_t>(end); ++j)
                alongColumns(columns, j * m_rowLength, m_sliceLength, 2);
        });
    }

private:
    /// Room for sixteen columns, before and after, for each side.
    struct Columns {
        int length;
        std::vector<float> in, out, inBeyond, outBeyond;
        explicit Columns(int n)
            : length(n), in(static_cast<std::size_t>(n) * kDistanceLanes), out(in), inBeyond(in), outBeyond(in) {}
    };

    /// Squared distances along i to the other side: from the ends of each run.
    void alongRow(std::ptrdiff_t first) {
        const int n = m_mask.size.x();
        const std::uint8_t* mask = m_mask.values + first;
        const float* squares = m_squares[0].data();
        float* out = m_out + first;
        for (int begin = 0, end = 0; begin < n; begin = end) {
            const bool inside = mask[begin] != 0;
            for (end = begin + 1; end < n && (mask[end] != 0) == inside;)
                ++end;
            if (!inside && !m_bothSides) {
                std::fill(out + begin, out + end, 0.0f);
                continue;
            }
            const float sign = inside ? 1.0f : -1.0f;
            for (int i = begin; i < end; ++i) {
                const float before = begin > 0 ? squares[i - begin + 1] : kUnreachedSquare;
                const float after = end < n ? squares[end - i] : kUnreachedSquare;
                out[i] = sign * std::min(before, after);
            }
        }
    }

    /// All columns of one plane, sixteen at a time. Roots are taken after the last axis.
    void alongColumns(Columns& c, std::ptrdiff_t first, std::ptrdiff_t stride, int axis) {
        const bool last = axis == 2;
        const int values = c.length * kDistanceLanes;
        for (int i = 0; i < m_mask.size.x(); i += kDistanceLanes) {
            const int lanes = std::min(kDistanceLanes, m_mask.size.x() - i);
            float* at = m_out + first + i;
            take(c, at, stride, lanes);
            const auto lower = [&](std::vector<float>& in, std::vector<float>& out) {
                m_columns.lowest(in.data(), c.length, m_squares[axis].data(), out.data());
                if (last)
                    m_columns.roots(out.data(), values, m_scale, out.data());
            };
            lower(c.in, c.out);
            if (m_bothSides)
                lower(c.inBeyond, c.outBeyond);
            put(c, at, stride, lanes);
        }
    }

    void take(Columns& c, const float* at, std::ptrdiff_t stride, int lanes) const {
        for (int y = 0; y < c.length; ++y) {
            float* in = c.in.data() + y * kDistanceLanes;
            float* beyond = c.inBeyond.data() + y * kDistanceLanes;
            const float* from = at + y * stride;
            for (int l = 0; l < lanes; ++l) {
                in[l] = std::max(from[l], 0.0f);
                if (m_bothSides)
                    beyond[l] = std::max(-from[l], 0.0f);
            }
            for (int l = lanes; l < kDistanceLanes; ++l)
                in[l] = beyond[l] = 0.0f;
        }
    }

    void put(const Columns& c, float* at, std::ptrdiff_t stride, int lanes) const {
        for (int y = 0; y < c.length; ++y) {
            const float* out = c.out.data() + y * kDistanceLanes;
            const float* beyond = c.outBeyond.data() + y * kDistanceLanes;
            float* to = at + y * stride;
            for (int l = 0; l < lanes; ++l)
                to[l] = m_bothSides ? out[l] - beyond[l] : out[l]; // one of them is 0
        }
    }

    const MaskBlock& m_mask;
    const bool m_bothSides;
    float* m_out;
    const std::ptrdiff_t m_rowLength, m_sliceLength;
    const DistanceColumns& m_columns = fastOr(kDistanceColumns, distanceColumnsAvx2());
    std::vector<float> m_squares[3]; ///< of d steps along each axis
    double m_scale = 1.0;
};

MaskBlock blockOf(const BoxMask& mask) {
    return {mask.values.data(), mask.grid.size, Eigen::Vector3d::Constant(mask.grid.stepMm)};
}

} // namespace

void distanceInsideMm(const MaskBlock& mask, float* out) {
    DistanceTransform(mask, false, out).run();
}

void signedDistanceMm(const MaskBlock& mask, float* out) {
    DistanceTransform(mask, true, out).run();
}

BoxField<float> distanceInsideMm(const BoxMask& mask) {
    BoxField<float> distance(mask.grid, Unfilled{});
    distanceInsideMm(blockOf(mask), distance.values.data());
    return distance;
}

BoxField<float> signedDistanceMm(const BoxMask& mask) {
    BoxField<float> distance(mask.grid, Unfilled{});
    signedDistanceMm(blockOf(mask), distance.values.data());
    return distance;
}

} // namespace gauge::core
