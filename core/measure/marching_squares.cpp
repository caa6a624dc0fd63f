#include "core/measure/marching_squares.h"

#include "core/volume/bit_rows.h"

#include <algorithm>
#include <array>
#include <bit>

namespace gauge::core {
namespace {

/// A crossing lives on the edge from pixel (x, y) to its right (Across) or lower (Down) neighbour.
enum class EdgeWay { Across, Down };
struct PictureEdge {
    int x, y;
    EdgeWay way;
    bool operator==(const PictureEdge&) const = default;
};

/// Sides of a cell, and where each leads within it: lines have the high values on their left.
/// Corners: 1 at (x, y), 2 at (x + 1, y), 4 at (x + 1, y + 1), 8 at (x, y + 1).
enum CellSide : std::uint8_t { TopSide, RightSide, BottomSide, LeftSide, NoSide };
struct CellLines {
    CellSide from, to, otherFrom = NoSide, otherTo = NoSide;
    CellSide leads(CellSide side) const { return side == from ? to : otherTo; }
};
constexpr std::array<CellLines, 16> kCellLines{{{NoSide, NoSide},
                                                {TopSide, LeftSide},
                                                {RightSide, TopSide},
                                                {RightSide, LeftSide},
                                                {BottomSide, RightSide},
                                                {TopSide, LeftSide, BottomSide, RightSide}, // low corners are joined
                                                {BottomSide, TopSide},
                                                {BottomSide, LeftSide},
                                                {LeftSide, BottomSide},
                                                {TopSide, BottomSide},
                                                {RightSide, TopSide, LeftSide, BottomSide},
                                                {RightSide, BottomSide},
                                                {LeftSide, RightSide},
                                                {TopSide, RightSide},
                                                {LeftSide, TopSide},
                                                {NoSide, NoSide}}};

/// Walks along the borders of the bits. The picture is framed by one pixel below the level on each side; bit x + 1 of
/// row y + 1 is pixel (x, y).
class ContourWalk {
public:
    ContourWalk(std::span<const float> values, int columns, int rows, float level)
        : m_values(values.data()), m_columns(columns), m_rows(rows), m_level(level),
          m_high({columns + 2, rows + 2, 1}), m_open({columns + 2, rows + 2, 1}) {
        classify();
    }

    std::vector<std::vector<Eigen::Vector2d>> trace() {
        std::vector<std::vector<Eigen::Vector2d>> loops;
        // Every loop crosses edges that run across: those not yet passed begin the next one.
        for (int y = 0; y < m_rows; ++y) {
            Word* open = m_open.row(y + 1, 0);
            for (std::size_t word = 0; word < m_open.words(); ++word)
                while (open[word] != 0)
                    loops.push_back(walk({static_cast<int>(64 * word) + std::countr_zero(open[word]) - 1, y, EdgeWay::Across}));
        }
        return loops;
    }

private:
    void classify() {
        const std::size_t words = m_high.words();
        std::vector<Word> plain(words + 1, 0);
        for (int row = 0; row < m_rows + 2; ++row) {
            Word* const high = m_high.row(row, 0);
            Word* const open = m_open.row(row, 0);
            if (row == 0 || row == m_rows + 1) {
                std::fill(high, high + words, Word{0});
                std::fill(open, open + words, Word{0});
                continue;
            }
            bitsAbove(m_values + static_cast<std::ptrdiff_t>(row - 1) * m_columns, m_columns, m_level, plain.data());
            // Bit x of `plain` is pixel x, and so is bit x + 1 of `high`: an edge differs from one to the next.
            Word before = 0;
            for (std::size_t w = 0; w < words; ++w) {
                high[w] = plain[w] << 1 | before >> 63;
                open[w] = high[w] ^ plain[w];
                before = plain[w];
            }
        }
    }

    bool high(int x, int y) const {
        const auto bit = static_cast<unsigned>(x + 1);
        return (m_high.row(y + 1, 0)[bit / 64] >> bit % 64 & 1) != 0;
    }

    double value(int x, int y) const {
        if (x < 0 || y < 0 || x >= m_columns || y >= m_rows)
            return m_level - 1.0f;
        return m_values[static_cast<std::ptrdiff_t>(y) * m_columns + x];
    }

    Eigen::Vector2d crossing(const PictureEdge& e) const {
        const double a = value(e.x, e.y), b = e.way == EdgeWay::Across ? value(e.x + 1, e.y) : value(e.x, e.y + 1);
        const double t = (static_cast<double>(m_level) - a) / (b - a);
        return e.way == EdgeWay::Across ? Eigen::Vector2d(e.x + t, e.y) : Eigen::Vector2d(e.x, e.y + t);
    }

    void pass(const PictureEdge& e) {
        const auto bit = static_cast<unsigned>(e.x + 1);
        m_open.row(e.y + 1, 0)[bit / 64] &= ~(Word{1} << bit % 64);
    }

    /// The next edge: through the cell that the line enters, which is the one with the high end of the edge on its left.
    PictureEdge after(const PictureEdge& e) const {
        const bool firstHigh = high(e.x, e.y);
        int x = e.x, y = e.y;
        CellSide side;
        if (e.way == EdgeWay::Across) {
            side = firstHigh ? TopSide : BottomSide;
            y -= firstHigh ? 0 : 1;
        } else {
            side = firstHigh ? RightSide : LeftSide;
            x -= firstHigh ? 1 : 0;
        }
        const unsigned corners = (high(x, y) ? 1u : 0u) | (high(x + 1, y) ? 2u : 0u) | (high(x + 1, y + 1) ? 4u : 0u) |
                                 (high(x, y + 1) ? 8u : 0u);
        switch (kCellLines[corners].leads(side)) {
        case TopSide: return {x, y, EdgeWay::Across};
        case BottomSide: return {x, y + 1, EdgeWay::Across};
        case LeftSide: return {x, y, EdgeWay::Down};
        default: return {x + 1, y, EdgeWay::Down};
        }
    }

    std::vector<Eigen::Vector2d> walk(const PictureEdge& start) {
        std::vector<Eigen::Vector2d> loop;
        PictureEdge at = start;
        do {
            loop.push_back(crossing(at));
            if (at.way == EdgeWay::Across)
                pass(at);
            at = after(at);
        } while (!(at == start));
        return loop;
    }

    const float* m_values;
    int m_columns, m_rows;
    float m_level;
    BitRows m_high, m_open; ///< pixels above the level; edges across that no loop has passed
};

} // namespace

std::vector<std::vector<Eigen::Vector2d>> isoContours(std::span<const float> values, int columns, int rows,
                                                      float level) {
    return ContourWalk(values, columns, rows, level).trace();
}

} // namespace gauge::core
