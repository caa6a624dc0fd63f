// The cross-section at the shown depth, seen from the atrium, with its contour and diameters.
#pragma once

#include "app/views/image_view.h"

namespace gauge::app {

class CrossSectionView : public ImageView {
    Q_OBJECT
public:
    CrossSectionView(Session& session, ViewState& state, QWidget* parent = nullptr);

    std::optional<SectionMap> map() const override;
    void resetView();

protected:
    void drawOver(QPainter& painter, const SectionMap& map) override;
    QString emptyText() const override;
    void pan(const QPointF& offset) override;
    QPointF panOffset() const override { return m_offset; }
    void zoom(double factor, const QPointF& at) override;
    void scroll(int steps) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    double m_zoom = 1.0;
    QPointF m_offset;
};

} // namespace gauge::app
