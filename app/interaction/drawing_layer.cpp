// What a drawing layer shows, finds and edits. Mouse and keys: drawing_layer_events.cpp.
#include "app/interaction/drawing_layer.h"

#include "app/commands/drawing_commands.h"
#include "app/drawing/palette.h"
#include "app/format/drawing_words.h"
#include "app/interaction/drawing_places.h"
#include "core/record/carried_drawing.h"
#include "core/record/drawing_values.h"

#include <QLineEdit>
#include <QPainter>
#include <QWidget>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr double kPointReachPx = 9.0, kLineReachPx = 6.0, kSamePlacePx = 4.0;

double distanceToSegment(const QPointF& p, const QPointF& a, const QPointF& b) {
    const QPointF d = b - a;
    const double square = QPointF::dotProduct(d, d);
    const double t = square > 0 ? std::clamp(QPointF::dotProduct(p - a, d) / square, 0.0, 1.0) : 0.0;
    const QPointF off = p - a - t * d;
    return std::hypot(off.x(), off.y());
}

Role colourFor(core::DrawingRole role) {
    using enum core::DrawingRole;
    switch (role) {
    case OstiumWidth:
    case OstiumContour:
        return Role::Ostium;
    case LandingWidth:
    case LandingContour:
        return Role::Landing;
    case Depth:
        return Role::Axis;
    default:
        return Role::Drawing;
    }
}

} // namespace

DrawingLayer::DrawingLayer(Session& session, ViewState& state, DrawingHost& host, QWidget& view)
    : QObject(&view), m_session(session), m_state(state), m_host(host), m_view(view) {
    view.installEventFilter(this);
    const auto repaint = [this] { m_view.update(); };
    connect(&state, &ViewState::toolChanged, this, [this] {
        leaveTool();
        m_view.setCursor(m_state.tool() ? Qt::CrossCursor : Qt::ArrowCursor);
        m_view.update();
    });
    connect(&state, &ViewState::drawingSelected, this, [this] {
        m_point = 0;
        announce();
        m_view.update();
    });
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        if (part != CaseDocument::Part::Drawings) return;
        if (m_grip && !m_session.record().drawings.contains(m_grip->id.toStdString())) m_grip.reset();
        m_view.update();
    });
    connect(&session.drawings(), &DrawingRecorder::recorded, this, repaint);
}

DrawingLayer::~DrawingLayer() = default;

const core::Drawing* DrawingLayer::selected() const {
    const auto& drawings = m_session.record().drawings;
    const auto found = drawings.find(idOf(m_state.selectedDrawing()));
    return found != drawings.end() && m_host.shows(found->second.content) ? &found->second.content : nullptr;
}

Eigen::Vector2d DrawingLayer::unitMmOf(const core::Drawing& drawing) const {
    const auto source = m_session.drawings().sourceOf(drawing);
    return source ? core::unitMm(drawing, source->ground) : Eigen::Vector2d::Ones();
}

// --- painting -------------------------------------------------------------------------------------------------------

QString DrawingLayer::captionOf(const std::string& id, const core::Drawing& drawing) const {
    const auto* failure = m_session.drawings().failureOf(id);
    if (failure && failure->code == core::ErrorCode::ScaleMissing) return drawingCaption(drawing, tr("not measured: no scale"));
    if (failure)
        return drawingCaption(drawing, QStringLiteral("–")) + QLatin1Char('\n') + QString::fromStdString(failure->message);
    return drawingCaption(m_session.record(), id);
}

QString DrawingLayer::captionWhileDrawing(const core::Drawing& drawing) const {
    const auto source = m_session.drawings().sourceOf(drawing);
    if (!source) return drawingCaption(drawing, {});
    const auto values = core::measureDrawing(drawing, source->ground);
    return drawingCaption(drawing, values ? drawnValueText(values->front()) : QString());
}

DrawnLine DrawingLayer::lineOf(const core::Drawing& drawing, bool isSelected, bool isStale, const QString& caption) const {
    const QTransform screen = m_host.screenFrom(drawing);
    DrawnLine line;
    for (const auto& p : core::drawingLine(drawing.kind, drawing.points, unitMmOf(drawing)))
        line.line << onScreen(screen, p);
    for (const auto& p : drawing.points)
        line.points << onScreen(screen, p);
    line.closed = core::isClosed(drawing.kind);
    line.selected = isSelected;
    line.stale = isStale;
    line.colour = colourFor(drawing.role);
    line.activePoint = isSelected ? static_cast<int>(m_point) : -1;
    line.caption = caption;
    return line;
}

