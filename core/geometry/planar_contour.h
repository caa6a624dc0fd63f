// Closed polygons in a plane: area, perimeter, centroid, calipers. A contour of a section is one of these.
// Neighbours: plane.h (frame that carries section coordinates into the patient), ellipse_fit.h.
//
//   v ^     2          Vertices in section coordinates (SectionFrame), mm. The last vertex is joined to the first,
//     |   /   \        which is not repeated. Counter-clockwise here, seen from the side to which the section's
//     |  3     1       normal points.
//     |   \   /
//     |     0
//     +----------> u
#pragma once

#include "core/result.h"

#include <Eigen/Core>
#include <cstddef>
#include <span>
#include <vector>

namespace gauge::core {

/// A closed polygon; see the drawing above. Functions below need at least 3 finite vertices unless they say
/// otherwise (precondition, asserted); `validateContour` checks what comes from outside.
using ContourView = std::span<const Eigen::Vector2d>;

/// A width of a contour: a segment of length `lengthMm` from `from` to `to`, section coordinates, mm.
struct Caliper {
    Eigen::Vector2d from = Eigen::Vector2d::Zero();
    Eigen::Vector2d to = Eigen::Vector2d::Zero();
    double lengthMm = 0.0;
};

/// Says whether the functions below may be used on `contour`.
/// @errors TooFewPoints below 3 vertices; NonFinite for NaN or infinity; Degenerate when it encloses no area
/// (less than 1e-12 of the square of its perimeter). Crossing sides are not looked for.
Result<void> validateContour(ContourView contour);

/// Enclosed area, mm2: positive when counter-clockwise, negative when clockwise. Exact for the polygon, and
/// independent of where it lies (summed about the first vertex).
double signedAreaMm2(ContourView contour);

/// Length of the polygon, the closing side included, mm. Repeated vertices add nothing. A circle sampled at n
/// points reads low by 1 - sin(pi/n)/(pi/n): 0.16 % at n = 32.
double perimeterMm(ContourView contour);

/// Centroid of the enclosed area (not of the vertices). Precondition: encloses an area.
Eigen::Vector2d areaCentroid(ContourView contour);

/// True inside; a point on the contour itself may count either way. Even-odd rule.
bool contains(ContourView contour, const Eigen::Vector2d& point);

/// Vertices of the convex hull, counter-clockwise, none on the straight line between its neighbours; takes any
/// number of points. Fewer than 3 come back when all points lie on a line. Andrew's monotone chain; points of a contour,
/// which run to and fro along x few times, are sorted by merging those runs: O(n log runs).
std::vector<Eigen::Vector2d> convexHull(std::span<const Eigen::Vector2d> points);

/// Maximum caliper: the two vertices farthest apart. O(n log n), rotating calipers on the hull.
Caliper maximumCaliper(ContourView contour);

/// Minimum caliper: the least distance between two parallel lines that hold the contour between them (least
/// width). One end is a vertex of the hull, the other its foot on the opposite side of the hull; where two sides
/// are parallel, the middle of what they share. O(n log n).
Caliper minimumCaliper(ContourView contour);

/// Both at once, in one walk around the hull: the same values as from the two functions above.
struct Calipers {
    Caliper longest, leastWidth;
};
Calipers calipers(ContourView contour);

/// Extent of the contour along the unit vector `direction`: the length of its projection on it. The segment is
/// parallel to `direction`, reaches from one extreme to the other, and is drawn midway (across `direction`)
/// between the two extreme vertices; its ends need not lie on the contour.
Caliper extentAlong(ContourView contour, const Eigen::Vector2d& direction);

/// `count` (>= 3) points at equal distances along the contour, from its first vertex on. Corners are cut: the new
/// polygon is inscribed in the old.
std::vector<Eigen::Vector2d> resampleByArcLength(ContourView contour, std::size_t count);

} // namespace gauge::core
