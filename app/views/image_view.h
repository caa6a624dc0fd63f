// Base of the views that show a section of the volume: grey picture with cache, window by right drag, pan by
// middle drag, zoom by Ctrl and wheel; drawings on the section; the value under the pointer, and the place under the pointer
// of another view. Derived views say where the section lies and draw over it.
#pragma once

#include "app/document/session.h"
#include "app/drawing/grey_image.h"
#include "app/interaction/drags.h"
#include "app/interaction/drawing_layer.h"
#include "app/models/view_state.h"

#include <QImage>
#include <QWidget>
#include <optional>

namespace gauge::core {
struct Seat;
}

namespace gauge::app {

class Seats;

class ImageView : public QWidget, public DrawingHost {
    Q_OBJECT
public:
    ImageView(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// Where the section lies; nothing when there is nothing to show.
    virtual std::optional<SectionMap> map() const = 0;

    QSize minimumSizeHint() const override { return {160, 140}; }

    /// The chosen size is drawn where it would sit, by the views that draw it.
    void setSeats(const Seats& seats);

    std::optional<core::Drawing> blank(core::DrawingKind kind) const override;
    bool shows(const core::Drawing& drawing) const override;
    QTransform screenFrom(const core::Drawing& drawing) const override;

protected:
    /// Lines and labels over the picture.
    virtual void drawOver(QPainter& painter, const SectionMap& map) = 0;
    /// What to say instead of a picture.
    virtual QString emptyText() const { return {}; }
    /// Name of the view, drawn in its corner.
    virtual QString title() const { return {}; }

    /// Input id of the plane that is shown (core::input), so that what is drawn is stale when it moves; empty for a plane
    /// that stands for itself.
    virtual std::string planeId() const { return {}; }
    /// Something of the view's own is being dragged, which Escape gives up.
    virtual bool isDragging() const { return false; }
    virtual void cancelDrag() {}

    virtual void pan(const QPointF& offset) = 0;
    virtual QPointF panOffset() const = 0;
    virtual void zoom(double factor, const QPointF& at) = 0;
    virtual void scroll(int steps) = 0;
    virtual void leftPressed(const QPointF&) {}
    virtual void leftMoved(const QPointF&) {}
    virtual void leftReleased(const QPointF&) {}

    QRectF area() const { return QRectF(rect()); }
    /// Right end of the title in its corner, pixels; 0 without one.

    /// Corner in which the value under the pointer is told.
    virtual QPointF valueCorner() const { return {width() - 1.0, height() - 14.0}; }

    bool event(QEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

    /// The size to draw; null when there is none.
    const core::Seat* seat() const;

    Session& m_session;
    ViewState& m_state;

private:
    const QImage& picture(const SectionMap& map);
    QString slabWords() const;
    void drawPointer(QPainter& painter, const SectionMap& map);

    struct Key {
        const core::Volume* volume = nullptr;
        core::SectionFrame frame;
        QPointF zero;
        double pixelsPerMm = 0;
        core::Slab slab;
        QSize size;
        double ratio = 0;
    };
    static bool same(const Key& a, const Key& b);

    const Seats* m_seats = nullptr;
    QImage m_picture;
    core::SectionImage m_cut; ///< of m_key; the picture is this in m_shownWindow
    Key m_key;
    GreyWindow m_shownWindow;
    DrawingLayer* m_layer;
    std::optional<QPointF> m_pointerAt; ///< while over this view
    std::optional<WindowDrag> m_windowDrag;
    std::optional<PanDrag> m_panDrag;
    int m_wheelRest = 0;
};

} // namespace gauge::app
