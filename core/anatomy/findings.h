// What else is read off a traced appendage: turn, enhancement, whether its tip is filled.
#pragma once

#include "core/anatomy/appendage_trace.h"

#include <optional>

namespace gauge::core {

/// Angle between the directions before and after the sharpest place of the axis; nullopt for an axis under 15 mm.
std::optional<Turn> turnOf(const AppendageTrace& trace);

/// Mean levels in the atrium (5 mm about its seed), along the proximal half of the appendage, in its last 6 mm, and
/// at the aorta point.
Enhancement enhancementOf(const Volume& volume, const AppendageTrace& trace, const AppendageMarks& marks);

/// Says whether contrast fades out at the tip instead of ending at a wall: depth and volume are then lower bounds.
std::optional<Notice> unfilledTip(const Volume& volume, const AppendageTrace& trace);

/// Says whether the blood of the appendage is much darker than the atrium's.
std::optional<Notice> weakFilling(const Enhancement& enhancement, const Contrast& contrast);

} // namespace gauge::core
