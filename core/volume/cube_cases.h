// Which triangles a surface has in a cube of eight values, for each of the 256 ways in which its corners lie inside or
// outside. The cases are made by a rule, not typed in:
//
// On each face the surface runs from where one enters the inside to where one leaves it again, going round the face
// counter-clockwise seen from outside the cube. So inside corners of an ambiguous face stay apart, and the neighbour,
// who goes round the other way, draws the same line: no holes. The lines of the six faces close to loops, and each
// loop is filled with triangles whose inner sides do not lie in a face wherever that can be had.
//
//   corner bit = x + 2 y + 4 z          edges 0-3  along x at (y, z) = (0,0) (1,0) (0,1) (1,1)
//                                             4-7  along y at (x, z)
//                                             8-11 along z at (x, y)
#pragma once

#include <array>
#include <cstdint>

namespace gauge::core {

struct CubeCase {
    static constexpr int kMostTriangles = 8;
    std::uint8_t count = 0;
    /// Edges of each triangle, counter-clockwise seen from outside the body.
    std::array<std::array<std::uint8_t, 3>, kMostTriangles> triangles{};
};

/// Index: bit c set when corner c is inside.
const std::array<CubeCase, 256>& cubeCases();

/// The two corners of an edge; the first is the nearer to corner 0.
std::array<int, 2> cornersOfEdge(int edge);

} // namespace gauge::core
