#include "app/views/depth_strip_view.h"

#include "app/drawing/depth_strip_drawing.h"
#include "app/views/shown_section.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>

namespace gauge::app {

DepthStripView::DepthStripView(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Width against depth along the axis"));
    setToolTip(tr("Click or left and right keys show a depth; drag the landing zone's marker, or hold Shift with the keys, to "
                  "move it."));
    const auto repaint = [this] { update(); };
    connect(&session, &Session::measurementChanged, this, &DepthStripView::refreshAnswer);
    connect(&session, &Session::landingChanged, this, &DepthStripView::refreshAnswer);
    connect(&state, &ViewState::depthChanged, this, repaint);
    connect(&state, &ViewState::scaleChanged, this, repaint);
}

void DepthStripView::setAnswers(Answers& answers) {
    m_answers = &answers;
    connect(&answers, &Answers::changed, this, &DepthStripView::refreshAnswer);
    connect(&answers, &Answers::sizingChanged, this, &DepthStripView::refreshAnswer);
    refreshAnswer();
}

void DepthStripView::refreshAnswer() {
    m_answer = m_answers ? stripAnswer(m_session, *m_answers) : std::nullopt;
    update();
}

std::optional<double> DepthStripView::landingX() const {
    const auto landing = m_session.landingPlace();
    return landing ? std::optional(m_state.depthScale().xFromMm(landing->depthMm)) : std::nullopt;
}

void DepthStripView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto* m = m_session.measurement();
    if (!m) {
        painter.fillRect(rect(), tone::panel);
        painter.setFont(labelFont(12));
        painter.setPen(tone::faint);
        painter.drawText(rect(), Qt::AlignCenter, tr("Width against depth along the axis"));
        return;
    }
    DepthStripScene scene;
    scene.measurement = m;
    scene.answer = answer();
    if (const auto landing = m_session.landingPlace()) scene.landingsMm.push_back(landing->depthMm);
    for (const auto* further : m_session.furtherLandings())
        if (!scene.landingsMm.empty()) scene.landingsMm.push_back(further->depthMm);
    if (m_session.isLandingMeasured()) scene.usableMm = m_session.landing()->straightDepthMm;
    if (const auto shown = shownSection(m_session, m_state); shown && shown->role == Role::Section)
        scene.cursorMm = shown->depthMm;
    scene.hoverMm = m_dragFromMm ? std::nullopt : m_hover;
    scene.active = m_dragFromMm || (m_hover && isOnMarker(m_state.depthScale().xFromMm(*m_hover)));
    drawDepthStrip(painter, QRectF(rect()), m_state.depthScale(), scene);
    if (hasFocus()) {
        painter.setPen(QPen(tone::faint, 1));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

bool DepthStripView::isOnMarker(double x) const {
    constexpr double kReachPx = 9.0;
    const auto marker = landingX();
    return marker && std::abs(x - *marker) <= kReachPx;
}

void DepthStripView::setHover(std::optional<double> mm) {
    m_hover = mm;
    emit hovered(mm);
    update();
}

void DepthStripView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_session.measurement()) return;
    const double mm = m_state.depthScale().mmFromX(event->position().x());
    if (isOnMarker(event->position().x())) {
        m_dragFromMm = m_session.landingPlace()->depthMm - mm;
        ++m_gesture;
        m_state.showLanding();
    } else {
        m_state.showDepth(mm);
    }
    update();
}

void DepthStripView::mouseMoveEvent(QMouseEvent* event) {
    const double x = event->position().x();
    const double mm = m_state.depthScale().mmFromX(x);
    if (m_dragFromMm)
        m_session.previewLanding(mm + *m_dragFromMm);
    else if (event->buttons() & Qt::LeftButton && m_session.measurement())
        m_state.showDepth(mm);
    setCursor(m_dragFromMm || isOnMarker(x) ? Qt::SizeHorCursor : Qt::CrossCursor);
    setHover(m_session.measurement() ? std::optional(mm) : std::nullopt);
}

void DepthStripView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_dragFromMm) return;
    m_dragFromMm.reset();
    if (const auto landing = m_session.landingPlace(); landing && m_session.isPreviewing())
        m_session.moveLanding(landing->depthMm, m_gesture);
    update();
}

void DepthStripView::wheelEvent(QWheelEvent* event) {
    event->accept();
    const int steps = event->angleDelta().y() / 120;
    if (steps != 0) scrollDepth(m_session, m_state, -steps);
}

void DepthStripView::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Left ? -1 : event->key() == Qt::Key_Right ? 1 : 0;
    if (step == 0) {
        // A nudge of the landing zone after something else starts a new step of undo.
        ++m_gesture;
        QWidget::keyPressEvent(event);
        return;
    }
    constexpr double kNudgeMm = 0.5;
    if (!(event->modifiers() & Qt::ShiftModifier))
        scrollDepth(m_session, m_state, step);
    else if (const auto landing = m_session.landingPlace()) {
        m_state.showLanding();
        m_session.moveLanding(landing->depthMm + step * kNudgeMm, m_gesture);
    }
}

void DepthStripView::leaveEvent(QEvent*) {
    setHover(std::nullopt);
}

} // namespace gauge::app
