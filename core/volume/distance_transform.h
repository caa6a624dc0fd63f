// Exact Euclidean distance to the background of a mask.
#pragma once

#include "core/volume/box_field.h"

namespace gauge::core {

/// For each node of the mask (value != 0) the distance in mm to the nearest node with value 0; 0 in the
/// background. Nodes beyond the box count as mask (the box's faces are no wall). A mask without any background
/// gets the greatest float everywhere.
/// Exact for the node grid. Source: Felzenszwalb and Huttenlocher, Theory of Computing 8 (2012) 415-428: lower
/// envelope of parabolas along one axis after the other.
BoxField<float> distanceInsideMm(const BoxMask& mask);

} // namespace gauge::core
