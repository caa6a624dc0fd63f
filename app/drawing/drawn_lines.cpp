#include "app/drawing/drawn_lines.h"

#include "app/drawing/marks_drawing.h"

#include <QPainterPath>
#include <algorithm>

namespace gauge::app {
namespace {

QPainterPath pathOf(const DrawnLine& line) {
    QPainterPath path;
    path.addPolygon(line.line);
    if (line.closed) path.closeSubpath();
    return path;
}

/// Ends of lines that nothing marks otherwise: a short bar across.
void drawEnds(QPainter& painter, const DrawnLine& line, const QPen& pen) {
    constexpr double kHalfBarPx = 5.0;
    if (line.closed || line.line.size() < 2) return;
    const auto bar = [&](const QPointF& end, const QPointF& inner) {
        const QLineF along(end, inner);
        if (along.length() < 1e-6) return;
        const QPointF across = QPointF(-along.dy(), along.dx()) / along.length() * kHalfBarPx;
        drawHaloLine(painter, end - across, end + across, pen);
    };
    bar(line.line.first(), line.line[1]);
    bar(line.line.last(), line.line[line.line.size() - 2]);
}

/// Right of the rightmost point, where the line least often runs through the words.
QPointF captionAnchor(const DrawnLine& line) {
    const QPolygonF& from = line.line.isEmpty() ? line.points : line.line;
    return *std::max_element(from.begin(), from.end(), [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
}

} // namespace

void drawHandle(QPainter& painter, const QPointF& at, const QColor& colour, bool active) {
    constexpr double kRadiusPx = 4.5;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(haloPen(2.0));
    painter.setBrush(active ? colour : QColor(tone::image));
    painter.drawEllipse(at, kRadiusPx, kRadiusPx);
    painter.setPen(QPen(colour, 2.0));
    painter.drawEllipse(at, kRadiusPx, kRadiusPx);
    painter.restore();
}

void drawDrawnLine(QPainter& painter, const QRectF& area, const DrawnLine& line) {
    if (line.points.isEmpty()) return;
    painter.save();
    painter.setClipRect(area);
    QPen pen = penOf(line.colour, line.selected ? 2.5 : 1.6);
    pen.setStyle(line.stale ? Qt::DashLine : Qt::SolidLine);
    drawHaloPath(painter, pathOf(line), pen);
    if (!line.selected) drawEnds(painter, line, penOf(line.colour, 1.6));
    if (line.selected || line.points.size() == 1)
        for (qsizetype i = 0; i < line.points.size(); ++i)
            drawHandle(painter, line.points[i], colourOf(line.colour), i == line.activePoint);
    QPointF anchor = captionAnchor(line);
    for (const QString& words : line.caption.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const QColor colour = line.stale ? tone::onImageWarning : colourOf(line.colour);
        const QRectF plate = drawLabel(painter, anchor, words, colour, LabelSide::Right, area);
        anchor.ry() += plate.height() + 1;
    }
    painter.restore();
}

void drawCrosshair(QPainter& painter, const QPointF& at) {
    constexpr double kArmPx = 14.0, kGapPx = 3.0;
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
        drawHaloLine(painter, at + way * kGapPx, at + way * kArmPx, QPen(tone::onImage, 1.5));
}

} // namespace gauge::app
