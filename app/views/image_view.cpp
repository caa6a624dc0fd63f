#include "app/views/image_view.h"

#include "app/drawing/marks_drawing.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

namespace gauge::app {

ImageView::ImageView(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    const auto repaint = [this] { update(); };
    connect(&session, &Session::imagesChanged, this, repaint);
    connect(&session, &Session::measurementChanged, this, repaint);
    connect(&session, &Session::landingChanged, this, repaint);
    connect(&session, &Session::workChanged, this, repaint);
    connect(&state, &ViewState::windowChanged, this, repaint);
}

bool ImageView::same(const Key& a, const Key& b) {
    const auto& f = a.frame;
    const auto& g = b.frame;
    return a.volume == b.volume && f.origin.mm == g.origin.mm && f.u.mm == g.u.mm && f.v.mm == g.v.mm &&
           a.zero == b.zero && a.pixelsPerMm == b.pixelsPerMm && a.window == b.window && a.size == b.size &&
           a.ratio == b.ratio;
}

const QImage& ImageView::picture(const SectionMap& map) {
    const Key key{m_session.volume(), map.frame, map.zero,           map.pixelsPerMm,
                  m_state.window(),   size(),    devicePixelRatioF()};
    if (m_picture.isNull() || !same(key, m_key)) {
        m_picture = cutGrey(*m_session.volume(), map, area(), m_state.window(), devicePixelRatioF());
        m_key = key;
    }
    return m_picture;
}

double ImageView::titleEnd() const {
    return title().isEmpty() ? 0.0 : 7.0 + labelWidth(title());
}

void ImageView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::TextAntialiasing);
    const auto where = map();
    if (!m_session.volume() || !where) {
        painter.fillRect(rect(), tone::image);
        painter.setFont(labelFont(13));
        painter.setPen(tone::soft);
        painter.drawText(rect().adjusted(32, 32, -32, -32), Qt::AlignCenter | Qt::TextWordWrap, emptyText());
        return;
    }
    painter.drawImage(QPointF(0, 0), picture(*where));
    drawOver(painter, *where);
    if (!title().isEmpty()) drawLabel(painter, QPointF(0, 16), title(), tone::text, LabelSide::Right, area());
    if (hasFocus()) {
        painter.setPen(QPen(tone::faint, 1));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void ImageView::mousePressEvent(QMouseEvent* event) {
    if (!m_session.volume()) return;
    if (event->button() == Qt::RightButton)
        m_windowDrag.emplace(event->position(), m_state.window());
    else if (event->button() == Qt::MiddleButton)
        m_panDrag.emplace(event->position(), panOffset());
    else if (event->button() == Qt::LeftButton)
        leftPressed(event->position());
}

void ImageView::mouseMoveEvent(QMouseEvent* event) {
    if (m_windowDrag)
        m_state.setWindow(m_windowDrag->at(event->position()));
    else if (m_panDrag)
        pan(m_panDrag->at(event->position()));
    else
        leftMoved(event->position());
}

void ImageView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::RightButton)
        m_windowDrag.reset();
    else if (event->button() == Qt::MiddleButton)
        m_panDrag.reset();
    else if (event->button() == Qt::LeftButton)
        leftReleased(event->position());
}

void ImageView::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (!m_session.volume()) return;
    if (event->modifiers() & Qt::ControlModifier) {
        zoom(zoomFactor(event->angleDelta().y()), event->position());
        return;
    }
    constexpr int kNotch = 120;
    m_wheelRest += event->angleDelta().y();
    const int steps = m_wheelRest / kNotch;
    m_wheelRest -= steps * kNotch;
    if (steps != 0) scroll(-steps);
}

} // namespace gauge::app
