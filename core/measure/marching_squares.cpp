#include "core/measure/marching_squares.h"

#include <array>
#include <cstdint>
#include <limits>
#include <unordered_map>

namespace gauge::core {
namespace {

/// A crossing lives on the edge from pixel (x, y) to its right (0) or lower (1) neighbour.
using EdgeKey = std::uint64_t;

EdgeKey edgeKey(int x, int y, int direction) {
    // Offset by one: the picture is padded by one pixel on each side.
    return (static_cast<EdgeKey>(y + 1) << 33) | (static_cast<EdgeKey>(x + 1) << 1) | static_cast<EdgeKey>(direction);
}

class Tracer {
public:
    Tracer(const std::vector<float>& values, int columns, int rows, float level)
        : m_values(values), m_columns(columns), m_rows(rows), m_level(level) {}

    std::vector<std::vector<Eigen::Vector2d>> trace() {
        for (int y = -1; y < m_rows; ++y)
            for (int x = -1; x < m_columns; ++x)
                addCell(x, y);
        std::vector<std::vector<Eigen::Vector2d>> loops;
        while (!m_next.empty()) {
            std::vector<Eigen::Vector2d> loop;
            EdgeKey at = m_next.begin()->first;
            for (auto step = m_next.find(at); step != m_next.end(); step = m_next.find(at)) {
                loop.push_back(crossing(at));
                at = step->second;
                m_next.erase(step);
            }
            loops.push_back(std::move(loop));
        }
        return loops;
    }

private:
    float value(int x, int y) const {
        if (x < 0 || y < 0 || x >= m_columns || y >= m_rows)
            return m_level - 1.0f;
        return m_values[static_cast<std::size_t>(y) * static_cast<std::size_t>(m_columns) + static_cast<std::size_t>(x)];
    }
    bool high(int x, int y) const { return value(x, y) > m_level; }

    Eigen::Vector2d crossing(EdgeKey key) const {
        const int direction = static_cast<int>(key & 1);
        const int x = static_cast<int>((key >> 1) & 0xffffffffu) - 1, y = static_cast<int>(key >> 33) - 1;
        const double a = value(x, y), b = direction == 0 ? value(x + 1, y) : value(x, y + 1);
        const double t = (static_cast<double>(m_level) - a) / (b - a);
        return direction == 0 ? Eigen::Vector2d(x + t, y) : Eigen::Vector2d(x, y + t);
    }

    /// Adds the directed segments of the cell with corners (x, y) .. (x + 1, y + 1), high values on their left.
    void addCell(int x, int y) {
        const int corners = (high(x, y) ? 1 : 0) | (high(x + 1, y) ? 2 : 0) | (high(x + 1, y + 1) ? 4 : 0) |
                            (high(x, y + 1) ? 8 : 0);
        const EdgeKey top = edgeKey(x, y, 0), bottom = edgeKey(x, y + 1, 0), left = edgeKey(x, y, 1),
                      right = edgeKey(x + 1, y, 1);
        const auto add = [this](EdgeKey from, EdgeKey to) { m_next[from] = to; };
        switch (corners) {
        case 1: add(top, left); break;
        case 2: add(right, top); break;
        case 3: add(right, left); break;
        case 4: add(bottom, right); break;
        case 5: add(top, left), add(bottom, right); break;
        case 6: add(bottom, top); break;
        case 7: add(bottom, left); break;
        case 8: add(left, bottom); break;
        case 9: add(top, bottom); break;
        case 10: add(right, top), add(left, bottom); break;
        case 11: add(right, bottom); break;
        case 12: add(left, right); break;
        case 13: add(top, right); break;
        case 14: add(left, top); break;
        default: break;
        }
    }

    const std::vector<float>& m_values;
    int m_columns, m_rows;
    float m_level;
    std::unordered_map<EdgeKey, EdgeKey> m_next;
};

} // namespace

std::vector<std::vector<Eigen::Vector2d>> isoContours(const std::vector<float>& values, int columns, int rows,
                                                      float level) {
    return Tracer(values, columns, rows, level).trace();
}

} // namespace gauge::core
