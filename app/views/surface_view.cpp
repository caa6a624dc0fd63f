#include "app/views/surface_view.h"

#include "app/drawing/depth_strip_drawing.h"
#include "app/drawing/mark_roles.h"
#include "app/drawing/labels.h"
#include "app/interaction/drags.h"
#include "app/views/shown_section.h"
#include "core/geometry/frame_turn.h"

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr int kStillMs = 160;
constexpr double kFrameMs = 16.0; // what turning may take without stutter
constexpr double kDegPerPixel = 0.5, kKeyDeg = 5.0, kFineKeyDeg = 1.0, kKeyZoom = 1.2;

} // namespace

SurfaceView::SurfaceView(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state), m_maker(core::appendageSurface),
      m_resetAction(new QAction(tr("Surface: turn back to the long section"), this)),
      m_cutAction(new QAction(tr("Surface: cut open"), this)) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    setAccessibleName(tr("Surface of the blood in atrium and appendage"));
    setToolTip(tr("Drag or arrow keys turn (Shift: finely), Ctrl and wheel or + and − zoom, C cuts it open, Home turns it "
                  "back to the long section."));
    m_still.setSingleShot(true);
    m_still.setInterval(kStillMs);
    connect(&m_still, &QTimer::timeout, this, [this] { update(); });
    connect(m_resetAction, &QAction::triggered, this, &SurfaceView::resetView);
    connect(m_cutAction, &QAction::triggered, this, [this] { setCut(static_cast<Cut>((static_cast<int>(m_cut) + 1) % 3)); });
    connect(&session, &Session::measurementChanged, this, &SurfaceView::remake);
    connect(&session, &Session::landingChanged, this, [this] { moving(); });
    connect(&state, &ViewState::depthChanged, this, [this] {
        m_cut == Cut::CrossSection ? moving() : update();
    });
    connect(&state, &ViewState::turnChanged, this, [this] {
        if (m_cut == Cut::LongSection) moving();
    });
    connect(&m_job, &JobRunner::progressed, this, [this](double share) {
        m_progress = share;
        if (!m_fine) update();
    });
    remake();
}

void SurfaceView::setMaker(Maker maker) {
    m_maker = std::move(maker);
    remake();
}

void SurfaceView::setDrawing(const QString& wish) {
    m_drawer.setWish(wish);
    update();
}

void SurfaceView::setLines(std::vector<SurfaceLine> lines) {
    m_lines = std::move(lines);
    update();
}

void SurfaceView::remake() {
    m_coarse.reset();
    m_fine.reset();
    m_failure.reset();
    m_progress = 0.0;
    m_stamp += 2;
    m_fineFrameMs = 0.0;
    const core::AppendageMeasurement* m = m_session.measurement();
    if (!m || !m_session.images()) {
        m_measured.reset();
        m_oriented = false;
        m_job.drop();
        update();
        return;
    }
    // A copy: the session's own may be replaced while the surface is made.
    m_measured = std::make_shared<const core::AppendageMeasurement>(*m);
    if (!m_oriented) resetView();
    m_job.start<core::AppendageSurface>(
        [maker = m_maker, measured = m_measured, volume = m_session.images()->ct.volume](const core::WorkContext& work) {
            return maker(*volume, *measured, {}, work);
        },
        [this](core::Result<core::AppendageSurface> made) {
            if (made)
                m_fine = std::move(*made);
            else
                m_failure = made.error();
            update();
        });
    update();
}

/// For turning, where the fine surface takes too long.
void SurfaceView::makeCoarse() {
    if (!m_measured || !m_fine || m_coarse || m_job.isRunning() || !m_session.images()) return;
    core::AppendageSurfaceOptions coarse;
    coarse.coarseness = 2;
    m_job.start<core::AppendageSurface>(
        [maker = m_maker, measured = m_measured, volume = m_session.images()->ct.volume, coarse](const core::WorkContext& work) {
            return maker(*volume, *measured, coarse, work);
        },
        [this](core::Result<core::AppendageSurface> made) {
            if (made) m_coarse = std::move(*made); // else the fine one is turned, however slowly
        });
}

void SurfaceView::resetView() {
    m_zoom = 1.0;
    m_offset = {};
    if (const auto* m = m_session.measurement()) {
        m_orientation = longSectionFrame(*m, m_state.turnDeg());
        m_oriented = true;
    }
    update();
}

std::optional<SectionMap> SurfaceView::map() const {
    const auto* m = m_session.measurement();
    if (!m || !m_oriented) return std::nullopt;
    SectionMap where = surfaceMap(*m, m_orientation, QRectF(rect()), m_zoom);
    where.zero += m_offset;
    return where;
}

void SurfaceView::setCut(Cut cut) {
    m_cut = cut;
    update();
}

/// Its normal points to what is left out: towards the viewer.
std::optional<core::Plane> SurfaceView::cutPlane() const {
    const auto* m = m_session.measurement();
    if (!m || m_cut == Cut::Whole) return std::nullopt;
    core::Plane plane;
    if (m_cut == Cut::LongSection)
        plane = longSectionFrame(*m, m_state.turnDeg()).plane();
    else if (const auto shown = shownSection(m_session, m_state))
        plane = shown->section->frame.plane();
    if (plane.normal.dot(m_orientation.normal) > 0.0) plane.normal = -plane.normal;
    return plane;
}

void SurfaceView::moving() {
    m_still.start();
    update();
}

