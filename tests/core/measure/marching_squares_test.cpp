#include "core/measure/marching_squares.h"

#include "core/geometry/planar_contour.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <numbers>
#include <random>
#include <tuple>

using namespace gauge::core;

namespace {

using Loop = std::vector<Eigen::Vector2d>;

/// The plain twin: every cell adds its lines to a map from crossing to crossing, which is then followed.
class PlainContours {
public:
    PlainContours(const std::vector<float>& values, int columns, int rows, float level)
        : m_values(values), m_columns(columns), m_rows(rows), m_level(level) {
        for (int y = -1; y < rows; ++y)
            for (int x = -1; x < columns; ++x)
                addCell(x, y);
    }
    std::vector<Loop> loops() {
        std::vector<Loop> all;
        while (!m_next.empty()) {
            // Edges along x come first in the map, row after row.
            Edge at = m_next.begin()->first;
            Loop loop;
            for (auto step = m_next.find(at); step != m_next.end(); step = m_next.find(at)) {
                loop.push_back(crossing(at));
                at = step->second;
                m_next.erase(step);
            }
            all.push_back(std::move(loop));
        }
        return all;
    }

private:
    using Edge = std::tuple<int, int, int>; // 0 along x or 1 along y, row, column
    double value(int x, int y) const {
        const bool within = x >= 0 && y >= 0 && x < m_columns && y < m_rows;
        return within ? m_values[static_cast<std::size_t>(y * m_columns + x)] : m_level - 1.0f;
    }
    Eigen::Vector2d crossing(const Edge& edge) const {
        const auto [way, y, x] = edge;
        const double a = value(x, y), b = way == 0 ? value(x + 1, y) : value(x, y + 1);
        const double t = (static_cast<double>(m_level) - a) / (b - a);
        return way == 0 ? Eigen::Vector2d(x + t, y) : Eigen::Vector2d(x, y + t);
    }
    void addCell(int x, int y) {
        const bool a = value(x, y) > m_level, b = value(x + 1, y) > m_level, c = value(x + 1, y + 1) > m_level,
                   d = value(x, y + 1) > m_level;
        const Edge top{0, y, x}, bottom{0, y + 1, x}, left{1, y, x}, right{1, y, x + 1};
        // Round each inside corner or pair of corners with it on the left; a saddle joins its low corners.
        if (a && !b) m_next[top] = d ? (c ? right : bottom) : left;
        if (b && !c) m_next[right] = a ? (d ? bottom : left) : top;
        if (c && !d) m_next[bottom] = b ? (a ? left : top) : right;
        if (d && !a) m_next[left] = c ? (b ? top : right) : bottom;
    }

    const std::vector<float>& m_values;
    int m_columns, m_rows;
    float m_level;
    std::map<Edge, Edge> m_next;
};

} // namespace

TEST(IsoContours, EqualTheirPlainTwinToTheLastBit) {
    std::mt19937 random(3);
    for (const auto& [columns, rows] : {std::pair{1, 1}, {1, 9}, {9, 1}, {62, 5}, {63, 7}, {64, 9}, {130, 40}})
        for (const double share : {0.0, 0.15, 0.5, 0.85, 1.0}) {
            std::vector<float> values(static_cast<std::size_t>(columns * rows));
            for (auto& v : values)
                v = std::uniform_real_distribution<>()(random) < share
                        ? std::uniform_real_distribution<float>(100.0f, 400.0f)(random)
                        : std::uniform_real_distribution<float>(-100.0f, 100.0f)(random);
            const auto loops = isoContours(values, columns, rows, 100.0f);
            const auto expected = PlainContours(values, columns, rows, 100.0f).loops();
            ASSERT_EQ(loops.size(), expected.size()) << columns << " x " << rows << ", share " << share;
            for (std::size_t i = 0; i < loops.size(); ++i)
                ASSERT_EQ(loops[i], expected[i]) << "loop " << i << " of " << columns << " x " << rows;
        }
}

TEST(IsoContours, TraceACircleOfAConeExactlyUpToItsChords) {
    constexpr int kSide = 41;
    std::vector<float> values;
    for (int y = 0; y < kSide; ++y)
        for (int x = 0; x < kSide; ++x)
            values.push_back(static_cast<float>(12.3 - std::hypot(x - 20.2, y - 19.6)));
    const auto loops = isoContours(values, kSide, kSide, 0.0f);
    ASSERT_EQ(loops.size(), 1u);
    // Linear interpolation of a cone errs by at most h^2 / (8 R) = 0.01 pixel along an edge.
    EXPECT_NEAR(std::abs(signedAreaMm2(loops[0])), std::numbers::pi * 12.3 * 12.3, 1.0);
    for (const auto& p : loops[0])
        EXPECT_NEAR((p - Eigen::Vector2d(20.2, 19.6)).norm(), 12.3, 0.02);
}

TEST(IsoContours, CloseAtTheBorderAndKeepCornersApart) {
    // Two pixels that touch at a corner, one of them in the corner of the picture.
    const std::vector<float> values{1, 0, 0, 0, 1, 0, 0, 0, 0};
    const auto loops = isoContours(values, 3, 3, 0.5f);
    ASSERT_EQ(loops.size(), 2u);
    EXPECT_EQ(loops[0].size(), 4u);
    EXPECT_EQ(loops[1].size(), 4u);
}

TEST(IsoContours, AHoleIsALoopOfItsOwn) {
    std::vector<float> values(49, 1.0f);
    values[24] = 0.0f;
    EXPECT_EQ(isoContours(values, 7, 7, 0.5f).size(), 2u);
    EXPECT_TRUE(isoContours(std::vector<float>(49, 0.0f), 7, 7, 0.5f).empty());
}
