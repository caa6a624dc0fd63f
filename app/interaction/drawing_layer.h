// The drawings over one picture: shown with label and value, drawn, selected, moved by their points, labelled, removed. A
// view owns a layer, tells it by DrawingHost what it shows, and calls paint() at the end of its own painting; mouse and keys
// reach the layer by themselves (it filters the view's events and leaves what it does not use).
//
//   with a tool armed (ViewState::armTool)   click and drag draw; Enter ends a line, Backspace takes a point back, Escape
//                                            leaves; arrows move a crosshair, Space sets a point there
//   without                                  a click on a drawing selects it, a drag of its point moves it; N / Shift+N
//                                            select the next or previous, Tab its next point, arrows move the point by a
//                                            pixel of the screen (with Shift by a tenth), Delete removes, F2 or a double
//                                            click labels, Enter confirms it on its moved plane, Escape lets go
//   F3 … F8, F9                              put the selected drawing into the table, or take it out (tool_actions.h)
#pragma once

#include "app/document/session.h"
#include "app/drawing/drawn_lines.h"
#include "app/interaction/drawing_tools.h"
#include "app/models/view_state.h"

#include <QObject>
#include <QPointer>
#include <QTransform>
#include <memory>
#include <optional>

class QKeyEvent;
class QLineEdit;
class QMouseEvent;
class QPainter;

namespace gauge::app {

/// What a view tells of the picture that it shows.
class DrawingHost {
public:
    virtual ~DrawingHost() = default;

    /// A drawing of this kind without points on what is shown now: site and evidence filled in. Nothing while nothing is
    /// shown, or where this kind cannot be drawn.
    virtual std::optional<core::Drawing> blank(core::DrawingKind kind) const = 0;
    /// Whether the drawing lies on what is shown now.
    virtual bool shows(const core::Drawing& drawing) const = 0;
    /// From the drawing's coordinates (pixels of a picture, mm of its section) to the view's pixels; affine and invertible.
    virtual QTransform screenFrom(const core::Drawing& drawing) const = 0;
    /// Whether a press of the mouse at this place of the view is for the drawings.
    virtual bool isPicture(const QPointF&) const { return true; }
    /// The view needs mouse and keys for something else at the moment.
    virtual bool isBusy() const { return false; }
};

class DrawingLayer : public QObject {
    Q_OBJECT
public:
    /// `view` and `host` are as a rule the same object; the layer is its child.
    DrawingLayer(Session& session, ViewState& state, DrawingHost& host, QWidget& view);
    ~DrawingLayer() override;

    /// Drawings that the host shows, the selected one with its handles, and what is being drawn.
    void paint(QPainter& painter, const QRectF& area);

    bool isDrawing() const { return m_tool && !m_tool->isEmpty(); }
    /// Gives up what is being drawn; the tool stays in hand.
    void dropBegun();
    /// The drawing under a place of the view, nearest first; empty when there is none.
    QString drawingAt(const QPointF& at) const;
    /// Opens the line in which the selected drawing is labelled.
    void editLabel();
    /// Confirms the selected drawing on the plane that is shown now; true when there was something to confirm.
    bool confirmSelected();

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Grip {
        QString id;
        std::size_t point = 0;
        QPointF offset;      ///< of the point from where it was gripped, view pixels
        core::Drawing moved; ///< as it is while dragged
        bool hasMoved = false;
    };

    bool mousePress(QMouseEvent& event);
    bool mouseMove(QMouseEvent& event);
    bool mouseRelease(QMouseEvent& event);
    bool doubleClick(QMouseEvent& event);
    bool keyPress(QKeyEvent& event);
    bool toolKey(QKeyEvent& event);
    bool selectionKey(QKeyEvent& event);
    bool wants(const QKeyEvent& event) const;

    void syncTool();
    void pressTool(const QPointF& at);
    void finishTool();
    void leaveTool();
    void nudge(const QPointF& step);
    void selectNext(int step);
    void commitMove(const QString& id, core::Drawing moved, int gesture);
    std::optional<Eigen::Vector2d> toolPlace(const QPointF& at) const;
    double toolNear() const;
    core::Drawing resited(core::Drawing drawing) const;
    const core::Drawing* selected() const;
    std::optional<std::size_t> pointAt(const core::Drawing& drawing, const QPointF& at) const;
    Eigen::Vector2d unitMmOf(const core::Drawing& drawing) const;
    QString captionOf(const std::string& id, const core::Drawing& drawing) const;
    QString captionWhileDrawing(const core::Drawing& drawing) const;
    DrawnLine lineOf(const core::Drawing& drawing, bool isSelected, bool isStale, const QString& caption) const;
    void announce();

    Session& m_session;
    ViewState& m_state;
    DrawingHost& m_host;
    QWidget& m_view;
    std::unique_ptr<DrawingTool> m_tool;
    std::optional<core::Drawing> m_toolBlank;
    std::optional<QPointF> m_crosshair; ///< set by the keyboard
    std::optional<Grip> m_grip;
    std::size_t m_point = 0; ///< of the selected drawing, for keys
    int m_gesture = 0;
    QPointer<QLineEdit> m_label;
};

} // namespace gauge::app
