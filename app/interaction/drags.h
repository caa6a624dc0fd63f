// What a mouse drag means, one small class each; views hand them positions and take the outcome. Start values
// are kept, so that a drag back ends where it began.
#pragma once

#include "app/drawing/grey_image.h"

#include <QPointF>
#include <cmath>

namespace gauge::app {

/// Window level: to the right widens the window (less contrast), downwards raises its centre (darker).
class WindowDrag {
public:
    WindowDrag(const QPointF& from, const GreyWindow& window) : m_from(from), m_window(window) {}

    GreyWindow at(const QPointF& to) const {
        constexpr double kHuPerPixel = 2.5;
        const QPointF moved = to - m_from;
        return {m_window.centerHu + kHuPerPixel * moved.y(), m_window.widthHu + kHuPerPixel * moved.x()};
    }

private:
    QPointF m_from;
    GreyWindow m_window;
};

/// Turn of the long section: a pixel up or down is half a degree.
class TurnDrag {
public:
    TurnDrag(const QPointF& from, double turnDeg) : m_from(from), m_turnDeg(turnDeg) {}

    double at(const QPointF& to) const {
        constexpr double kDegPerPixel = 0.5;
        return m_turnDeg + kDegPerPixel * (to.y() - m_from.y());
    }

private:
    QPointF m_from;
    double m_turnDeg;
};

/// Pan: what was under the pointer stays under it.
class PanDrag {
public:
    PanDrag(const QPointF& from, const QPointF& offset) : m_from(from), m_offset(offset) {}

    QPointF at(const QPointF& to) const { return m_offset + (to - m_from); }

private:
    QPointF m_from, m_offset;
};

/// Zoom by the wheel: factor for an angle delta of Qt (120 is one notch).
inline double zoomFactor(int angleDelta) {
    return std::pow(1.15, angleDelta / 120.0);
}

} // namespace gauge::app
