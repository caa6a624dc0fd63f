#include "app/views/sheath_view.h"

#include <QPainter>

namespace gauge::app {

SheathView::SheathView(SeptumModel& model, ViewState& state, QWidget* parent) : QWidget(parent), m_model(model), m_state(state) {
    setAccessibleName(tr("Way of the sheath from the crossing to the ostium"));
    connect(&model, &SeptumModel::changed, this, qOverload<>(&QWidget::update));
    connect(&state, &ViewState::windowChanged, this, qOverload<>(&QWidget::update));
}

void SheathView::setPlace(const std::optional<Eigen::Vector2d>& place) {
    m_place = place;
    update();
}

void SheathView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QRectF area(rect());
    painter.fillRect(area, tone::image);
    const SeptumState& state = m_model.state();
    const Eigen::Vector2d place = m_place.value_or(shownPlace(state));
    const auto map = sheathSection(state, place, area);
    if (!map) {
        painter.setPen(tone::onImageSoft);
        painter.setFont(font());
        painter.drawText(area.adjusted(18, 12, -18, -12), Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap,
                         tr("The way of the sheath is shown once the fossa is marked and the appendage is measured."));
        return;
    }
    if (const core::Volume* volume = m_model.session().volume())
        painter.drawImage(area, cutGrey(*volume, *map, area, m_state.window(), devicePixelRatioF()));
    drawSheath(painter, area, *map, state, place, m_model.session().measurement());
}

} // namespace gauge::app
