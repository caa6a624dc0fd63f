// Where the sheath has to arrive, from a measured appendage.
#pragma once

#include "core/access/sheath.h"
#include "core/anatomy/appendage.h"

namespace gauge::core {

/// The proximal axis is the chord of the appendage's axis over this length from the ostium on, mm (or over all of it where it is
/// shorter); an assumption, no source.
inline constexpr double kProximalAxisMm = 10.0;

/// The ostium's centre, and the proximal axis. Precondition: a finished measurement.
AppendageTarget accessTarget(const AppendageMeasurement& measurement);

} // namespace gauge::core
