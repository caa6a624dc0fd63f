// Keys, mouse and wheel of the simulated radiograph.
#include "app/format/core_sentences.h"
#include "app/interaction/drags.h"
#include "app/views/radiograph_view.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr double kArmDegPerPixel = 0.4, kArmKeyDeg = 1.0, kLargeKeyDeg = 10.0, kArmKeyZoom = 1.2;
constexpr double kLeastFieldMm = 30.0, kMostFieldMm = 400.0;
constexpr double kLeastWindowMm = 2.0;

} // namespace

void RadiographView::typeAngles(const QString& text) {
    m_ask->hide();
    setFocus();
    if (text.trimmed().isEmpty()) return;
    const auto angles = core::anglesFromText(text.toStdString());
    if (angles)
        turnTo(*angles);
    else
        m_session.say(Message::Kind::Error, sentence(angles.error().message));
}

void RadiographView::askAngles() {
    m_ask->setText(QString::fromStdString(core::words(m_angles)));
    m_ask->resize(std::min(width() - 20, std::max(m_ask->sizeHint().width(), 180)), m_ask->sizeHint().height());
    m_ask->move(10, 34);
    m_ask->show();
    m_ask->selectAll();
    m_ask->setFocus();
}

bool RadiographView::event(QEvent* event) {
    // These keys are the view's while it has the focus, whatever the window does with them.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
        const bool letter = !(key->modifiers() & Qt::ShiftModifier) &&
                            (key->key() == Qt::Key_A || key->key() == Qt::Key_F || key->key() == Qt::Key_W);
        const bool arrow = key->key() == Qt::Key_Left || key->key() == Qt::Key_Right || key->key() == Qt::Key_Up ||
                           key->key() == Qt::Key_Down || key->key() == Qt::Key_Home;
        if (plain && (letter || arrow)) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void RadiographView::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? kLargeKeyDeg : kArmKeyDeg;
    const auto turn = [&](double primary, double secondary) {
        turnTo({m_angles.primaryDeg + primary, m_angles.secondaryDeg + secondary});
    };
    switch (event->key()) {
    case Qt::Key_Left:
        return turn(-step, 0.0);
    case Qt::Key_Right:
        return turn(step, 0.0);
    case Qt::Key_Up:
        return turn(0.0, step);
    case Qt::Key_Down:
        return turn(0.0, -step);
    case Qt::Key_Home:
        return turnTo(m_home);
    case Qt::Key_A:
        return askAngles();
    case Qt::Key_F:
        return setFilling(static_cast<Filling>((static_cast<int>(m_filling) + 1) % 5));
    case Qt::Key_W:
        m_window.reset();
        m_shown = {};
        return update();
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoom(kArmKeyZoom);
    case Qt::Key_Minus:
        return zoom(1.0 / kArmKeyZoom);
    default:
        QWidget::keyPressEvent(event);
    }
}

/// A frame's field is its detector's.
void RadiographView::zoom(double factor) {
    if (m_frame && m_frame->arm.imagerSpacingMm.x() > 0.0) return;
    m_fieldMm = std::clamp(m_fieldMm / factor, kLeastFieldMm, kMostFieldMm);
    moved();
}

void RadiographView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        m_dragFrom = event->position();
        m_dragAngles = m_angles;
        setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::RightButton && m_picture) {
        m_windowDrag = std::pair(event->position(), m_window.value_or(m_found));
    }
}

void RadiographView::mouseMoveEvent(QMouseEvent* event) {
    if (m_dragFrom) {
        // The heart's near side follows the hand: the detector goes the other way.
        const QPointF moved = event->position() - *m_dragFrom;
        turnTo({m_dragAngles.primaryDeg - kArmDegPerPixel * moved.x(), m_dragAngles.secondaryDeg + kArmDegPerPixel * moved.y()});
    } else if (m_windowDrag) {
        // As on CT: to the right widens, downwards makes darker. A pixel is a two-hundredth of what was found.
        const auto& [from, window] = *m_windowDrag;
        const double perPixel = std::max(m_found.highMm - m_found.lowMm, kLeastWindowMm) / 200.0;
        const QPointF moved = event->position() - from;
        const double centre = 0.5 * (window.lowMm + window.highMm) - perPixel * moved.y();
        const double width = std::max(window.highMm - window.lowMm + perPixel * moved.x(), kLeastWindowMm);
        m_window = RadiographWindow{centre - 0.5 * width, centre + 0.5 * width};
        m_shown = {};
        update();
    }
}

void RadiographView::mouseReleaseEvent(QMouseEvent*) {
    m_dragFrom.reset();
    m_windowDrag.reset();
    setCursor(Qt::OpenHandCursor);
}

void RadiographView::wheelEvent(QWheelEvent* event) {
    if (!(event->modifiers() & Qt::ControlModifier)) return event->ignore();
    zoom(zoomFactor(event->angleDelta().y()));
}

} // namespace gauge::app
