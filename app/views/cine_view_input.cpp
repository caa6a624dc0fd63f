// Mouse, keys and calibration of a cine view.
#include "app/views/cine_view.h"

#include "app/commands/picture_commands.h"

#include <QDoubleSpinBox>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <utility>

namespace gauge::app {
namespace {

/// Without modifiers, but for the one that a keyboard's layout asks for: + and . need Shift on some.
bool hasNoModifiers(const QKeyEvent& key) {
    if (key.modifiers() & (Qt::ControlModifier | Qt::AltModifier)) return false;
    const bool isSign = key.key() < Qt::Key_A || (key.key() > Qt::Key_Z && key.key() < Qt::Key_Escape);
    return !(key.modifiers() & Qt::ShiftModifier) || (isSign && key.key() != Qt::Key_Space);
}

} // namespace

void CineView::startCalibration(Calibration kind) {
    if (!data()) return;
    m_player.setPlaying(false);
    m_state.armTool(std::nullopt);
    m_calibration = CalibrationMarks{kind, {}, m_player.frame()};
    m_ask->hide();
    setCursor(Qt::CrossCursor);
    setFocus();
    update();
}

void CineView::leaveCalibration() {
    if (!m_calibration) return;
    m_calibration.reset();
    m_ask->hide();
    setCursor(Qt::ArrowCursor);
    setFocus();
    update();
}

void CineView::askLength() {
    m_askText->setText(m_calibration->kind == Calibration::KnownLength
                           ? tr("How long is it between the marks?")
                           : tr("What is the catheter's outer diameter, as printed? (French divided by 3 is only near it.)"));
    m_askMm->setValue(m_calibration->kind == Calibration::KnownLength ? 10.0 : 2.0);
    const int room = std::max(200, width() - 16);
    m_ask->setFixedWidth(std::min(room, 380));
    m_ask->adjustSize();
    m_ask->move(8, std::max(0, height() - m_ask->height() - static_cast<int>(scrubberArea().height()) - 8));
    m_ask->show();
    m_ask->raise();
    m_askMm->setFocus();
    m_askMm->selectAll();
}

void CineView::finishCalibration(double knownMm) {
    const core::Evidence* evidence = content();
    if (!m_calibration || m_calibration->points.size() != 2 || !evidence || !data()) return;
    core::PictureScale scale;
    scale.origin = m_calibration->kind == Calibration::KnownLength ? core::ScaleOrigin::HandCalibration
                                                                   : core::ScaleOrigin::Catheter;
    scale.byEdgeProfile = m_calibration->kind == Calibration::CatheterShadow;
    scale.frame = m_calibration->frame;
    scale.from = m_calibration->points[0];
    scale.to = m_calibration->points[1];
    scale.knownMm = knownMm;
    // A length marked in one region of an echo picture holds there alone.
    if (const auto region = core::regionAt(data()->regions, scale.from)) scale.within = data()->regions[*region].box;
    if (const auto made = handScale(scale, *data()); !made) {
        m_session.say(Message::Kind::Error, QString::fromStdString(made.error().message));
        m_calibration->points.clear();
        m_ask->hide();
        update();
        return;
    }
    const std::string uid = sopInstanceUid();
    leaveCalibration();
    m_session.document().push(std::make_unique<CalibratePicture>(m_session.document(), uid, scale));
}

bool CineView::isKey(int key) const {
    switch (key) {
    case Qt::Key_Space: case Qt::Key_Comma: case Qt::Key_Period: case Qt::Key_Left: case Qt::Key_Right: case Qt::Key_Home:
    case Qt::Key_End: case Qt::Key_BracketLeft: case Qt::Key_BracketRight: case Qt::Key_R: case Qt::Key_Plus:
    case Qt::Key_Minus: case Qt::Key_0: case Qt::Key_K: case Qt::Key_Up: case Qt::Key_Down:
        return true;
    case Qt::Key_Escape: case Qt::Key_Return: case Qt::Key_Enter:
        return m_calibration.has_value() || m_picked;
    default:
        return false;
    }
}

bool CineView::event(QEvent* event) {
    // While the view has the focus its keys are its own, whatever the menus use them for.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (hasNoModifiers(*key) && isKey(key->key())) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void CineView::keyPressEvent(QKeyEvent* event) {
    if (!hasNoModifiers(*event) || !isKey(event->key())) {
        QWidget::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Space: case Qt::Key_Comma: case Qt::Key_Left: case Qt::Key_Period: case Qt::Key_Right: case Qt::Key_Home:
    case Qt::Key_End:
        if (holdsFrame()) return;
        break;
    default:
        break;
    }
    switch (event->key()) {
    case Qt::Key_Space:
        m_player.toggle();
        break;
    case Qt::Key_Comma: case Qt::Key_Left:
        m_player.step(-1);
        break;
    case Qt::Key_Period: case Qt::Key_Right:
        m_player.step(1);
        break;
    case Qt::Key_Home:
        m_player.setFrame(0);
        break;
    case Qt::Key_End:
        m_player.setFrame(m_player.count() - 1);
        break;
    case Qt::Key_BracketLeft: case Qt::Key_Down:
        m_player.setSpeed(m_player.speed() / 2.0);
        break;
    case Qt::Key_BracketRight: case Qt::Key_Up:
        m_player.setSpeed(m_player.speed() * 2.0);
        break;
    case Qt::Key_R:
        m_player.setLooping(!m_player.isLooping());
        break;
    case Qt::Key_Plus:
        zoomBy(1.25, pictureArea().center());
        break;
    case Qt::Key_Minus:
        zoomBy(0.8, pictureArea().center());
        break;
    case Qt::Key_0:
        resetView();
        break;
    case Qt::Key_K:
        startCalibration(Calibration::KnownLength);
        break;
    case Qt::Key_Return: case Qt::Key_Enter:
        if (m_ask->isVisible()) finishCalibration(m_askMm->value());
        break;
    case Qt::Key_Escape:
        pickPlace({});
        leaveCalibration();
        break;
    }
}

/// While something is being drawn the frame stays, and the person is told why.
bool CineView::holdsFrame() {
    if (!isDrawing()) return false;
    m_session.say(Message::Kind::Information, tr("Finish the drawing on this frame first, or leave it with Escape."));
    return true;
}

void CineView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
    emit entered();
}

