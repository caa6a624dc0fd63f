// Mouse and keys of a drawing layer.
#include "app/commands/drawing_commands.h"
#include "app/interaction/drawing_layer.h"
#include "app/interaction/drawing_places.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QWidget>
#include <algorithm>

namespace gauge::app {

bool DrawingLayer::eventFilter(QObject* watched, QEvent* event) {
    if (m_label && watched == m_label) {
        if (event->type() != QEvent::KeyPress || static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape) return false;
        m_label->disconnect(this);
        m_label->deleteLater();
        m_label = nullptr;
        m_view.setFocus();
        return true;
    }
    if (watched != &m_view) return false;
    switch (event->type()) {
    case QEvent::MouseButtonPress:
        return mousePress(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseMove:
        return mouseMove(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseButtonRelease:
        return mouseRelease(*static_cast<QMouseEvent*>(event));
    case QEvent::MouseButtonDblClick:
        return doubleClick(*static_cast<QMouseEvent*>(event));
    case QEvent::KeyPress:
        return keyPress(*static_cast<QKeyEvent*>(event));
    case QEvent::ShortcutOverride: // the window's single keys do not take what is meant for a drawing
        if (!wants(*static_cast<QKeyEvent*>(event))) return false;
        event->accept();
        return true;
    default:
        return false;
    }
}

bool DrawingLayer::mousePress(QMouseEvent& event) {
    if (event.button() != Qt::LeftButton || m_state.armed() || m_state.armedSeptum() || m_host.isBusy() || !m_host.isPicture(event.position()))
        return false;
    ++m_gesture;
    syncTool();
    if (m_tool) {
        pressTool(event.position());
        m_view.update();
        return true;
    }
    if (m_state.tool()) return true; // armed, but this picture cannot be drawn on: no other use of the click
    const QString id = drawingAt(event.position());
    if (id.isEmpty()) {
        if (!m_state.selectedDrawing().isEmpty()) m_state.selectDrawing({});
        return false;
    }
    m_state.selectDrawing(id);
    const core::Drawing drawing = m_session.record().drawings.at(idOf(id)).content;
    if (const auto point = pointAt(drawing, event.position())) {
        m_point = *point;
        Grip grip{id, *point, {}, resited(drawing), false};
        grip.offset = onScreen(m_host.screenFrom(grip.moved), grip.moved.points[*point]) - event.position();
        m_grip = std::move(grip);
    }
    m_view.update();
    return true;
}

bool DrawingLayer::mouseMove(QMouseEvent& event) {
    if (m_grip) {
        const QTransform screen = m_host.screenFrom(m_grip->moved);
        auto& points = m_grip->moved.points;
        const Eigen::Vector2d to = fromScreen(screen, event.position() + m_grip->offset);
        const Eigen::Vector2d by = to - points[m_grip->point];
        if (m_grip->moved.kind == core::DrawingKind::Ellipse && m_grip->point == 0) // the centre takes the ellipse along
            for (auto& p : points)
                p += by;
        else
            points[m_grip->point] = to;
        m_grip->hasMoved = true;
        m_view.update();
        return true;
    }
    if (!m_tool || (event.buttons() & (Qt::RightButton | Qt::MiddleButton))) return false;
    if (const auto at = toolPlace(event.position())) m_tool->move(*at);
    m_view.update();
    return false; // the view still tells the value under the pointer
}

bool DrawingLayer::mouseRelease(QMouseEvent& event) {
    if (event.button() != Qt::LeftButton) return false;
    if (m_grip) {
        Grip grip = std::move(*m_grip);
        m_grip.reset();
        if (grip.moved.kind == core::DrawingKind::Ellipse && grip.moved.points.size() == 3)
            grip.moved.points[2] = core::ellipseSquared(grip.moved.points, unitMmOf(grip.moved));
        if (grip.hasMoved) commitMove(grip.id, std::move(grip.moved), m_gesture);
        m_view.update();
        return true;
    }
    if (!m_tool || m_tool->isEmpty()) return false;
    if (const auto at = toolPlace(event.position())) m_tool->release(*at, toolNear());
    finishTool();
    m_view.update();
    return true;
}

bool DrawingLayer::doubleClick(QMouseEvent& event) {
    if (event.button() != Qt::LeftButton || m_state.armed() || m_state.armedSeptum() || m_host.isBusy() || !m_host.isPicture(event.position()))
        return false;
    if (m_tool) {
        m_tool->finish();
        finishTool();
        m_view.update();
        return true;
    }
    const QString id = drawingAt(event.position());
    if (id.isEmpty()) return false;
    m_grip.reset();
    m_state.selectDrawing(id);
    editLabel();
    return true;
}

bool DrawingLayer::wants(const QKeyEvent& event) const {
    const auto modifiers = event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier);
    if (modifiers != Qt::NoModifier || m_host.isBusy()) return false;
    switch (event.key()) {
    case Qt::Key_Escape:
        return m_state.tool() || m_grip || selected();
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
    case Qt::Key_Backspace:
        return m_state.tool() || selected();
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Delete:
    case Qt::Key_F2:
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
        return m_state.tool() || selected();
    case Qt::Key_N:
        return true;
    default:
        return false;
    }
}

bool DrawingLayer::keyPress(QKeyEvent& event) {
    if (!wants(event)) return false;
    // One press held down is one step of undo, the next press another.
    if (!event.isAutoRepeat()) ++m_gesture;
    syncTool();
    const bool used = m_tool ? toolKey(event) : selectionKey(event);
    if (used) m_view.update();
    return used;
}

namespace {

/// Screen pixels of an arrow key; nothing for other keys.
std::optional<QPointF> arrow(const QKeyEvent& event, double plain, double fine) {
    const double step = event.modifiers() & Qt::ShiftModifier ? fine : plain;
    switch (event.key()) {
    case Qt::Key_Left:
        return QPointF(-step, 0);
    case Qt::Key_Right:
        return QPointF(step, 0);
    case Qt::Key_Up:
        return QPointF(0, -step);
    case Qt::Key_Down:
        return QPointF(0, step);
    default:
        return std::nullopt;
    }
}

} // namespace

bool DrawingLayer::toolKey(QKeyEvent& event) {
    constexpr double kCrosshairStepPx = 8.0, kFineStepPx = 1.0;
    if (const auto step = arrow(event, kCrosshairStepPx, kFineStepPx)) {
        const QPointF middle(m_view.width() / 2.0, m_view.height() / 2.0);
        const QPointF at = m_crosshair.value_or(middle) + *step;
        m_crosshair = QPointF(std::clamp(at.x(), 0.0, m_view.width() - 1.0), std::clamp(at.y(), 0.0, m_view.height() - 1.0));
        if (const auto place = toolPlace(*m_crosshair)) m_tool->move(*place);
        return true;
    }
    switch (event.key()) {
    case Qt::Key_Space:
        if (!m_crosshair) m_crosshair = QPointF(m_view.width() / 2.0, m_view.height() / 2.0);
        pressTool(*m_crosshair);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        m_tool->finish();
        finishTool();
        return true;
    case Qt::Key_Backspace:
        m_tool->takeBack();
        return true;
    case Qt::Key_Escape:
        if (m_tool->isEmpty())
            m_state.armTool(std::nullopt);
        else
            leaveTool();
        return true;
    default:
        return false;
    }
}

bool DrawingLayer::selectionKey(QKeyEvent& event) {
    if (event.key() == Qt::Key_Escape && m_grip) {
        m_grip.reset(); // what was dragged goes back
        return true;
    }
    if (event.key() == Qt::Key_N) {
        selectNext(event.modifiers() & Qt::ShiftModifier ? -1 : 1);
        return true;
    }
    const auto* drawing = selected();
    if (!drawing) return false;
    constexpr double kStepPx = 1.0, kFineStepPx = 0.1;
    if (const auto step = arrow(event, kStepPx, kFineStepPx)) {
        nudge(*step);
        return true;
    }
    const std::size_t count = drawing->points.size();
    switch (event.key()) {
    case Qt::Key_Tab:
        m_point = (m_point + 1) % count;
        return true;
    case Qt::Key_Backtab:
        m_point = (m_point + count - 1) % count;
        return true;
    case Qt::Key_Delete: {
        const std::string id = m_state.selectedDrawing().toStdString();
        m_state.selectDrawing({});
        m_session.document().push(std::make_unique<RemoveDrawing>(m_session.document(), id));
        return true;
    }
    case Qt::Key_F2:
        editLabel();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return confirmSelected();
    case Qt::Key_Escape:
        m_state.selectDrawing({});
        return true;
    default:
        return false;
    }
}

} // namespace gauge::app
