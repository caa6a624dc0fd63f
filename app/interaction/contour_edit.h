// Editing the contour of a section by hand: its points are dragged or moved by keys and a smooth closed line follows, or it is
// an ellipse with handles for its centre, its half-axes and its direction. Knows nothing of views; positions are pixels of the
// map.
#pragma once

#include "app/drawing/grey_image.h"
#include "core/geometry/held_ellipse.h"

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
    /// Points by which an ellipse is recorded.
    static constexpr std::size_t kEllipsePoints = 24;
    static std::vector<Eigen::Vector2d> handlesOn(std::span<const Eigen::Vector2d> contour);

    explicit ContourEdit(std::vector<Eigen::Vector2d> points) : m_points(std::move(points)) {}
    explicit ContourEdit(const core::HeldEllipse& ellipse);

    bool isEllipse() const { return m_ellipse.has_value(); }
    /// Of the contour as it is now.
    const std::vector<Eigen::Vector2d>& points() const { return m_points; }
    /// What is gripped: the points, or the handles of the ellipse in the order of core::kEllipseHandles.
    std::vector<Eigen::Vector2d> handles() const;
    std::size_t active() const { return m_active; }
    void activate(std::size_t handle) { m_active = handle % handles().size(); }
    void activateNext(int step);

    /// Grips the handle there; false when there is none.
    bool grip(const SectionMap& map, const QPointF& at);
    bool isGripped() const { return m_gripped; }
    void dragTo(const SectionMap& map, const QPointF& at);
    void letGo() { m_gripped = false; }
    /// Moves the active handle, mm in the section.
    void nudge(const Eigen::Vector2d& byMm);

    void draw(QPainter& painter, const QRectF& area, const SectionMap& map, const QString& caption, bool stale) const;

private:
    void moveActive(const Eigen::Vector2d& to);

    std::vector<Eigen::Vector2d> m_points; ///< section coordinates, mm
    std::optional<core::HeldEllipse> m_ellipse;
    std::size_t m_active = 0;
    bool m_gripped = false;
    Eigen::Vector2d m_offset{0.0, 0.0};
};

} // namespace gauge::app
