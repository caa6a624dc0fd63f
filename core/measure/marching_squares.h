// Closed iso-contours of a picture.
#pragma once

#include <Eigen/Core>
#include <vector>

namespace gauge::core {

/// Closed contours of `values` (row after row, columns x rows) at `level`, vertices in pixel coordinates at linear
/// crossings of pixel edges. The picture's border is taken as below the level, so every contour closes. Saddle
/// cells join the low corners (blobs that touch only at a corner stay apart).
/// Source: Lorensen and Cline's cell table in two dimensions (common practice, no source).
std::vector<std::vector<Eigen::Vector2d>> isoContours(const std::vector<float>& values, int columns, int rows,
                                                      float level);

} // namespace gauge::core
