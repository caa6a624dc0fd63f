#include "app/views/scanner_section_view.h"

#include "app/drawing/labels.h"
#include "app/drawing/mark_roles.h"
#include "app/drawing/marks_drawing.h"
#include "app/drawing/septum_drawing.h"
#include "app/format/quantity.h"
#include "core/record/septum_values.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace gauge::app {
namespace {

/// Extent of the volume along a direction, mm.
double extentMm(const core::Volume& volume, const core::PatientVector& direction) {
    double low = 1e300, high = -1e300;
    for (int corner = 0; corner < 8; ++corner) {
        const Eigen::Vector3d last = (volume.size().array() - 1).cast<double>();
        const Eigen::Vector3d c(corner & 1 ? last.x() : 0, corner & 2 ? last.y() : 0,
                                corner & 4 ? last.z() : 0);
        const double at = volume.patientFrom({c}).mm.dot(direction.mm);
        low = std::min(low, at);
        high = std::max(high, at);
    }
    return high - low;
}

} // namespace

ScannerSectionView::ScannerSectionView(ScannerAxis axis, Session& session, ViewState& state, QWidget* parent)
    : ImageView(session, state, parent), m_axis(axis) {
    const auto repaint = [this] { update(); };
    connect(&state, &ViewState::crossingChanged, this, repaint);
    connect(&state, &ViewState::armedChanged, this, [this] {
        setCursor(m_state.armed() || m_state.armedSeptum() ? Qt::CrossCursor : Qt::ArrowCursor);
        update();
    });
    connect(&session.document(), &CaseDocument::changed, this, repaint);
    connect(&session, &Session::imagesChanged, this, &ScannerSectionView::resetView);
    setObjectName(wordOf(axis));
}

core::PatientPoint ScannerSectionView::middle() const {
    const core::Volume& volume = *m_session.volume();
    return volume.patientFrom({0.5 * (volume.size().array() - 1).cast<double>().matrix()});
}

double ScannerSectionView::fittingPixelsPerMm() const {
    const core::SectionFrame frame = scannerFrame(m_axis, middle());
    const core::Volume& volume = *m_session.volume();
    return std::min(width() / std::max(1.0, extentMm(volume, frame.u)),
                    height() / std::max(1.0, extentMm(volume, frame.v)));
}

std::optional<SectionMap> ScannerSectionView::map() const {
    if (!m_session.volume() || width() < 2 || height() < 2) return std::nullopt;
    // The plane goes through the crossing; the picture stays centred on the volume unless panned.
    const core::SectionFrame frame = scannerFrame(m_axis, m_state.crossing());
    SectionMap where{frame, {}, fittingPixelsPerMm() * m_zoom};
    const Eigen::Vector2d center = frame.sectionFromPatient(middle());
    where.zero = area().center() + m_offset - QPointF(center.x(), center.y()) * where.pixelsPerMm;
    return where;
}

void ScannerSectionView::resetView() {
    m_zoom = 1.0;
    m_offset = {};
    update();
}

void ScannerSectionView::drawOver(QPainter& painter, const SectionMap& map) {
    const QPointF cross = map.fromPatient(m_state.crossing());
    constexpr double kGap = 12.0;
    painter.setPen(QPen(QColor(255, 255, 255, 95), 1));
    painter.drawLine(QPointF(0, cross.y()), QPointF(cross.x() - kGap, cross.y()));
    painter.drawLine(QPointF(cross.x() + kGap, cross.y()), QPointF(width(), cross.y()));
    painter.drawLine(QPointF(cross.x(), 0), QPointF(cross.x(), cross.y() - kGap));
    painter.drawLine(QPointF(cross.x(), cross.y() + kGap), QPointF(cross.x(), height()));
    LabelPlaces places;
    const QRectF head = titlePlate(title(), area());
    places.keepFree(head);
    for (const QRectF& letters : drawOrientation(painter, area(), map.frame, head))
        places.keepFree(letters);
    places.keepFree(drawScaleBar(painter, area(), map.pixelsPerMm));
    std::vector<PlacedMark> marks = placedMarks(m_session.record());
    if (const auto crossing = core::septumPlan(m_session.record()).crossing) marks.push_back({Role::Crossing, *crossing});
    const std::vector<Label> ofMarks = drawPlacedMarks(painter, area(), map, marks);
    const std::vector<Label> ofPoints = drawSeptumPoints(painter, area(), map, core::septumMarks(m_session.record()), m_state.armedSeptum());
    for (const auto& plane : planesIn(m_session, map))
        plane.handles.draw(painter, plane.role(), true);
    for (const auto* words : {&ofPoints, &ofMarks})
        for (const Label& label : *words)
            places.keepFree(around(label.spots.front().anchor, kMarkerReach));
    for (const auto* words : {&ofPoints, &ofMarks})
        for (const Label& label : *words)
            places.draw(painter, label, area());
    if (m_pointer && m_state.armed()) drawMarker(painter, *m_pointer, roleOf(*m_state.armed()), 0.8);
    if (m_pointer && m_state.armedSeptum()) drawSeptumMarker(painter, *m_pointer, *m_state.armedSeptum(), 0.8);
}

