// The way of the sheath from the crossing to the ostium in a section of the CT. Used by the page and the report alike.
#pragma once

#include "app/drawing/grey_image.h"
#include "app/models/septum_state.h"

#include <QPainter>
#include <QRectF>
#include <optional>

namespace gauge::app {

/// The section through crossing, ostium and proximal axis, the crossing on the left. Nothing without an appendage or a place.
std::optional<SectionMap> sheathSection(const SeptumState& state, const Eigen::Vector2d& place, const QRectF& area);
/// Over that section: septum, straight line, bend, ostium plane and axis.
void drawSheath(QPainter& painter, const QRectF& area, const SectionMap& map, const SeptumState& state, const Eigen::Vector2d& place,
                const core::AppendageMeasurement* measurement);

} // namespace gauge::app
