#include "app/views/image_view.h"

#include "app/document/seats.h"
#include "app/drawing/drawn_lines.h"
#include "app/drawing/labels.h"
#include "app/format/quantity.h"
#include "core/record/carried_drawing.h"
#include "core/volume/sampling.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>

namespace gauge::app {

ImageView::ImageView(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_layer(new DrawingLayer(session, state, *this, *this)) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    const auto repaint = [this] { update(); };
    connect(&session, &Session::imagesChanged, this, repaint);
    connect(&session, &Session::measurementChanged, this, repaint);
    connect(&session, &Session::landingChanged, this, repaint);
    connect(&session, &Session::workChanged, this, repaint);
    connect(&state, &ViewState::windowChanged, this, repaint);
    connect(&state, &ViewState::slabChanged, this, repaint);
    connect(&state, &ViewState::pointerChanged, this, repaint);
}

void ImageView::setSeats(const Seats& seats) {
    m_seats = &seats;
    connect(&seats, &Seats::changed, this, [this] { update(); });
}

const core::Seat* ImageView::seat() const {
    return m_seats ? m_seats->chosen() : nullptr;
}

bool ImageView::same(const Key& a, const Key& b) {
    const auto& f = a.frame;
    const auto& g = b.frame;
    return a.volume == b.volume && f.origin.mm == g.origin.mm && f.u.mm == g.u.mm && f.v.mm == g.v.mm &&
           a.zero == b.zero && a.pixelsPerMm == b.pixelsPerMm && a.slab == b.slab && a.size == b.size &&
           a.ratio == b.ratio;
}

/// Cut only when the section changes; another window is another reading of the same values.
const QImage& ImageView::picture(const SectionMap& map) {
    const Key key{m_session.volume(), map.frame, map.zero, map.pixelsPerMm, m_state.slab(), size(), devicePixelRatioF()};
    const bool cut = m_picture.isNull() || !same(key, m_key);
    if (cut) m_cut = cutFor(*m_session.volume(), map, area(), devicePixelRatioF(), m_state.slab());
    if (cut || !(m_shownWindow == m_state.window())) {
        m_picture = greyImage(m_cut, m_state.window());
        m_picture.setDevicePixelRatio(devicePixelRatioF());
    }
    m_key = key;
    m_shownWindow = m_state.window();
    return m_picture;
}

std::optional<core::Drawing> ImageView::blank(core::DrawingKind kind) const {
    const auto where = map();
    const bool isDoppler = kind == core::DrawingKind::Velocity || kind == core::DrawingKind::Interval ||
                           kind == core::DrawingKind::Envelope;
    if (!where || !m_session.volume() || isDoppler) return std::nullopt;
    core::Drawing drawing;
    drawing.kind = kind;
    const std::string plane = planeId();
    drawing.site = core::SectionSite{
        where->frame, plane, plane.empty() ? 0 : core::revisionOf(m_session.record(), core::input::placeOf(plane))};
    return drawing;
}

bool ImageView::shows(const core::Drawing& drawing) const {
    const auto* site = std::get_if<core::SectionSite>(&drawing.site);
    const auto where = map();
    if (!site || !where || !drawing.evidence.empty()) return false;
    constexpr double kNearMm = 1.0, kLeastCosine = 0.5; // of the planes' angle: a line seen from its edge says nothing
    if (std::abs(site->frame.normal.dot(where->frame.normal)) < kLeastCosine) return false;
    if (!site->plane.empty() && site->plane == planeId()) return true;
    return site->plane.empty() && core::liesNear(drawing, where->frame.plane(), kNearMm);
}

QTransform ImageView::screenFrom(const core::Drawing& drawing) const {
    const auto where = map();
    const auto* site = std::get_if<core::SectionSite>(&drawing.site);
    if (!where || !site) return {};
    const QPointF zero = where->fromPatient(site->frame.origin);
    const auto along = [&](const core::PatientVector& direction) {
        return QPointF(direction.dot(where->frame.u), direction.dot(where->frame.v)) * where->pixelsPerMm;
    };
    const QPointF u = along(site->frame.u), v = along(site->frame.v);
    return {u.x(), u.y(), v.x(), v.y(), zero.x(), zero.y()};
}

void ImageView::drawPointer(QPainter& painter, const SectionMap& map) {
    if (m_pointerAt) {
        const core::PatientPoint at = map.patientFrom(*m_pointerAt);
        if (m_session.volume()->contains(at))
            drawLabel(painter, valueCorner(), quantity(core::TrilinearSampler(*m_session.volume())(at), Unit::Hounsfield),
                      tone::onImageSoft, LabelSide::Left, area(), 11);
        return;
    }
    if (!m_state.pointer()) return;
    // Fainter the farther the place lies off this plane.
    constexpr double kNearMm = 2.0, kFarMm = 30.0;
    const double off = std::abs(core::signedDistanceMm(map.frame.plane(), *m_state.pointer()));
    if (off > kFarMm) return;
    painter.save();
    painter.setOpacity(off <= kNearMm ? 1.0 : 0.45);
    drawCrosshair(painter, map.fromPatient(*m_state.pointer()));
    painter.restore();
}

bool ImageView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isDragging() &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
        event->accept();
    if (event->type() == QEvent::KeyPress && isDragging() && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        cancelDrag();
        return true;
    }
    return QWidget::event(event);
}

void ImageView::leaveEvent(QEvent*) {
    m_pointerAt.reset();
    m_state.setPointer(std::nullopt);
    update();
}

/// A thick section must not be taken for a thin one.
QString ImageView::slabWords() const {
    const core::Slab& slab = m_state.slab();
    if (slab.thicknessMm <= 0.0) return {};
    const QString thick = quantity(slab.thicknessMm, Unit::Millimetre);
    return slab.shows == core::SlabValue::Mean ? tr("slab of %1, mean").arg(thick) : tr("slab of %1, maximum").arg(thick);
}

void ImageView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::TextAntialiasing);
    const auto where = map();
    if (!m_session.volume() || !where) {
        painter.fillRect(rect(), tone::image);
        painter.setFont(labelFont(13));
        painter.setPen(tone::onImageSoft);
        painter.drawText(rect().adjusted(32, 32, -32, -32), Qt::AlignCenter | Qt::TextWordWrap, emptyText());
        return;
    }
    painter.drawImage(QPointF(0, 0), picture(*where));
    drawOver(painter, *where);
    m_layer->paint(painter, area());
    drawPointer(painter, *where);
    const QRectF head = drawTitle(painter, title(), area());
    if (const QString slab = slabWords(); !slab.isEmpty())
        drawLabel(painter, QPointF(0, head.isEmpty() ? 16 : head.bottom() + 12), slab, tone::onImage, LabelSide::Right, area(), 11);
    if (hasFocus()) {
        painter.setPen(QPen(tone::onImageSoft, 1));
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
    if (const auto where = map(); where && m_session.volume()) {
        m_pointerAt = event->position();
        m_state.setPointer(where->patientFrom(event->position()));
    }
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
