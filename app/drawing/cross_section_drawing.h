// The cross-section at a depth, seen from the atrium: contour, longest and shortest diameter in the line
// styles of the depth strip.
#pragma once

#include "app/drawing/grey_image.h"
#include "app/drawing/labels.h"
#include "app/drawing/palette.h"
#include "core/measure/section.h"

#include <QPainter>

namespace gauge::app {

/// A map that shows `section` with its centre in the middle of `area` and `halfWidthMm` to the nearest edges.
SectionMap crossSectionMap(const core::Section& section, const QRectF& area, double halfWidthMm);

/// Half the side of a square that holds the section with some of its surroundings, mm.
double fittingHalfWidthMm(const core::Section& section);

/// Whether the lines carry their words, or a key in the corner says what each measures (where no values stand
/// beside).
enum class CrossSectionLabels { Words, Key };

/// Lines and labels over the picture, `title` in the corner. `map.frame` must be the section's own frame. Returns where labels
/// stand, for those that follow.
LabelPlaces drawCrossSection(QPainter& painter, const QRectF& area, const SectionMap& map,
                      const core::Section& section, Role role, CrossSectionLabels labels,
                      const QString& title = {});

} // namespace gauge::app
