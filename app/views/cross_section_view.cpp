#include "app/views/cross_section_view.h"

#include "app/commands/contour_commands.h"
#include "app/drawing/cross_section_drawing.h"
#include "app/drawing/labels.h"
#include "app/drawing/seat_drawing.h"
#include "app/views/shown_section.h"
#include "core/anatomy/refit.h"
#include "core/echo/drawn_contour.h"
#include "core/geometry/planar_contour.h"
#include "core/record/carried_drawing.h"
#include "core/record/drawing_values.h"

#include <QAction>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr double kIsEllipseMm = 0.01; // the smooth line through points of an ellipse strays less

} // namespace

CrossSectionView::CrossSectionView(Session& session, ViewState& state, QWidget* parent)
    : ImageView(session, state, parent) {
    connect(&state, &ViewState::depthChanged, this, [this] { update(); });
    connect(&session.document(), &CaseDocument::changed, this, &CrossSectionView::followRecord);
}

std::optional<SectionMap> CrossSectionView::map() const {
    const auto shown = shownSection(m_session, m_state);
    if (!shown || !m_session.volume()) return std::nullopt;
    // One scale for every depth, so that widths can be compared while scrolling: that of the ostium.
    const double half = std::max(fittingHalfWidthMm(m_session.measurement()->ostium.section),
                                 fittingHalfWidthMm(*shown->section));
    SectionMap where = crossSectionMap(*shown->section, area(), half / m_zoom);
    where.zero += m_offset;
    return where;
}

void CrossSectionView::resetView() {
    m_zoom = 1.0;
    m_offset = {};
    update();
}

std::string CrossSectionView::planeId() const {
    const auto shown = shownSection(m_session, m_state);
    if (!shown || shown->role == Role::Section) return {};
    return std::string(shown->role == Role::Ostium ? core::input::kOstium : core::input::kLanding);
}

std::string CrossSectionView::contourId() const {
    const std::string plane = planeId();
    if (plane.empty() || m_session.ostiumPreview() || m_session.isPreviewing()) return {};
    if (plane == core::input::kLanding && !m_session.isLandingMeasured()) return {};
    return plane == core::input::kOstium ? "ostium" : "landing-1";
}

const core::Entry<core::CorrectedContour>* CrossSectionView::correction() const {
    const auto& contours = m_session.record().contours;
    const auto found = contours.find(contourId());
    return found == contours.end() ? nullptr : &found->second;
}

/// The correction measured, for its line and diameters.
const core::Section* CrossSectionView::corrected(const core::SectionFrame& frame) {
    const auto* entry = correction();
    if (!entry) return nullptr;
    if (!m_corrected || m_correctedRevision != entry->revision || !(m_correctedFrame == frame)) {
        const core::CorrectedContour carried = core::carriedTo(entry->content, frame);
        auto section = core::measureDrawnContour(frame, carried.points);
        m_corrected = section ? std::optional(std::move(*section)) : std::nullopt;
        m_correctedRevision = entry->revision;
        m_correctedFrame = frame;
    }
    return m_corrected ? &*m_corrected : nullptr;
}

void CrossSectionView::drawOver(QPainter& painter, const SectionMap& map) {
    const auto shown = shownSection(m_session, m_state);
    const auto* entry = correction();
    const bool isStale = entry && core::isPlaneMoved(m_session.record(), entry->content);
    if (m_edit && m_editId != contourId()) m_edit.reset();
    const core::Section* byHand = m_edit ? nullptr : corrected(map.frame);
    QString title = shown->title;
    if (byHand) title = tr("%1, contour corrected by hand").arg(shown->title);
    if (byHand && isStale) title = tr("%1, corrected contour stale until confirmed: its plane moved").arg(shown->title);
    const LabelPlaces places = drawCrossSection(painter, area(), map, byHand ? *byHand : *shown->section, shown->role, CrossSectionLabels::Words, title);
    if (const core::Seat* sized = seat(); sized && sized->seated && !m_edit)
        drawSeatLabel(painter, drawSeat(painter, map, *sized->seated), seatLabel(*sized), area(), places);
    if (m_edit) m_edit->draw(painter, area(), map, {}, isStale);
}

