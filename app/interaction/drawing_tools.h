// One class for each way of drawing with mouse and keys. A tool collects points in the coordinates of what it draws on and
// knows nothing of views; drawing_layer.h hands it presses and shows what it has.
//
//   Straight, Interval   drag from end to end, or click both ends
//   Curve, Envelope      click point after point; Enter or a double click ends
//   Area                 the same; a click on the first point ends too
//   Angle                three clicks, the vertex second
//   Ellipse              drag (or click) one diameter from end to end, then click the half-width
//   Velocity             one click
#pragma once

#include "core/record/entries.h"

#include <Eigen/Core>
#include <memory>
#include <vector>

namespace gauge::app {

using DrawingPoints = std::vector<Eigen::Vector2d>;

class DrawingTool {
public:
    virtual ~DrawingTool() = default;

    core::DrawingKind kind() const { return m_kind; }
    /// @param near  distance below which two places count as one, in drawing units.
    virtual void press(const Eigen::Vector2d& at, double near) = 0;
    virtual void move(const Eigen::Vector2d& at) { m_pointer = at; }
    virtual void release(const Eigen::Vector2d& at, double near);
    /// Enter or a double click.
    virtual void finish() {}
    /// Takes the last point back.
    void takeBack();
    /// A drawing is complete: `points()` are its own.
    bool isDone() const { return m_done; }
    bool isEmpty() const { return m_set.empty(); }
    /// The points that the drawing would have if the pointer's place were set next.
    virtual DrawingPoints shown() const;
    /// Those that are set.
    virtual DrawingPoints points() const { return m_set; }

protected:
    explicit DrawingTool(core::DrawingKind kind) : m_kind(kind) {}
    void set(const Eigen::Vector2d& at);

    DrawingPoints m_set;
    Eigen::Vector2d m_pointer{0.0, 0.0};
    bool m_done = false;

private:
    core::DrawingKind m_kind;
};

/// @param unitMm  millimetres a drawing unit along x and y: an ellipse's half-width is square to its diameter in them.
std::unique_ptr<DrawingTool> makeTool(core::DrawingKind kind, const Eigen::Vector2d& unitMm = Eigen::Vector2d::Ones());

} // namespace gauge::app
