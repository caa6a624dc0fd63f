// The seated size (core/sizing/seat.h) over pictures: where a section cuts it, its rings on the surface, its shadow on an X-ray frame.
#pragma once

#include "app/drawing/grey_image.h"
#include "app/drawing/labels.h"
#include "app/drawing/surface_drawing.h"
#include "core/access/seated_body.h"
#include "core/sizing/seat.h"

#include <QPainter>
#include <QPainterPath>
#include <QTransform>
#include <optional>
#include <vector>

namespace gauge::app {

/// "size 22.5 (invented)".
QString seatLabel(const core::Seat& seat);

/// Where the section of `map` cuts body and disc, in the device's style. Returns the body's outline on the screen: empty where the section
/// passes it by.
QPainterPath drawSeat(QPainter& painter, const SectionMap& map, const core::SeatedBody& seated);

/// Closed lines in pixels of a picture, through `screen`, in the device's style. Returns the first on the screen.
QPainterPath drawSeatOutlines(QPainter& painter, const std::vector<std::vector<Eigen::Vector2d>>& pixels, const QTransform& screen);

/// The label above the outline, or below or beside it where that is free of `places`; none for an empty one.
void drawSeatLabel(QPainter& painter, const QPainterPath& outline, const QString& label, const QRectF& area, LabelPlaces places = {});

/// Rings and side lines for the surface; the first carries the label. None for a size without room.
std::vector<SurfaceLine> seatSurfaceLines(const core::Seat& seat);

} // namespace gauge::app