void DrawingLayer::paint(QPainter& painter, const QRectF& area) {
    syncTool();
    std::vector<DrawnLine> lines;
    for (const auto& [id, entry] : m_session.record().drawings) {
        if (!m_host.shows(entry.content)) continue;
        const bool isSelected = m_state.selectedDrawing().toStdString() == id;
        if (m_grip && m_grip->hasMoved && m_grip->id.toStdString() == id)
            lines.push_back(lineOf(m_grip->moved, true, false, captionWhileDrawing(m_grip->moved)));
        else
            lines.push_back(lineOf(entry.content, isSelected, core::isPlaneMoved(m_session.record(), entry.content),
                                   captionOf(id, entry.content)));
    }
    if (m_tool && m_toolBlank && !m_tool->isEmpty()) {
        core::Drawing preview = *m_toolBlank;
        preview.points = m_tool->shown();
        preview.role = m_state.toolRole();
        lines.push_back(lineOf(preview, true, false, captionWhileDrawing(preview)));
    }
    for (const DrawnLine& line : lines)
        drawDrawnLine(painter, area, line);
    painter.save();
    painter.setClipRect(area);
    drawCaptions(painter, area, lines);
    painter.restore();
    if (m_tool && m_crosshair) drawCrosshair(painter, *m_crosshair);
}

// --- finding --------------------------------------------------------------------------------------------------------

QString DrawingLayer::drawingAt(const QPointF& at) const {
    QString nearest;
    double reach = kLineReachPx;
    for (const auto& [id, entry] : m_session.record().drawings) {
        const core::Drawing& drawing = entry.content;
        if (!m_host.shows(drawing)) continue;
        const QTransform screen = m_host.screenFrom(drawing);
        auto line = core::drawingLine(drawing.kind, drawing.points, unitMmOf(drawing));
        if (core::isClosed(drawing.kind) && !line.empty()) line.push_back(line.front());
        double distance = pointAt(drawing, at) ? 0.0 : 1e9;
        for (std::size_t i = 1; i < line.size(); ++i)
            distance = std::min(distance, distanceToSegment(at, onScreen(screen, line[i - 1]), onScreen(screen, line[i])));
        if (distance > reach) continue;
        reach = distance;
        nearest = QString::fromStdString(id);
    }
    return nearest;
}

std::optional<std::size_t> DrawingLayer::pointAt(const core::Drawing& drawing, const QPointF& at) const {
    const QTransform screen = m_host.screenFrom(drawing);
    std::optional<std::size_t> nearest;
    double reach = kPointReachPx;
    for (std::size_t i = 0; i < drawing.points.size(); ++i) {
        const QPointF off = onScreen(screen, drawing.points[i]) - at;
        if (std::hypot(off.x(), off.y()) > reach) continue;
        reach = std::hypot(off.x(), off.y());
        nearest = i;
    }
    return nearest;
}

// --- drawing --------------------------------------------------------------------------------------------------------

void DrawingLayer::syncTool() {
    const auto kind = m_state.tool();
    if (!kind) {
        if (m_tool) leaveTool();
        return;
    }
    if (m_tool && !m_tool->isEmpty()) return; // a drawing that was begun keeps its ground
    m_toolBlank = m_host.blank(*kind);
    if (!m_toolBlank) {
        m_tool.reset();
        return;
    }
    m_tool = makeTool(*kind, unitMmOf(*m_toolBlank));
}

std::optional<Eigen::Vector2d> DrawingLayer::toolPlace(const QPointF& at) const {
    if (!m_toolBlank) return std::nullopt;
    return fromScreen(m_host.screenFrom(*m_toolBlank), at);
}

double DrawingLayer::toolNear() const {
    const QTransform screen = m_host.screenFrom(*m_toolBlank);
    return kSamePlacePx / std::sqrt(std::abs(screen.determinant()));
}

/// A point set by mouse or key. The first one decides on which axes the drawing lies: where they do not fit its kind, nothing
/// is begun, and the reason is said.
void DrawingLayer::pressTool(const QPointF& at) {
    const auto place = toolPlace(at);
    if (!place) return;
    if (m_tool->isEmpty())
        if (const auto source = m_session.drawings().sourceOf(*m_toolBlank))
            if (const auto can = core::canBegin(m_tool->kind(), source->ground, *place); !can) {
                m_session.say(Message::Kind::Warning, QString::fromStdString(can.error().message));
                return;
            }
    m_tool->press(*place, toolNear());
    finishTool();
}

