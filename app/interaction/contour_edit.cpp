#include "app/interaction/contour_edit.h"

#include "app/drawing/drawn_lines.h"
#include "core/geometry/planar_contour.h"
#include "core/record/drawing_values.h"

#include <cmath>

namespace gauge::app {

std::vector<Eigen::Vector2d> ContourEdit::handlesOn(std::span<const Eigen::Vector2d> contour) {
    return core::resampleByArcLength(contour, kHandles);
}

ContourEdit::ContourEdit(const core::HeldEllipse& ellipse) : m_points(core::pointsOn(ellipse, kEllipsePoints)), m_ellipse(ellipse) {}

std::vector<Eigen::Vector2d> ContourEdit::handles() const {
    if (!m_ellipse) return m_points;
    std::vector<Eigen::Vector2d> places;
    for (const auto handle : core::kEllipseHandles)
        places.push_back(core::placeOf(*m_ellipse, handle));
    return places;
}

void ContourEdit::activateNext(int step) {
    const auto count = static_cast<int>(handles().size());
    m_active = static_cast<std::size_t>((static_cast<int>(m_active) + step + count) % count);
}

bool ContourEdit::grip(const SectionMap& map, const QPointF& at) {
    double reach = 10.0; // pixels
    const auto places = handles();
    for (std::size_t i = 0; i < places.size(); ++i) {
        const QPointF off = map.fromSection(places[i]) - at;
        if (std::hypot(off.x(), off.y()) > reach) continue;
        reach = std::hypot(off.x(), off.y());
        m_active = i;
        m_gripped = true;
        m_offset = places[i] - map.sectionFrom(at);
    }
    return m_gripped;
}

void ContourEdit::moveActive(const Eigen::Vector2d& to) {
    if (m_ellipse) {
        m_ellipse = core::dragged(*m_ellipse, core::kEllipseHandles[m_active], to);
        m_points = core::pointsOn(*m_ellipse, kEllipsePoints);
    } else {
        m_points[m_active] = to;
    }
}

void ContourEdit::dragTo(const SectionMap& map, const QPointF& at) {
    if (m_gripped) moveActive(map.sectionFrom(at) + m_offset);
}

void ContourEdit::nudge(const Eigen::Vector2d& byMm) {
    moveActive(handles()[m_active] + byMm);
}

void ContourEdit::draw(QPainter& painter, const QRectF& area, const SectionMap& map, const QString& caption, bool stale) const {
    DrawnLine line;
    for (const auto& p : core::drawingLine(core::DrawingKind::Area, m_points))
        line.line << map.fromSection(p);
    for (const auto& p : handles())
        line.points << map.fromSection(p);
    if (m_ellipse) {
        painter.save();
        painter.setPen(QPen(QColor(255, 255, 255, 130), 1, Qt::DashLine));
        painter.drawLine(line.points[0], line.points[3]);
        painter.drawLine(line.points[0], line.points[2]);
        painter.restore();
    }
    line.closed = true;
    line.selected = true;
    line.stale = stale;
    line.activePoint = static_cast<int>(m_active);
    line.caption = caption;
    drawDrawnLine(painter, area, line);
    drawCaptions(painter, area, {line});
}

} // namespace gauge::app
