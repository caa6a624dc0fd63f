// The long section. The planes of ostium and landing zone are moved and tilted by their handles; dragging up or down elsewhere
// turns the section about the axis. Its horizontal axis is that of the depth strip.
#pragma once

#include "app/interaction/plane_drag.h"
#include "app/views/image_view.h"

namespace gauge::app {

class LongSectionView : public ImageView {
    Q_OBJECT
public:
    LongSectionView(Session& session, ViewState& state, QWidget* parent = nullptr);

    std::optional<SectionMap> map() const override;
    /// Fits atrium side, ostium and tip into the width.
    void resetView();

protected:
    void drawOver(QPainter& painter, const SectionMap& map) override;
    QString emptyText() const override;
    QString title() const override;
    void pan(const QPointF& offset) override;
    QPointF panOffset() const override { return {m_state.depthScale().zeroX, m_down}; }
    void zoom(double factor, const QPointF& at) override;
    void scroll(int steps) override;
    void leftPressed(const QPointF& at) override;
    void leftMoved(const QPointF& at) override;
    void leftReleased(const QPointF& at) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool isDragging() const override { return m_plane.has_value(); }
    void cancelDrag() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    std::optional<PlaneDrag> m_plane;
    std::optional<TurnDrag> m_turn;
    double m_down = 0.0;  ///< of the ostium's centre from the middle, pixels
    bool m_fitted = true; ///< not zoomed or panned since the last fit
};

} // namespace gauge::app
