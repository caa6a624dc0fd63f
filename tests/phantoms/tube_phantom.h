// A straight oval tube of blood in a wall, blurred exactly and put on a voxel grid at any pose: for sections whose
// truth is an ellipse. The field is constant along the tube, so blurring is two-dimensional and done on a 0.1 mm
// grid; sampling that grid bilinearly is good to 0.001 mm at the edge.
#pragma once

#include "core/geometry/plane.h"
#include "core/volume/volume.h"

#include <memory>
#include <random>

namespace gauge::tests {

struct TubeShape {
    double semiLongMm = 12.0;
    double semiShortMm = 9.0;
    double wallMm = 2.0;
    double bloodHu = 380.0, wallHu = 85.0, outsideHu = -90.0;
    double blurFwhmMm = 0.7;
    double noiseHu = 25.0;
    Eigen::Vector3d spacingMm{0.45, 0.45, 0.5};
    int sizeVoxels = 84;
};

struct Tube {
    std::shared_ptr<const core::Volume> volume;
    core::SectionFrame section; ///< perpendicular to the tube, u along its longer axis
};

/// A tube in random pose, its axis at least 25 degrees off the grid's axes more often than not.
Tube makeTube(const TubeShape& shape, std::mt19937_64& random);

} // namespace gauge::tests
