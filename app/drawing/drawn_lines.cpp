#include "app/drawing/drawn_lines.h"

#include "app/drawing/labels.h"
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

/// The words of a caption with the plates that they need, the first at (0, 0).
struct Caption {
    QStringList words;
    QSizeF size;
    double rowPx = 0.0;
};

constexpr double kFar = 1e6; ///< bounds that bound nothing

Caption captionOf(const DrawnLine& line) {
    Caption caption{line.caption.split(QLatin1Char('\n'), Qt::SkipEmptyParts), {}, 0.0};
    for (const QString& words : caption.words) {
        const QRectF plate = labelPlate({}, words, LabelSide::Right, QRectF(-kFar, -kFar, 2 * kFar, 2 * kFar));
        caption.rowPx = std::max(caption.rowPx, plate.height() + 1.0);
        caption.size.setWidth(std::max(caption.size.width(), plate.width()));
    }
    caption.size.setHeight(caption.rowPx * static_cast<double>(caption.words.size()));
    return caption;
}

QRectF boxOf(const DrawnLine& line) {
    constexpr double kRoundPx = 5.0; // handles and end bars
    return (line.line.isEmpty() ? line.points : line.line).boundingRect().adjusted(-kRoundPx, -kRoundPx, kRoundPx, kRoundPx);
}

/// Where the caption may stand, the best place first: right of the line, left, below, above; then farther down and up.
std::vector<QRectF> placesOf(const Caption& caption, const QRectF& line, const QRectF& area) {
    constexpr double kGapPx = 4.0;
    constexpr int kRowsAway = 12;
    const double w = caption.size.width(), h = caption.size.height();
    const QPointF middle = line.center();
    std::vector<QRectF> places;
    const auto add = [&](double x, double y) {
        const QPointF at(std::clamp(x, area.left(), std::max(area.left(), area.right() - w)),
                         std::clamp(y, area.top(), std::max(area.top(), area.bottom() - h)));
        places.emplace_back(at, caption.size);
    };
    add(line.right() + kGapPx, middle.y() - h / 2);
    add(line.left() - kGapPx - w, middle.y() - h / 2);
    add(middle.x() - w / 2, line.bottom() + kGapPx);
    add(middle.x() - w / 2, line.top() - kGapPx - h);
    for (int row = 1; row <= kRowsAway; ++row)
        for (const double way : {1.0, -1.0}) {
            const double off = way * row * caption.rowPx;
            add(line.right() + kGapPx, middle.y() - h / 2 + off);
            add(line.left() - kGapPx - w, middle.y() - h / 2 + off);
        }
    return places;
}

bool isFree(const QRectF& place, const std::vector<QRectF>& taken) {
    return std::none_of(taken.begin(), taken.end(), [&](const QRectF& one) { return one.intersects(place); });
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
    painter.restore();
}

void drawCaptions(QPainter& painter, const QRectF& area, const std::vector<DrawnLine>& lines) {
    std::vector<QRectF> boxes, plates;
    for (const DrawnLine& line : lines)
        if (!line.points.isEmpty()) boxes.push_back(boxOf(line));
    for (const DrawnLine& line : lines) {
        const Caption caption = captionOf(line);
        if (line.points.isEmpty() || caption.words.isEmpty()) continue;
        const auto places = placesOf(caption, boxOf(line), area);
        auto place = std::find_if(places.begin(), places.end(),
                                  [&](const QRectF& p) { return isFree(p, plates) && isFree(p, boxes); });
        if (place == places.end())
            place = std::find_if(places.begin(), places.end(), [&](const QRectF& p) { return isFree(p, plates); });
        if (place == places.end()) place = places.begin();
        plates.push_back(*place);
        QPointF at = place->topLeft();
        for (const QString& words : caption.words) {
            const QRectF plate = labelPlate({}, words, LabelSide::Right, QRectF(-kFar, -kFar, 2 * kFar, 2 * kFar));
            drawLabel(painter, at - plate.topLeft(), words, line.stale ? tone::onImageWarning : colourOf(line.colour),
                      LabelSide::Right, area);
            at.ry() += caption.rowPx;
        }
    }
}

void drawCrosshair(QPainter& painter, const QPointF& at) {
    constexpr double kArmPx = 14.0, kGapPx = 3.0;
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
        drawHaloLine(painter, at + way * kGapPx, at + way * kArmPx, QPen(tone::onImage, 1.5));
}

} // namespace gauge::app
