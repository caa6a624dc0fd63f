// Editing the contour of a section by hand: its points are dragged or moved by keys, a smooth closed line follows. Knows
// nothing of views; positions are pixels of the map.
#pragma once

#include "app/drawing/grey_image.h"

#include <Eigen/Core>
#include <QPainter>
#include <optional>
#include <span>
#include <vector>

namespace gauge::app {

class ContourEdit {
public:
    /// Handles of a contour without a correction so far: this many, evenly along it.
    static constexpr std::size_t kHandles = 12;
    static std::vector<Eigen::Vector2d> handlesOn(std::span<const Eigen::Vector2d> contour);

    explicit ContourEdit(std::vector<Eigen::Vector2d> points) : m_points(std::move(points)) {}

    const std::vector<Eigen::Vector2d>& points() const { return m_points; }
    std::size_t active() const { return m_active; }
    void activateNext(int step);

    /// Grips the handle there; false when there is none.
    bool grip(const SectionMap& map, const QPointF& at);
    bool isGripped() const { return m_gripped; }
    void dragTo(const SectionMap& map, const QPointF& at);
    void letGo() { m_gripped = false; }
    /// Moves the active handle, mm in the section.
    void nudge(const Eigen::Vector2d& byMm) { m_points[m_active] += byMm; }

    void draw(QPainter& painter, const QRectF& area, const SectionMap& map, const QString& caption, bool stale) const;

private:
    std::vector<Eigen::Vector2d> m_points; ///< section coordinates, mm
    std::size_t m_active = 0;
    bool m_gripped = false;
    Eigen::Vector2d m_offset{0.0, 0.0};
};

} // namespace gauge::app