void SurfaceView::turn(double rightDeg, double downDeg) {
    // The near side follows the hand. u right, v down, normal away: right-handed.
    m_orientation = core::turned(m_orientation, m_orientation.v, rightDeg);
    m_orientation = core::turned(m_orientation, m_orientation.u, -downDeg);
    moving();
}

void SurfaceView::zoom(double factor) {
    m_zoom = std::clamp(m_zoom * factor, 0.25, 12.0);
    moving();
}

const core::AppendageSurface* SurfaceView::shown() const {
    if (m_coarse && m_still.isActive() && m_fineFrameMs > kFrameMs) return &*m_coarse;
    return m_fine ? &*m_fine : nullptr;
}

QString SurfaceView::title() const {
    if (m_coarse && shown() == &*m_coarse) return tr("surface, coarser while it moves");
    switch (m_cut) {
    case Cut::Whole:
        break;
    case Cut::LongSection:
        return tr("surface, cut along the long section");
    case Cut::CrossSection:
        return tr("surface, cut along the cross-section");
    }
    return tr("surface of the blood");
}

QString SurfaceView::emptyText() const {
    if (m_session.isMeasuring()) return tr("Measuring …");
    if (!m_session.measurement()) return tr("The surface appears here once the appendage is measured.");
    if (m_failure) return QString::fromStdString(m_failure->message);
    return tr("Making the surface … %1 %").arg(std::lround(100.0 * m_progress));
}

void SurfaceView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::TextAntialiasing);
    const auto where = map();
    const core::AppendageSurface* surface = shown();
    if (!where || !surface) {
        painter.fillRect(rect(), tone::image);
        painter.setFont(labelFont(12));
        painter.setPen(tone::onImageSoft);
        painter.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap, emptyText());
    } else {
        const bool isFine = surface == &*m_fine;
        const SurfaceScene scene{&surface->mesh, &surface->beyondOstium, cutPlane(), m_stamp + (isFine ? 1 : 0)};
        QElapsedTimer clock;
        clock.start();
        const int before = m_drawer.pictures();
        const SurfacePicture& picture = m_drawer.draw(scene, *where, size(), devicePixelRatioF());
        if (isFine && m_drawer.pictures() != before) m_fineFrameMs = 1e-6 * static_cast<double>(clock.nsecsElapsed());
        if (m_fineFrameMs > kFrameMs && !m_coarse && !m_drawer.usesOpenGl())
            QMetaObject::invokeMethod(this, &SurfaceView::makeCoarse, Qt::QueuedConnection);
        painter.drawImage(QPointF(0, 0), picture.image());
        const auto marks = appendageMarks(m_session.record());
        SurfaceOverlay overlay;
        overlay.measurement = m_session.measurement();
        overlay.marks = marks ? &*marks : nullptr;
        overlay.landing = m_session.landingShown();
        if (m_state.depthKind() == ViewState::Depth::Free)
            overlay.shown = nearestProfile(*m_session.measurement(), m_state.cursorMm());
        overlay.lines = m_lines;
        overlay.cutOpen = m_cut != Cut::Whole;
        overlay.title = titlePlate(title(), QRectF(rect()));
        drawSurfaceOverlay(painter, QRectF(rect()), *where, picture, overlay);
    }
    if (m_session.measurement())
        drawTitle(painter, title(), QRectF(rect()));
    if (hasFocus()) {
        painter.setPen(QPen(tone::onImageSoft, 1));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void SurfaceView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        m_dragFrom = event->position();
        setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::MiddleButton) {
        m_panFrom = event->position() - m_offset;
    }
}

void SurfaceView::mouseMoveEvent(QMouseEvent* event) {
    if (m_dragFrom) {
        const QPointF moved = event->position() - *m_dragFrom;
        m_dragFrom = event->position();
        turn(kDegPerPixel * moved.x(), kDegPerPixel * moved.y());
    } else if (m_panFrom) {
        m_offset = event->position() - *m_panFrom;
        moving();
    }
}

void SurfaceView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        m_dragFrom.reset();
        setCursor(Qt::OpenHandCursor);
    } else if (event->button() == Qt::MiddleButton) {
        m_panFrom.reset();
    }
}

void SurfaceView::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (event->modifiers() & Qt::ControlModifier) {
        zoom(zoomFactor(event->angleDelta().y()));
        return;
    }
    constexpr int kNotch = 120;
    m_wheelRest += event->angleDelta().y();
    const int steps = m_wheelRest / kNotch;
    m_wheelRest -= steps * kNotch;
    if (steps != 0) scrollDepth(m_session, m_state, -steps);
}

void SurfaceView::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? kFineKeyDeg : kKeyDeg;
    switch (event->key()) {
    case Qt::Key_Left:
        turn(-step, 0);
        break;
    case Qt::Key_Right:
        turn(step, 0);
        break;
    case Qt::Key_Up:
        turn(0, -step);
        break;
    case Qt::Key_Down:
        turn(0, step);
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(kKeyZoom);
        break;
    case Qt::Key_Minus:
        zoom(1.0 / kKeyZoom);
        break;
    case Qt::Key_PageUp:
        scrollDepth(m_session, m_state, -1);
        break;
    case Qt::Key_PageDown:
        scrollDepth(m_session, m_state, 1);
        break;
    case Qt::Key_Home:
        resetView();
        break;
    case Qt::Key_C:
        if (event->modifiers() == Qt::NoModifier) {
            m_cutAction->trigger();
            break;
        }
        [[fallthrough]];
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace gauge::app
