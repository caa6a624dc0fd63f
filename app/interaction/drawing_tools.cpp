#include "app/interaction/drawing_tools.h"

#include "core/record/drawing_values.h"

namespace gauge::app {
namespace {

bool isNear(const Eigen::Vector2d& a, const Eigen::Vector2d& b, double near) {
    return (a - b).norm() <= near;
}

/// A fixed number of points.
class CountedTool : public DrawingTool {
public:
    explicit CountedTool(core::DrawingKind kind) : DrawingTool(kind), m_count(core::pointCount(kind).most) {}

    void press(const Eigen::Vector2d& at, double near) override {
        if (!m_set.empty() && isNear(m_set.back(), at, near)) return; // the same place twice is no line
        set(at);
        m_done = m_set.size() == m_count;
    }

private:
    std::size_t m_count;
};

/// As many points as are clicked.
class ChainTool : public DrawingTool {
public:
    explicit ChainTool(core::DrawingKind kind) : DrawingTool(kind) {}

    void press(const Eigen::Vector2d& at, double near) override {
        const bool closes = core::isClosed(kind()) && m_set.size() >= least() && isNear(m_set.front(), at, near);
        if (closes)
            m_done = true;
        else if (m_set.empty() || !isNear(m_set.back(), at, near))
            set(at);
    }
    void release(const Eigen::Vector2d& at, double) override { move(at); }
    void finish() override { m_done = m_set.size() >= least(); }

private:
    std::size_t least() const { return core::pointCount(kind()).least; }
};

/// Ends of one diameter, then the half-width; keeps them as centre, end, end of the other half-axis.
class EllipseTool : public DrawingTool {
public:
    explicit EllipseTool(const Eigen::Vector2d& unitMm) : DrawingTool(core::DrawingKind::Ellipse), m_unitMm(unitMm) {}

    void press(const Eigen::Vector2d& at, double near) override {
        if (!m_set.empty() && isNear(m_set.back(), at, near)) return;
        set(at);
        m_done = m_set.size() == 3;
    }
    DrawingPoints points() const override { return handles(m_set); }
    DrawingPoints shown() const override {
        DrawingPoints clicked = m_set;
        if (!m_done && !clicked.empty()) clicked.push_back(m_pointer);
        return handles(clicked);
    }

private:
    DrawingPoints handles(const DrawingPoints& clicked) const {
        if (clicked.size() < 2) return clicked;
        constexpr double kUsualRatio = 0.75; // until the half-width is set
        const Eigen::Vector2d center = 0.5 * (clicked[0] + clicked[1]);
        const Eigen::Vector2d half = (clicked[1] - center).cwiseProduct(m_unitMm);
        const Eigen::Vector2d across = Eigen::Vector2d(-half.y(), half.x()).cwiseQuotient(m_unitMm);
        DrawingPoints out{center, clicked[1], clicked.size() > 2 ? clicked[2] : Eigen::Vector2d(center + kUsualRatio * across)};
        out[2] = core::ellipseSquared(out, m_unitMm);
        return out;
    }

    Eigen::Vector2d m_unitMm;
};

} // namespace

void DrawingTool::set(const Eigen::Vector2d& at) {
    m_set.push_back(at);
    m_pointer = at;
}

void DrawingTool::release(const Eigen::Vector2d& at, double near) {
    move(at);
    // A drag sets its end where the button is let go; a click leaves it to the next click.
    if (m_set.size() == 1 && !m_done && !isNear(m_set.front(), at, near)) press(at, near);
}

void DrawingTool::takeBack() {
    if (!m_set.empty()) m_set.pop_back();
    m_done = false;
}

DrawingPoints DrawingTool::shown() const {
    DrawingPoints points = m_set;
    if (!m_done && !points.empty()) points.push_back(m_pointer);
    return points;
}

std::unique_ptr<DrawingTool> makeTool(core::DrawingKind kind, const Eigen::Vector2d& unitMm) {
    switch (kind) {
    case core::DrawingKind::Straight:
    case core::DrawingKind::Interval:
    case core::DrawingKind::Angle:
    case core::DrawingKind::Velocity:
        return std::make_unique<CountedTool>(kind);
    case core::DrawingKind::Curve:
    case core::DrawingKind::Area:
    case core::DrawingKind::Envelope:
        return std::make_unique<ChainTool>(kind);
    case core::DrawingKind::Ellipse:
        return std::make_unique<EllipseTool>(unitMm);
    }
    return nullptr;
}

} // namespace gauge::app
