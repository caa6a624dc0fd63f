// Drawings and contours carried from the plane on which they were drawn to where it lies now: each point along the new
// plane's normal.
#pragma once

#include "core/record/entries.h"

namespace gauge::core {

/// The drawing on `site`. Of a drawing on a picture, unchanged.
Drawing carriedTo(Drawing drawing, const SectionSite& site);

/// The contour in `frame`; its plane and revision stay.
CorrectedContour carriedTo(CorrectedContour contour, const SectionFrame& frame);

/// Whether all points of a drawing on a section lie within `nearMm` of a plane. False for pictures.
bool liesNear(const Drawing& drawing, const Plane& plane, double nearMm);

} // namespace gauge::core
