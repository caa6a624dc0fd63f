#include "app/views/projection_chart.h"

#include "core/fluoro/view_planning.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr double kNearMarkPx = 8.0;

core::CArmAngles wholeDegrees(const core::CArmAngles& view) {
    return {std::round(view.primaryDeg) + 0.0, std::round(view.secondaryDeg) + 0.0};
}

} // namespace

ProjectionChart::ProjectionChart(ProjectionForm form, QWidget* parent) : QWidget(parent), m_form(form) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(form == ProjectionForm::Dome ? tr("Dome of the C-arm's views") : tr("Curve of the C-arm's views"));
    setToolTip(tr("Click or press Enter to take the view; drag to turn the C-arm. Arrows move by 1°, with Shift by 10°; Home: from the "
                  "front; E: edge-on; Escape: no view"));
}

void ProjectionChart::show(ProjectionPicture picture) {
    picture.pointer = m_picture.pointer;
    picture.arm = m_picture.arm;
    m_picture = std::move(picture);
    m_emptyText.clear();
    setAccessibleDescription({});
    forgetGround();
}

void ProjectionChart::setPointer(const std::optional<core::CArmAngles>& view) {
    m_picture.pointer = view;
    update();
}

void ProjectionChart::setArm(const std::optional<core::CArmAngles>& view) {
    if (view == m_picture.arm) return;
    m_picture.arm = view;
    update();
}

void ProjectionChart::forgetGround() {
    m_ground.forget();
    m_words.forget();
    update();
}

void ProjectionChart::resizeEvent(QResizeEvent*) {
    forgetGround();
}

/// Theme, size of texts, language: each comes as a change.
void ProjectionChart::changeEvent(QEvent* event) {
    forgetGround();
    QWidget::changeEvent(event);
}

void ProjectionChart::setEmptyText(const QString& text) {
    m_emptyText = text;
    const auto arm = m_picture.arm;
    m_picture = {};
    m_picture.arm = arm;
    setAccessibleDescription(text);
    update();
}

std::optional<core::CArmAngles> ProjectionChart::viewUnder(const QPointF& place) const {
    const ProjectionMap here = map();
    const ProjectionMark* nearest = nullptr;
    double least = kNearMarkPx;
    for (const ProjectionMark& mark : m_picture.marks)
        if (const auto at = here.placeOf(mark.angles))
            if (const double away = std::hypot(at->x() - place.x(), at->y() - place.y()); away < least) {
                least = away;
                nearest = &mark;
            }
    if (nearest) return nearest->angles;
    const auto view = here.viewAt(place);
    return view ? std::optional(wholeDegrees(*view)) : std::nullopt;
}

void ProjectionChart::point(const std::optional<core::CArmAngles>& view) {
    if (view == m_picture.pointer) return;
    m_picture.pointer = view;
    update();
    emit pointed(view);
}

void ProjectionChart::hold(const core::CArmAngles& view) {
    point(view);
    emit held(view);
}

void ProjectionChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (!m_emptyText.isEmpty()) {
        painter.fillRect(rect(), tone::panel);
        painter.setFont(labelFont(13));
        painter.setPen(tone::soft);
        painter.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap, m_emptyText);
        return;
    }
    m_ground.draw(painter, *this, [this](QPainter& ground) { drawProjectionGround(ground, QRectF(rect()), m_form, m_picture); });
    drawProjectionPointers(painter, QRectF(rect()), m_form, m_picture);
    m_words.draw(painter, *this, [this](QPainter& words) { drawProjectionWords(words, QRectF(rect()), m_form, m_picture); });
    if (!hasFocus()) return;
    painter.setPen(QPen(tone::link, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

void ProjectionChart::mouseMoveEvent(QMouseEvent* event) {
    if (!m_emptyText.isEmpty()) return;
    const auto view = viewUnder(event->position());
    if (!m_pressed) return point(view);
    m_isDrag = m_isDrag || (event->position() - *m_pressed).manhattanLength() >= QApplication::startDragDistance();
    if (view) hold(*view);
}

void ProjectionChart::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_emptyText.isEmpty()) return;
    m_pressed = event->position();
    m_isDrag = false;
    if (const auto view = viewUnder(event->position()))
        hold(*view);
    else
        point(std::nullopt);
}

/// A click takes the view; a drag only looked.
void ProjectionChart::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_pressed) return;
    m_pressed.reset();
    if (m_isDrag || !m_emptyText.isEmpty()) return;
    if (const auto view = viewUnder(event->position())) emit taken(*view);
}

void ProjectionChart::leaveEvent(QEvent*) {
    if (!hasFocus()) point(std::nullopt);
}

/// The window's own shortcuts must not take the keys of the picture.
bool ProjectionChart::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        for (const int own : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down, Qt::Key_Home, Qt::Key_E, Qt::Key_Return, Qt::Key_Enter})
            if (key == own && !(static_cast<QKeyEvent*>(event)->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
                event->accept();
                return true;
            }
    }
    return QWidget::event(event);
}

/// The edge-on view at the same primary angle; of a plane that has none there, the nearest one.
core::CArmAngles ProjectionChart::edgeOnNear(const core::PatientVector& normal, const core::CArmAngles& view) {
    if (const auto secondary = core::edgeOnSecondaryDeg(normal, view.primaryDeg)) return {view.primaryDeg, *secondary};
    constexpr int kViews = 1440; // a quarter of a degree apart
    const auto curve = core::edgeOnCurve(normal, kViews);
    const core::PatientVector beam = core::beamDirection(view);
    return *std::max_element(curve.begin(), curve.end(), [&](const core::CArmAngles& a, const core::CArmAngles& b) {
        return core::beamDirection(a).dot(beam) < core::beamDirection(b).dot(beam);
    });
}

void ProjectionChart::keyPressEvent(QKeyEvent* event) {
    if (!m_emptyText.isEmpty()) return QWidget::keyPressEvent(event);
    const double step = event->modifiers() & Qt::ShiftModifier ? 10.0 : 1.0;
    const bool from = m_picture.pointer.has_value();
    core::CArmAngles view = m_picture.pointer.value_or(core::CArmAngles{});
    const auto move = [&](double primary, double secondary) {
        if (from) view = {std::clamp(std::round(view.primaryDeg + primary), -90.0, 90.0), std::clamp(std::round(view.secondaryDeg + secondary), -90.0, 90.0)};
        hold(view);
    };
    switch (event->key()) {
    case Qt::Key_Left:
        return move(-step, 0);
    case Qt::Key_Right:
        return move(step, 0);
    case Qt::Key_Up:
        return move(0, step);
    case Qt::Key_Down:
        return move(0, -step);
    case Qt::Key_Home:
        return hold(core::CArmAngles{});
    case Qt::Key_Escape:
        if (!from) break;
        return point(std::nullopt);
    case Qt::Key_E:
        if (!m_picture.lines.empty()) hold(edgeOnNear(m_picture.lines.front().normal, view));
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_picture.pointer) emit taken(*m_picture.pointer);
        return;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

} // namespace gauge::app
