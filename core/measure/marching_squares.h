// Closed iso-contours of a picture. Pixels above the level become rows of bits; exclusive-or marks the edges that are
// crossed, and each loop is walked along them: only pixels beside a border are looked at.
#pragma once

#include <Eigen/Core>
#include <span>
#include <vector>

namespace gauge::core {

/// Closed contours of `values` (row after row, columns x rows) at `level`, vertices in pixel coordinates at linear
/// crossings of pixel edges. The picture's border is taken as below the level, so every contour closes. Saddle
/// cells join the low corners (blobs that touch only at a corner stay apart). High values lie on a loop's left (x to the
/// right, y downwards); each begins at its first crossing of an edge along x, row after row, and the loops come in that
/// order.
/// Source: Lorensen and Cline's cell table in two dimensions (common practice, no source).
std::vector<std::vector<Eigen::Vector2d>> isoContours(std::span<const float> values, int columns, int rows,
                                                      float level);

} // namespace gauge::core