void DrawingLayer::finishTool() {
    if (!m_tool || !m_tool->isDone()) return;
    core::Drawing drawing = *m_toolBlank;
    drawing.points = m_tool->points();
    drawing.role = m_state.toolRole();
    m_tool.reset();
    m_crosshair.reset();
    const std::string id = core::freshId<core::Drawing>(m_session.record());
    m_session.document().push(std::make_unique<PlaceDrawing>(m_session.document(), id, std::move(drawing)));
    m_state.selectDrawing(QString::fromStdString(id));
    m_state.armTool(std::nullopt);
    if (const auto* failure = m_session.drawings().failureOf(id))
        m_session.say(Message::Kind::Warning, QString::fromStdString(failure->message));
}

void DrawingLayer::dropBegun() {
    if (!isDrawing()) return;
    leaveTool();
    m_view.update();
}

void DrawingLayer::leaveTool() {
    m_tool.reset();
    m_toolBlank.reset();
    m_crosshair.reset();
}

// --- changing -------------------------------------------------------------------------------------------------------

core::Drawing DrawingLayer::resited(core::Drawing drawing) const {
    if (!core::isPlaneMoved(m_session.record(), drawing)) return drawing;
    const auto blank = m_host.blank(drawing.kind);
    const auto* site = blank ? std::get_if<core::SectionSite>(&blank->site) : nullptr;
    return site ? core::carriedTo(std::move(drawing), *site) : drawing;
}

void DrawingLayer::commitMove(const QString& id, core::Drawing moved, int gesture) {
    m_session.document().push(std::make_unique<MoveDrawingPoint>(m_session.document(), id.toStdString(), std::move(moved), gesture));
}

bool DrawingLayer::confirmSelected() {
    const auto* drawing = selected();
    if (!drawing || !core::isPlaneMoved(m_session.record(), *drawing)) return false;
    const auto blank = m_host.blank(drawing->kind);
    const auto* site = blank ? std::get_if<core::SectionSite>(&blank->site) : nullptr;
    if (!site) return false;
    m_session.document().push(
        std::make_unique<ConfirmPlaneOf>(m_session.document(), m_state.selectedDrawing().toStdString(), *site));
    return true;
}

void DrawingLayer::editLabel() {
    const auto* drawing = selected();
    if (!drawing || drawing->points.empty()) return;
    delete m_label.data();
    m_label = new QLineEdit(QString::fromStdString(drawing->label), &m_view);
    m_label->setAccessibleName(tr("Label of the measurement"));
    m_label->setPlaceholderText(tr("Label"));
    m_label->setMinimumWidth(m_label->fontMetrics().averageCharWidth() * 24);
    m_label->adjustSize();
    const QPoint at = onScreen(m_host.screenFrom(*drawing), drawing->points.back()).toPoint();
    m_label->move(std::clamp(at.x() + 8, 0, std::max(0, m_view.width() - m_label->width())),
                  std::clamp(at.y() + 8, 0, std::max(0, m_view.height() - m_label->height())));
    m_label->installEventFilter(this); // Escape
    const std::string id = m_state.selectedDrawing().toStdString();
    connect(m_label, &QLineEdit::editingFinished, this, [this, id] {
        if (!m_label) return;
        const std::string label = m_label->text().trimmed().toStdString();
        m_label->disconnect(this);
        m_label->deleteLater();
        m_label = nullptr;
        if (m_session.record().drawings.contains(id))
            m_session.document().push(std::make_unique<LabelDrawing>(m_session.document(), id, label));
        m_view.setFocus();
    });
    m_label->selectAll();
    m_label->show();
    m_label->setFocus();
}

void DrawingLayer::nudge(const QPointF& step) {
    const auto* drawing = selected();
    if (!drawing || m_point >= drawing->points.size()) return;
    core::Drawing moved = resited(*drawing);
    const QTransform screen = m_host.screenFrom(moved);
    moved.points[m_point] = fromScreen(screen, onScreen(screen, moved.points[m_point]) + step);
    commitMove(m_state.selectedDrawing(), std::move(moved), m_gesture);
}

void DrawingLayer::selectNext(int step) {
    QStringList shown;
    for (const auto& [id, entry] : m_session.record().drawings)
        if (m_host.shows(entry.content)) shown << QString::fromStdString(id);
    if (shown.isEmpty()) return;
    const auto present = shown.indexOf(m_state.selectedDrawing());
    const auto next = present < 0 ? (step > 0 ? 0 : shown.size() - 1) : (present + step + shown.size()) % shown.size();
    m_state.selectDrawing(shown[next]);
}

/// What is selected, for a screen reader.
void DrawingLayer::announce() {
    const auto* drawing = selected();
    m_view.setAccessibleDescription(drawing ? captionOf(m_state.selectedDrawing().toStdString(), *drawing) : QString());
}

} // namespace gauge::app
