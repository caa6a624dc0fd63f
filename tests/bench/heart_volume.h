// The CT that benchmarks work on: a bright chamber with a curved tube, blurred edges, noise of 25 HU.
#pragma once

#include "core/volume/volume.h"

#include <memory>

namespace gauge::bench {

/// Chamber of 30 mm radius about the patient's origin; a tube of 9 mm radius leaves it on an arc of 40 mm radius about
/// (30, 40, 0). Below 0 inside, mm.
double heartDistanceMm(const Eigen::Vector3d& p);

/// End of the tube's middle line that is farther from the chamber.
Eigen::Vector3d heartTubeEnd();

/// Blood 400 HU, tissue 40 HU; voxels of 0.4 x 0.4 x 0.5 mm, the chamber near the middle. The same on every machine and with
/// any number of threads.
std::shared_ptr<const core::Volume> heartVolume(const Eigen::Vector3i& size);

} // namespace gauge::bench
