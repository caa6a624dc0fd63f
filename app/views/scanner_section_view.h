// A section along a scanner axis, for finding and marking points. A click places the armed mark; without one
// it moves the place where the three sections cross.
#pragma once

#include "app/drawing/scanner_section_drawing.h"
#include "app/interaction/plane_drag.h"
#include "app/interaction/septum_marking.h"
#include "app/views/image_view.h"

namespace gauge::app {

class ScannerSectionView : public ImageView {
    Q_OBJECT
public:
    ScannerSectionView(ScannerAxis axis, Session& session, ViewState& state, QWidget* parent = nullptr);

    std::optional<SectionMap> map() const override;
    void resetView();

protected:
    void drawOver(QPainter& painter, const SectionMap& map) override;
    QString title() const override;
    void pan(const QPointF& offset) override;
    QPointF panOffset() const override { return m_offset; }
    void zoom(double factor, const QPointF& at) override;
    void scroll(int steps) override;
    void leftPressed(const QPointF& at) override;
    void leftMoved(const QPointF& at) override;
    void leftReleased(const QPointF& at) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    bool isDragging() const override { return m_plane.has_value() || m_septum.isDragging(); }
    void cancelDrag() override;

private:
    double fittingPixelsPerMm() const;
    core::PatientPoint middle() const;
    double stepMm() const;
    void moveCrossing(const QPointF& at);

    ScannerAxis m_axis;
    double m_zoom = 1.0;
    QPointF m_offset;
    std::optional<QPointF> m_pointer;
    bool m_dragging = false;
    std::optional<PlaneDrag> m_plane;
    SeptumMarking m_septum;
};

} // namespace gauge::app