QString ScannerSectionView::title() const {
    const core::SectionFrame frame = scannerFrame(m_axis, m_state.crossing());
    const double at = m_state.crossing().mm.dot(frame.normal.mm);
    const double shown = m_axis == ScannerAxis::Sagittal ? -at : at; // positive to the left, back, head
    return wordOf(m_axis) + QLatin1Char(' ') + quantity(shown, Unit::Millimetre);
}

void ScannerSectionView::pan(const QPointF& offset) {
    m_offset = offset;
    update();
}

void ScannerSectionView::zoom(double factor, const QPointF& at) {
    constexpr double kMost = 20.0;
    const double before = m_zoom;
    m_zoom = std::clamp(m_zoom * factor, 0.5, kMost);
    const QPointF arm = at - area().center() - m_offset;
    m_offset -= arm * (m_zoom / before - 1.0); // what is under the pointer stays there
    update();
}

double ScannerSectionView::stepMm() const {
    // Slices are scrolled one by one; the other two axes in steps of about a voxel.
    const Eigen::Vector3d edges = m_session.volume()->edgesMm();
    return m_axis == ScannerAxis::Axial ? edges.z() : std::max(0.5, edges.x());
}

void ScannerSectionView::scroll(int steps) {
    const core::SectionFrame frame = scannerFrame(m_axis, m_state.crossing());
    // Scrolling on goes feet-wards, back-wards, left-wards.
    const double sense = m_axis == ScannerAxis::Coronal ? 1.0 : -1.0;
    const core::PatientPoint next = m_state.crossing() + (sense * steps * stepMm()) * frame.normal;
    if (m_session.volume()->contains(next)) m_state.setCrossing(next);
}

void ScannerSectionView::moveCrossing(const QPointF& at) {
    const auto where = map();
    if (where && m_session.volume()->contains(where->patientFrom(at)))
        m_state.setCrossing(where->patientFrom(at));
}

void ScannerSectionView::cancelDrag() {
    m_plane.reset();
    m_septum.release();
    m_session.dropPreviews();
}

void ScannerSectionView::leftPressed(const QPointF& at) {
    const auto where = map();
    if (where && m_septum.press(m_session, m_state, *where, at)) return;
    if (where && !m_state.armed()) m_plane = PlaneDrag::grip(m_session, *where, at);
    if (m_plane) return;
    if (!m_state.armed()) {
        m_dragging = true;
        moveCrossing(at);
        return;
    }
    const core::PatientPoint point = map()->patientFrom(at);
    if (!m_session.volume()->contains(point)) {
        m_session.say(Message::Kind::Warning, tr("Marks must lie on the images: click inside the picture."));
        return;
    }
    const core::MarkKind kind = *m_state.armed();
    m_state.setCrossing(point);
    m_state.arm(std::nullopt);
    m_session.placeMark(kind, point);
}

void ScannerSectionView::leftMoved(const QPointF& at) {
    m_pointer = at;
    if (m_plane)
        m_plane->moveTo(m_session, at);
    else if (m_septum.isDragging())
        m_septum.move(m_session, *map(), at);
    else if (const auto where = map())
        setToolTip(m_state.armed() || m_state.armedSeptum() ? QString() : PlaneDrag::hint(m_session, *where, at));
    if (m_dragging) moveCrossing(at);
    update();
}

void ScannerSectionView::leftReleased(const QPointF&) {
    if (m_plane) m_plane->record(m_session);
    m_plane.reset();
    m_septum.release();
    m_dragging = false;
}

void ScannerSectionView::leaveEvent(QEvent* event) {
    m_pointer.reset();
    ImageView::leaveEvent(event);
}

void ScannerSectionView::keyPressEvent(QKeyEvent* event) {
    if (!m_session.volume()) return;
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Left:
        scroll(-1);
        break;
    case Qt::Key_Down:
    case Qt::Key_Right:
        scroll(1);
        break;
    case Qt::Key_PageUp:
        scroll(-10);
        break;
    case Qt::Key_PageDown:
        scroll(10);
        break;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        if (const auto where = map(); where && m_pointer) SeptumMarking::remove(m_session, m_state, *where, *m_pointer);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace gauge::app
