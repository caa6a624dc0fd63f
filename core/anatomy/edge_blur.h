// How blurred the borders of this scan are: found on sections of the neck.
#pragma once

#include "core/anatomy/neck.h"

namespace gauge::core {

/// Standard deviation of the blur of borders as sampled (scanner and interpolation), mm: where the edge model fits
/// best on a few sections of the neck; the first guess where no section can be cut.
double edgeBlurMm(const Volume& volume, const BloodPool& pool, const Neck& neck);

} // namespace gauge::core
