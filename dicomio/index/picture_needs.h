// What must be known of a listed picture before anything is measured in it.
#pragma once

#include "dicomio/index/picture_facts.h"

namespace gauge::dicomio {

/// True of a spectral trace: it is measured in velocities and times, and needs no length.
bool isVelocityOnly(const PictureFacts& picture);

} // namespace gauge::dicomio