bool CrossSectionView::editContour(bool on) {
    m_edit.reset();
    if (on && contourId().empty())
        m_session.say(Message::Kind::Information, tr("The contours of the ostium and of the landing zone can be corrected: show "
                                                     "one of them (key O or L) first."));
    else if (on)
        m_edit.emplace(pointsToEdit());
    m_editId = contourId();
    update();
    return m_edit.has_value();
}

bool CrossSectionView::editEllipse() {
    if (!editContour(true)) return false;
    const auto found = correction() ? core::ellipseOf(core::drawingLine(core::DrawingKind::Area, m_edit->points()))
                                    : core::ellipseOf(shownSection(m_session, m_state)->section->contour);
    if (!found) {
        m_session.say(Message::Kind::Warning, QString::fromStdString(found.error().message));
        return true;
    }
    m_edit.emplace(found->ellipse);
    if (found->rmsDistanceMm > kIsEllipseMm) record(m_edit->points(), 0);
    update();
    return true;
}

/// After undo and the like: what is edited is what the record has.
void CrossSectionView::followRecord(CaseDocument::Part part) {
    const bool concerns = part == CaseDocument::Part::Contours || part == CaseDocument::Part::Everything;
    if (!concerns || !m_edit || m_edit->isGripped() || contourId().empty() || m_editId != contourId()) return;
    const auto points = pointsToEdit();
    if (points == m_edit->points()) return;
    const std::size_t active = m_edit->active();
    const auto ellipse = core::ellipseOf(core::drawingLine(core::DrawingKind::Area, points));
    if (m_edit->isEllipse() && ellipse && ellipse->rmsDistanceMm <= kIsEllipseMm)
        m_edit.emplace(ellipse->ellipse);
    else
        m_edit.emplace(points);
    m_edit->activate(active);
    update();
}

std::vector<Eigen::Vector2d> CrossSectionView::pointsToEdit() const {
    const auto shown = shownSection(m_session, m_state);
    if (const auto* entry = correction()) return core::carriedTo(entry->content, shown->section->frame).points;
    return ContourEdit::handlesOn(shown->section->contour);
}

void CrossSectionView::record(std::vector<Eigen::Vector2d> points, int gesture) {
    const auto shown = shownSection(m_session, m_state);
    const std::string plane = planeId();
    core::CorrectedContour contour{shown->section->frame, std::move(points), plane,
                                   core::revisionOf(m_session.record(), core::input::placeOf(plane))};
    m_session.document().push(std::make_unique<CorrectContour>(m_session.document(), contourId(), std::move(contour), gesture));
    update();
}

void CrossSectionView::refitContour() {
    const auto shown = shownSection(m_session, m_state);
    if (!shown || contourId().empty()) return;
    const auto& frame = shown->section->frame;
    const auto line = core::drawingLine(core::DrawingKind::Area, m_edit ? m_edit->points() : pointsToEdit());
    const auto fitted = core::refitContour(*m_session.volume(), *m_session.measurement(), frame, line);
    if (!fitted) {
        m_session.say(Message::Kind::Warning, QString::fromStdString(fitted.error().message));
        return;
    }
    const bool wasEditing = m_edit.has_value();
    record(core::resampleByArcLength(*fitted, 2 * ContourEdit::kHandles), 0);
    if (wasEditing) editContour(true);
}

void CrossSectionView::restoreContour() {
    if (!correction()) return;
    const bool wasEditing = m_edit.has_value();
    m_session.document().push(std::make_unique<RestoreContour>(m_session.document(), contourId()));
    if (wasEditing) editContour(true);
    update();
}

void CrossSectionView::confirmContour() {
    const auto* entry = correction();
    if (!entry || !core::isPlaneMoved(m_session.record(), entry->content)) return;
    m_session.document().push(std::make_unique<ConfirmContour>(m_session.document(), contourId(),
                                                               shownSection(m_session, m_state)->section->frame));
    update();
}

