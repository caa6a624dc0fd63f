#include "app/views/cross_section_view.h"

#include "app/drawing/cross_section_drawing.h"
#include "app/views/shown_section.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace gauge::app {

CrossSectionView::CrossSectionView(Session& session, ViewState& state, QWidget* parent)
    : ImageView(session, state, parent) {
    connect(&state, &ViewState::depthChanged, this, [this] { update(); });
}

std::optional<SectionMap> CrossSectionView::map() const {
    const auto shown = shownSection(m_session, m_state);
    if (!shown || !m_session.volume()) return std::nullopt;
    // One scale for every depth, so that widths can be compared while scrolling: that of the ostium.
    const double half = std::max(fittingHalfWidthMm(m_session.measurement()->ostium.section),
                                 fittingHalfWidthMm(*shown->section));
    SectionMap where = crossSectionMap(*shown->section, area(), half / m_zoom);
    where.zero += m_offset;
    return where;
}

void CrossSectionView::resetView() {
    m_zoom = 1.0;
    m_offset = {};
    update();
}

void CrossSectionView::drawOver(QPainter& painter, const SectionMap& map) {
    const auto shown = shownSection(m_session, m_state);
    drawCrossSection(painter, area(), map, *shown->section, shown->role, CrossSectionLabels::Words,
                     shown->title);
}

QString CrossSectionView::emptyText() const {
    return m_session.isMeasuring() ? tr("Measuring …")
                                   : tr("The cross-section appears here once the appendage is measured.");
}

void CrossSectionView::pan(const QPointF& offset) {
    m_offset = offset;
    update();
}

void CrossSectionView::zoom(double factor, const QPointF&) {
    m_zoom = std::clamp(m_zoom * factor, 0.3, 10.0);
    update();
}

void CrossSectionView::scroll(int steps) {
    scrollDepth(m_session, m_state, steps);
}

void CrossSectionView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Left:
        scroll(-1);
        break;
    case Qt::Key_Down:
    case Qt::Key_Right:
        scroll(1);
        break;
    case Qt::Key_PageUp:
        scroll(-10);
        break;
    case Qt::Key_PageDown:
        scroll(10);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace gauge::app
