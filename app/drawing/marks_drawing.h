// Points, orientation letters and scale bar: what every image view draws over its picture.
#pragma once

#include "app/drawing/palette.h"
#include "core/geometry/plane.h"

#include <QPainter>
#include <QRectF>
#include <vector>

namespace gauge::app {

/// A marked point in the shape of its role: atrium and aorta circle, tip triangle, circumflex square, ridge
/// diamond. Faint when the point lies off the shown plane.
void drawMarker(QPainter& painter, const QPointF& at, Role role, double opacity = 1.0, double radius = 5.0);
inline constexpr double kMarkerReach = 6.5; ///< pixels from its middle to its end, halo and all, at the usual radius

/// A line with its dark halo.
void drawHaloLine(QPainter& painter, const QPointF& from, const QPointF& to, const QPen& pen);
void drawHaloPath(QPainter& painter, const QPainterPath& path, const QPen& pen);

/// Letters of the patient's directions at the four edges of a section view (u right, v down). The upper one stands in the middle,
/// or beside a title that takes the middle, or under one that takes the whole width. Returns where they stand.
std::vector<QRectF> drawOrientation(QPainter& painter, const QRectF& area, const core::SectionFrame& frame, const QRectF& title = {});

/// A bar of 10 mm (or 1, 5, 20, 50 as it fits) at the lower left. Returns its place with its words.
QRectF drawScaleBar(QPainter& painter, const QRectF& area, double pixelsPerMm);

} // namespace gauge::app