QList<QAction*> CrossSectionView::contourActions(QObject* parent) {
    QList<QAction*> actions;
    const auto add = [&](const QString& text, const QKeySequence& key, auto act) {
        auto* one = new QAction(text, parent);
        one->setShortcut(key);
        one->setToolTip(tr("%1 (key %2)").arg(text, key.toString(QKeySequence::NativeText)));
        connect(one, &QAction::triggered, this, act);
        actions << one;
    };
    add(tr("Correct the contour by hand, or leave it"), QKeySequence(Qt::Key_E), [this] {
        editContour(!m_edit);
        setFocus();
    });
    add(tr("Correct the contour by an ellipse with handles"), QKeySequence(Qt::ALT | Qt::SHIFT | Qt::Key_E), [this] {
        editEllipse();
        setFocus();
    });
    add(tr("Refit the contour to the image"), QKeySequence(Qt::SHIFT | Qt::Key_E), [this] { refitContour(); });
    add(tr("Restore the contour that was found"), QKeySequence(Qt::CTRL | Qt::Key_E), [this] { restoreContour(); });
    add(tr("Confirm the corrected contour on its moved plane"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E),
        [this] { confirmContour(); });
    return actions;
}

/// Escape: a drag goes back, else editing ends.
void CrossSectionView::cancelDrag() {
    if (!m_edit) return;
    const bool wasGripped = m_edit->isGripped();
    m_edit.reset();
    if (wasGripped) editContour(true);
    update();
}

void CrossSectionView::leftPressed(const QPointF& at) {
    const auto where = map();
    if (!m_edit || !where) return;
    ++m_gesture;
    m_edit->grip(*where, at);
    update();
}

void CrossSectionView::leftMoved(const QPointF& at) {
    const auto where = map();
    if (m_edit && where) m_edit->dragTo(*where, at);
    update();
}

void CrossSectionView::leftReleased(const QPointF&) {
    if (!m_edit || !m_edit->isGripped()) return;
    m_edit->letGo();
    record(m_edit->points(), m_gesture);
}

bool CrossSectionView::event(QEvent* event) {
    if (m_edit && (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress)) {
        auto* key = static_cast<QKeyEvent*>(event);
        const bool moves = key->key() == Qt::Key_Tab || key->key() == Qt::Key_Backtab ||
                           (key->key() >= Qt::Key_Left && key->key() <= Qt::Key_Down);
        if (moves && !(key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier))) {
            event->accept();
            if (event->type() == QEvent::KeyPress) contourKey(*key);
            return true;
        }
    }
    return ImageView::event(event);
}

/// Tab: the next point; arrows: the point by a pixel of the screen, with Shift by a tenth.
bool CrossSectionView::contourKey(QKeyEvent& event) {
    if (!event.isAutoRepeat()) ++m_gesture;
    if (event.key() == Qt::Key_Tab || event.key() == Qt::Key_Backtab) {
        m_edit->activateNext(event.key() == Qt::Key_Tab ? 1 : -1);
        update();
        return true;
    }
    const double step = (event.modifiers() & Qt::ShiftModifier ? 0.1 : 1.0) / map()->pixelsPerMm;
    const Eigen::Vector2d by = event.key() == Qt::Key_Left    ? Eigen::Vector2d(-step, 0)
                               : event.key() == Qt::Key_Right ? Eigen::Vector2d(step, 0)
                               : event.key() == Qt::Key_Up    ? Eigen::Vector2d(0, -step)
                                                              : Eigen::Vector2d(0, step);
    m_edit->nudge(by);
    record(m_edit->points(), m_gesture);
    return true;
}

QString CrossSectionView::emptyText() const {
    return m_session.isMeasuring() ? tr("Measuring …")
                                   : tr("The cross-section appears here once the appendage is measured.");
}

void CrossSectionView::pan(const QPointF& offset) {
    m_offset = offset;
    update();
}

void CrossSectionView::zoom(double factor, const QPointF&) {
    m_zoom = std::clamp(m_zoom * factor, 0.3, 10.0);
    update();
}

void CrossSectionView::scroll(int steps) {
    scrollDepth(m_session, m_state, steps);
}

void CrossSectionView::keyPressEvent(QKeyEvent* event) {
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
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace gauge::app
