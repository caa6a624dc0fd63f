#include "app/interaction/contour_edit.h"

#include "app/drawing/drawn_lines.h"
#include "core/geometry/planar_contour.h"
#include "core/record/drawing_values.h"

#include <cmath>

namespace gauge::app {

std::vector<Eigen::Vector2d> ContourEdit::handlesOn(std::span<const Eigen::Vector2d> contour) {
    return core::resampleByArcLength(contour, kHandles);
}

void ContourEdit::activateNext(int step) {
    const auto count = static_cast<int>(m_points.size());
    m_active = static_cast<std::size_t>((static_cast<int>(m_active) + step + count) % count);
}

bool ContourEdit::grip(const SectionMap& map, const QPointF& at) {
    double reach = 10.0; // pixels
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        const QPointF off = map.fromSection(m_points[i]) - at;
        if (std::hypot(off.x(), off.y()) > reach) continue;
        reach = std::hypot(off.x(), off.y());
        m_active = i;
        m_gripped = true;
        m_offset = m_points[i] - map.sectionFrom(at);
    }
    return m_gripped;
}

void ContourEdit::dragTo(const SectionMap& map, const QPointF& at) {
    if (m_gripped) m_points[m_active] = map.sectionFrom(at) + m_offset;
}

void ContourEdit::draw(QPainter& painter, const QRectF& area, const SectionMap& map, const QString& caption, bool stale) const {
    DrawnLine line;
    for (const auto& p : core::drawingLine(core::DrawingKind::Area, m_points))
        line.line << map.fromSection(p);
    for (const auto& p : m_points)
        line.points << map.fromSection(p);
    line.closed = true;
    line.selected = true;
    line.stale = stale;
    line.activePoint = static_cast<int>(m_active);
    line.caption = caption;
    drawDrawnLine(painter, area, line);
}

} // namespace gauge::app
