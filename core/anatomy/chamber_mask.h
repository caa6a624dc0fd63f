// Which blood the measurement found, as a mask: for pictures of a chamber alone (core/volume/chamber_volume.h).
#pragma once

#include "core/anatomy/appendage.h"
#include "core/result.h"
#include "core/volume/box_field.h"

namespace gauge::core {

enum class Chamber {
    AtriumAndAppendage, ///< the blood connected with both seeds, as far as it was looked at
    Appendage,          ///< beyond the ostium
};

/// @errors InvalidArgument without the measurement's working data.
Result<BoxMask> chamberMask(const AppendageMeasurement& measurement, Chamber chamber);

} // namespace gauge::core
