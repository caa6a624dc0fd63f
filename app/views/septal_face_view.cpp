#include "app/views/septal_face_view.h"

#include "app/format/core_sentences.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace gauge::app {
namespace {

constexpr double kKeyStepMm = 0.5, kKeyLongStepMm = 2.0;

int nextCrossingGesture() {
    static int gesture = 0;
    return ++gesture;
}

} // namespace

SeptalFaceView::SeptalFaceView(SeptumModel& model, QWidget* parent) : QWidget(parent), m_model(model) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Septal face with the map of crossing height and angle"));
    setToolTip(tr("Drag the crossing, or move it with the arrow keys (Shift: larger steps)."));
    connect(&model, &SeptumModel::changed, this, &SeptalFaceView::forgetFace);
}

void SeptalFaceView::setFromRight(bool fromRight) {
    m_look.fromRight = fromRight;
    forgetFace();
}

void SeptalFaceView::forgetFace() {
    m_ground.forget();
    update();
}

/// Theme, size of texts, language: each comes as a change.
void SeptalFaceView::changeEvent(QEvent* event) {
    forgetFace();
    QWidget::changeEvent(event);
}

std::optional<FaceMap> SeptalFaceView::map() const {
    const SeptumState& state = m_model.state();
    if (!state.scene) return std::nullopt;
    return faceMap(state.scene->face, QRectF(rect()), m_look.fromRight);
}

QString SeptalFaceView::emptyText() const {
    const SeptumState& state = m_model.state();
    if (state.isEmpty())
        return tr("Nothing is marked on the septum yet.\n\nMark on the scanner-axis sections, with the buttons above:\n"
                  "1. the rim of the fossa ovalis, at least four points,\n"
                  "2. the mitral annulus, at least three points,\n"
                  "3. where the leaflets meet in systole,\n"
                  "4. the middle of the aortic root.\n\n"
                  "The angle to the appendage follows from its marks (atrium and tip).");
    if (state.marks.fossa.empty())
        return tr("The rim of the fossa ovalis is not marked yet.\n\nMark at least four points around it on the scanner-axis sections, with the "
                  "button above.");
    return sentence(state.scene.error().message);
}

void SeptalFaceView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const SeptumState& state = m_model.state();
    if (state.scene) {
        m_ground.draw(painter, *this, [&](QPainter& ground) {
            m_look.focused = hasFocus();
            ground.fillRect(rect(), tone::panel);
            drawSeptalFace(ground, QRectF(rect()), state, m_look);
        });
        if (m_hover) drawFaceHover(painter, QRectF(rect()), state, *m_hover);
        return;
    }
    painter.fillRect(rect(), tone::panel);
    painter.setPen(tone::soft);
    painter.setFont(font());
    painter.drawText(rect().adjusted(24, 16, -24, -16), Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap, emptyText());
}

void SeptalFaceView::moveTo(const QPointF& pixel) {
    if (const auto where = map()) m_model.choose(where->placeOf(pixel), m_gesture);
}

void SeptalFaceView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
    m_gesture = nextCrossingGesture();
    moveTo(event->position());
}

void SeptalFaceView::mouseMoveEvent(QMouseEvent* event) {
    if (m_gesture != 0 && (event->buttons() & Qt::LeftButton)) moveTo(event->position());
    const auto where = map();
    m_hover.reset();
    if (where) {
        const Eigen::Vector2d place = where->placeOf(event->position());
        if (m_model.state().scene->face.contains(place)) m_hover = place;
    }
    emit hovered(m_hover);
    update();
}

void SeptalFaceView::mouseReleaseEvent(QMouseEvent*) {
    m_gesture = 0;
}

void SeptalFaceView::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? kKeyLongStepMm : kKeyStepMm;
    const double right = m_look.fromRight ? -step : step;
    Eigen::Vector2d by = Eigen::Vector2d::Zero();
    switch (event->key()) {
    case Qt::Key_Left:
        by.x() = -right;
        break;
    case Qt::Key_Right:
        by.x() = right;
        break;
    case Qt::Key_Up:
        by.y() = step;
        break;
    case Qt::Key_Down:
        by.y() = -step;
        break;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    if (m_model.state().scene) m_model.choose(shownPlace(m_model.state()) + by, 0);
}

void SeptalFaceView::leaveEvent(QEvent* event) {
    m_hover.reset();
    emit hovered(std::nullopt);
    update();
    QWidget::leaveEvent(event);
}

void SeptalFaceView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    forgetFace();
}

void SeptalFaceView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    forgetFace();
}

} // namespace gauge::app
