// A drawing as it is painted over a picture: line, points, caption.
#pragma once

#include "app/drawing/palette.h"

#include <QPainter>
#include <QPolygonF>
#include <QString>
#include <vector>

namespace gauge::app {

struct DrawnLine {
    QPolygonF line;   ///< pixels of the view, as core::drawingLine gives it
    QPolygonF points; ///< those that the person set
    bool closed = false;
    bool selected = false; ///< thicker, its points as handles
    bool stale = false;    ///< dashed: its plane has moved
    int activePoint = -1;  ///< the handle that keys move
    Role colour = Role::Drawing;
    QString caption;       ///< beside the line, one or more lines
};

/// Line and points, without the caption.
void drawDrawnLine(QPainter& painter, const QRectF& area, const DrawnLine& line);

/// The captions of all lines of a picture, each beside its own line: off each other, and off the lines where there is room.
void drawCaptions(QPainter& painter, const QRectF& area, const std::vector<DrawnLine>& lines);

/// The place that the keyboard has chosen.
void drawCrosshair(QPainter& painter, const QPointF& at);

/// A round handle; `active` filled.
void drawHandle(QPainter& painter, const QPointF& at, const QColor& colour, bool active);

} // namespace gauge::app
