#include "app/drawing/seat_drawing.h"

#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"
#include "app/drawing/palette.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

constexpr double kSeatLine = 1.8;

QPainterPath closedPath(const QPolygonF& polygon) {
    QPainterPath path;
    path.addPolygon(polygon);
    path.closeSubpath();
    return path;
}

} // namespace

QString seatLabel(const core::Seat& seat) {
    return QCoreApplication::translate("Drawing", "size %1").arg(QString::fromStdString(seat.name));
}

QPainterPath drawSeat(QPainter& painter, const SectionMap& map, const core::SeatedBody& seated) {
    QPainterPath first;
    for (const auto& outline : core::outlinesIn(seated, map.frame)) {
        QPolygonF polygon;
        for (const Eigen::Vector2d& p : outline)
            polygon << map.fromSection(p);
        const QPainterPath path = closedPath(polygon);
        drawHaloPath(painter, path, penOf(Role::Device, kSeatLine));
        if (first.isEmpty()) first = path;
    }
    return first;
}

QPainterPath drawSeatOutlines(QPainter& painter, const std::vector<std::vector<Eigen::Vector2d>>& pixels, const QTransform& screen) {
    QPainterPath first;
    for (const auto& outline : pixels) {
        QPolygonF polygon;
        for (const Eigen::Vector2d& p : outline)
            polygon << screen.map(QPointF(p.x(), p.y()));
        const QPainterPath path = closedPath(polygon);
        drawHaloPath(painter, path, penOf(Role::Device, kSeatLine));
        if (first.isEmpty()) first = path;
    }
    return first;
}

void drawSeatLabel(QPainter& painter, const QPainterPath& outline, const QString& label, const QRectF& area, LabelPlaces places) {
    if (outline.isEmpty()) return;
    const QRectF box = outline.boundingRect();
    const QPointF above(box.center().x(), box.top()), below(box.center().x(), box.bottom());
    const QColor colour = colourOf(Role::Device);
    const auto drawn = [&](const QPointF& anchor, LabelSide side) { return places.draw(painter, anchor, label, colour, {side}, area, 11); };
    if (drawn(above, LabelSide::Above) || drawn(below, LabelSide::Below)) return;
    if (drawn({box.right(), box.center().y()}, LabelSide::Right) || drawn({box.left(), box.center().y()}, LabelSide::Left)) return;
    const double aside = 0.6 * labelWidth(label, 11);
    for (const double shift : {-aside, aside})
        if (drawn(above + QPointF(shift, 0), LabelSide::Above) || drawn(below + QPointF(shift, 0), LabelSide::Below)) return;
    drawLabel(painter, above, label, colour, LabelSide::Above, area, 11); // better over another than not at all
}

std::vector<SurfaceLine> seatSurfaceLines(const core::Seat& seat) {
    std::vector<SurfaceLine> lines;
    if (!seat.seated) return lines;
    for (auto& points : core::seatedLines(*seat.seated)) {
        SurfaceLine line;
        line.closed = points.size() > 2 && core::distanceMm(points.front(), points.back()) < 1e-6;
        line.points = std::move(points);
        lines.push_back(std::move(line));
    }
    if (!lines.empty()) lines.front().label = seatLabel(seat);
    return lines;
}

} // namespace gauge::app
