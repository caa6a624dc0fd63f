#include "app/views/long_section_view.h"

#include "app/drawing/drawn_lines.h"
#include "app/drawing/labels.h"
#include "app/drawing/mark_roles.h"
#include "app/views/shown_section.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace gauge::app {
LongSectionView::LongSectionView(Session& session, ViewState& state, QWidget* parent)
    : ImageView(session, state, parent) {
    setCursor(Qt::SizeVerCursor);
    const auto repaint = [this] { update(); };
    connect(&state, &ViewState::turnChanged, this, repaint);
    connect(&state, &ViewState::scaleChanged, this, repaint);
    connect(&state, &ViewState::depthChanged, this, repaint);
    connect(&session, &Session::measurementChanged, this, [this] {
        if (m_fitted) resetView();
    });
}

void LongSectionView::resetView() {
    const auto* m = m_session.measurement();
    m_fitted = true;
    m_down = 0.0;
    if (!m || width() < 2) return;
    constexpr double kBeforeMm = 20.0, kBeyondMm = 13.0;
    DepthScale scale;
    scale.pixelsPerMm = width() / (kBeforeMm + std::max(m->axis.lengthMm, 5.0) + kBeyondMm);
    scale.zeroX = kBeforeMm * scale.pixelsPerMm;
    const core::SectionFrame frame = longSectionFrame(*m, m_state.turnDeg());
    m_down = -0.5 * scale.pixelsPerMm * frame.sectionFromPatient(core::axisPointAt(*m, m->axis.lengthMm)).y();
    m_state.setDepthScale(scale);
    update();
}

std::optional<SectionMap> LongSectionView::map() const {
    const auto* m = m_session.measurement();
    if (!m || !m_session.volume()) return std::nullopt;
    const DepthScale& scale = m_state.depthScale();
    return SectionMap{longSectionFrame(*m, m_state.turnDeg()),
                      {scale.zeroX, area().center().y() + m_down},
                      scale.pixelsPerMm};
}

void LongSectionView::drawOver(QPainter& painter, const SectionMap& map) {
    const auto marks = appendageMarks(m_session.record());
    LongSectionScene scene;
    scene.measurement = m_session.measurement();
    scene.marks = marks ? &*marks : nullptr;
    if (const auto* landing = m_session.landingShown()) scene.landings.push_back(landing);
    for (const auto* further : m_session.furtherLandings())
        scene.landings.push_back(further);
    if (const auto* plug = m_session.plug()) scene.landings.push_back(plug);
    if (m_state.depthKind() == ViewState::Depth::Free)
        scene.cursorMm = shownSection(m_session, m_state)->depthMm;
    scene.seat = seat();
    scene.title = titlePlate(title(), area());
    const auto planes = planesIn(m_session, map);
    for (const auto& plane : planes)
        for (const QPointF& at : plane.handles.places())
            scene.keepFree.emplace_back(at - QPointF(7, 7), QSizeF(14, 14));
    scene.handles = [&](QPainter& on) {
        for (const auto& plane : planes)
            plane.handles.draw(on, plane.role(), true);
    };
    drawLongSection(painter, area(), map, scene);
}

QString LongSectionView::emptyText() const {
    if (m_session.isMeasuring()) return tr("Measuring the appendage …");
    if (m_session.failure()) return QString::fromStdString(m_session.failure()->message);
    return tr("Mark the atrium and the tip of the appendage on the scanner-axis sections (key T): the "
              "appendage is then "
              "measured and shown along its own axis here.");
}

QString LongSectionView::title() const {
    return tr("long section, turned %1°")
        .arg(QString::number(std::lround(m_state.turnDeg())).replace(QLatin1Char('-'), QChar(0x2212)));
}

void LongSectionView::pan(const QPointF& offset) {
    m_fitted = false;
    DepthScale scale = m_state.depthScale();
    scale.zeroX = offset.x();
    m_down = offset.y();
    m_state.setDepthScale(scale);
    update();
}

void LongSectionView::zoom(double factor, const QPointF& at) {
    constexpr double kLeast = 1.5, kMost = 80.0;
    m_fitted = false;
    DepthScale scale = m_state.depthScale();
    const double before = scale.pixelsPerMm;
    scale.pixelsPerMm = std::clamp(before * factor, kLeast, kMost);
    const double ratio = scale.pixelsPerMm / before;
    scale.zeroX = at.x() + (scale.zeroX - at.x()) * ratio;
    const double armY = at.y() - area().center().y();
    m_down = armY + (m_down - armY) * ratio;
    m_state.setDepthScale(scale);
}

void LongSectionView::scroll(int steps) {
    scrollDepth(m_session, m_state, steps);
}

void LongSectionView::cancelDrag() {
    m_plane.reset();
    m_session.dropPreviews();
}

void LongSectionView::leftPressed(const QPointF& at) {
    const auto where = map();
    if (!where) return;
    m_plane = PlaneDrag::grip(m_session, *where, at);
    if (!m_plane)
        m_turn.emplace(at, m_state.turnDeg());
    else if (m_plane->which() == HeldPlane::Landing)
        m_state.showLanding();
    else
        m_state.showOstium();
}

void LongSectionView::leftMoved(const QPointF& at) {
    if (m_plane)
        m_plane->moveTo(m_session, at);
    else if (m_turn)
        m_state.setTurnDeg(m_turn->at(at));
    else if (const auto where = map(); where && !m_state.tool()) {
        const QString hint = PlaneDrag::hint(m_session, *where, at);
        setToolTip(hint);
        setCursor(hint.isEmpty() ? Qt::SizeVerCursor : Qt::OpenHandCursor);
    }
}

void LongSectionView::leftReleased(const QPointF&) {
    if (m_plane) m_plane->record(m_session);
    m_plane.reset();
    m_turn.reset();
}

void LongSectionView::keyPressEvent(QKeyEvent* event) {
    constexpr double kTurnStepDeg = 5.0;
    switch (event->key()) {
    case Qt::Key_Up:
        m_state.setTurnDeg(m_state.turnDeg() - kTurnStepDeg);
        break;
    case Qt::Key_Down:
        m_state.setTurnDeg(m_state.turnDeg() + kTurnStepDeg);
        break;
    case Qt::Key_Left:
        scrollDepth(m_session, m_state, -1);
        break;
    case Qt::Key_Right:
        scrollDepth(m_session, m_state, 1);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void LongSectionView::resizeEvent(QResizeEvent*) {
    if (m_fitted) resetView();
}

} // namespace gauge::app
