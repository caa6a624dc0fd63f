// A small volume and a measurement of it, both written down from a formula: lets the windows be tested
// without the measuring engine.
//
//   head ^   atrium: ball of radius 24 mm below x = 0; appendage: tube along +x, slightly bent to the back,
//        |   oval (longest along y), narrowing from 24 x 18 mm at the ostium (x = 0) to nothing at 36 mm.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/volume/volume.h"

#include <memory>

namespace gauge::fixture {

inline constexpr double kSyntheticLengthMm = 36.0;

std::shared_ptr<const core::Volume> syntheticVolume();
core::AppendageMarks syntheticMarks();
core::AppendageMeasurement syntheticMeasurement();

} // namespace gauge::fixture