void CineView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (m_ask->isVisible()) askLength();
}

void CineView::mousePressEvent(QMouseEvent* event) {
    setFocus();
    emit entered();
    if (!data()) return;
    const QPointF at = event->position();
    if (event->button() == Qt::LeftButton && m_player.count() > 1 && scrubberArea().contains(at)) {
        if (holdsFrame()) return;
        m_player.setPlaying(false);
        m_scrubbing = true;
        scrubTo(at.x());
    } else if (event->button() == Qt::LeftButton && (m_picked || m_calibration)) {
        const QPointF pixel = screenFromPixel().inverted().map(at);
        const Eigen::Vector2d place(pixel.x(), pixel.y());
        if (m_picked) {
            const auto picked = std::exchange(m_picked, {});
            setCursor(Qt::ArrowCursor);
            picked(place);
        } else if (m_calibration->points.size() < 2) {
            m_calibration->points.push_back(place);
            if (m_calibration->points.size() == 2) askLength();
        }
        update();
    } else if (event->button() == Qt::RightButton && !data()->frames->isColour()) {
        if (const CineFrame frame = m_cine->frame(m_player.frame()); frame.grey && data()->xray)
            m_windowDrag.emplace(at, m_window.value_or(dicomio::firstWindow(data()->xray->greyscale, frame.grey->values)));
    } else if (event->button() == Qt::MiddleButton) {
        m_panDrag.emplace(at, m_pan);
    }
}

void CineView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (m_scrubbing) {
        scrubTo(at.x());
    } else if (m_panDrag) {
        m_pan = m_panDrag->at(at);
        update();
    } else if (m_windowDrag) {
        // The whole picture's width of drag is as much as the window was wide.
        dicomio::Window window = m_windowDrag->second;
        const QPointF moved = (at - m_windowDrag->first) / std::max(100, width());
        window.centre += moved.y() * window.width;
        window.width = std::max(1.0, window.width * std::exp(2.0 * moved.x()));
        m_window = window;
        update();
    }
}

void CineView::mouseReleaseEvent(QMouseEvent*) {
    m_scrubbing = false;
    m_panDrag.reset();
    m_windowDrag.reset();
}

void CineView::zoomBy(double factor, const QPointF& at) {
    const double before = m_zoom;
    m_zoom = std::clamp(m_zoom * factor, 0.5, 20.0);
    const QPointF centre = pictureArea().center();
    m_pan = (at - centre) - (at - centre - m_pan) * (m_zoom / before);
    update();
}

void CineView::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (event->modifiers() & Qt::ControlModifier) {
        zoomBy(zoomFactor(event->angleDelta().y()), event->position());
        return;
    }
    constexpr int kNotch = 120;
    m_wheelRest += event->angleDelta().y();
    const int steps = m_wheelRest / kNotch;
    m_wheelRest -= steps * kNotch;
    if (steps != 0 && !holdsFrame()) m_player.step(-steps);
}

} // namespace gauge::app
