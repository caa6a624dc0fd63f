#include "core/volume/distance_transform.h"

#include "core/parallel/parallel_for.h"

#include <cmath>
#include <limits>
#include <vector>

namespace gauge::core {
namespace {

constexpr float kUnreached = 1e20f;

/// Lower envelope of the parabolas (q - i)^2 + f[i], evaluated back onto f.
class ParabolaEnvelope {
public:
    explicit ParabolaEnvelope(std::size_t longest) : m_f(longest), m_vertex(longest), m_from(longest + 1) {}

    void transform(float* values, std::ptrdiff_t stride, int size) {
        for (int i = 0; i < size; ++i)
            m_f[static_cast<std::size_t>(i)] = values[i * stride];
        int top = -1;
        for (int q = 0; q < size; ++q) {
            if (f(q) >= kUnreached)
                continue;
            double start = -std::numeric_limits<double>::infinity();
            while (top >= 0) {
                const int v = m_vertex[static_cast<std::size_t>(top)];
                start = ((f(q) + double(q) * q) - (f(v) + double(v) * v)) / (2.0 * (q - v));
                if (start > m_from[static_cast<std::size_t>(top)])
                    break;
                --top;
            }
            if (top < 0)
                start = -std::numeric_limits<double>::infinity();
            ++top;
            m_vertex[static_cast<std::size_t>(top)] = q;
            m_from[static_cast<std::size_t>(top)] = start;
        }
        if (top < 0)
            return;
        int k = 0;
        for (int q = 0; q < size; ++q) {
            while (k < top && m_from[static_cast<std::size_t>(k) + 1] < q)
                ++k;
            const int v = m_vertex[static_cast<std::size_t>(k)];
            values[q * stride] = static_cast<float>(double(q - v) * (q - v) + f(v));
        }
    }

private:
    double f(int i) const { return m_f[static_cast<std::size_t>(i)]; }

    std::vector<float> m_f;
    std::vector<int> m_vertex;
    std::vector<double> m_from;
};

} // namespace

BoxField<float> distanceInsideMm(const BoxMask& mask) {
    const BoxGrid& g = mask.grid;
    BoxField<float> squared(g);
    for (std::size_t i = 0; i < squared.values.size(); ++i)
        squared.values[i] = mask.values[i] ? kUnreached : 0.0f;

    const int nx = g.size.x(), ny = g.size.y(), nz = g.size.z();
    const auto longest = static_cast<std::size_t>(g.size.maxCoeff());
    const auto alongLines = [&](int lines, int size, auto lineStart, std::ptrdiff_t stride) {
        parallelFor(static_cast<std::size_t>(lines), 16, [&](std::size_t begin, std::size_t end) {
            ParabolaEnvelope envelope(longest);
            for (std::size_t line = begin; line < end; ++line)
                envelope.transform(squared.values.data() + lineStart(static_cast<std::ptrdiff_t>(line)), stride,
                                   size);
        });
    };
    alongLines(ny * nz, nx, [&](std::ptrdiff_t l) { return l * nx; }, 1);
    alongLines(nx * nz, ny, [&](std::ptrdiff_t l) { return l / nx * g.strideZ() + l % nx; }, g.strideY());
    alongLines(nx * ny, nz, [&](std::ptrdiff_t l) { return l; }, g.strideZ());

    for (float& v : squared.values)
        v = v >= kUnreached ? std::numeric_limits<float>::max()
                            : static_cast<float>(std::sqrt(static_cast<double>(v)) * g.stepMm);
    return squared;
}

} // namespace gauge::core
