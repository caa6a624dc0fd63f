// The surface of the blood, lit, to be turned by hand: drag or arrow keys turn it, Ctrl and wheel or + and − zoom, C cuts
// it open along the long section, then along the shown cross-section. Where a frame of the fine surface takes longer than 16 ms,
// a coarser one is drawn while it moves, and the picture says so. The surface is made in the background after each measurement; the newest wins.
#pragma once

#include "app/document/session.h"
#include "app/drawing/surface_drawing.h"
#include "app/models/view_state.h"
#include "app/views/surface_drawer.h"
#include "core/anatomy/appendage_surface.h"

#include <QAction>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>

namespace gauge::app {

class SurfaceView : public QWidget {
    Q_OBJECT
public:
    /// Whole, or without what lies between the viewer and a plane.
    enum class Cut { Whole, LongSection, CrossSection };
    Q_ENUM(Cut)
    /// What makes the surface; tests put another in its place.
    using Maker = std::function<core::Result<core::AppendageSurface>(
        const core::Volume&, const core::AppendageMeasurement&, const core::AppendageSurfaceOptions&,
        const core::WorkContext&)>;

    SurfaceView(Session& session, ViewState& state, QWidget* parent = nullptr);
    void setMaker(Maker maker);
    /// Who draws: see SurfaceDrawer::setWish.
    void setDrawing(const QString& wish);
    const SurfaceDrawer& drawer() const { return m_drawer; }

    QSize minimumSizeHint() const override { return {160, 120}; }
    /// "Turn back to the long section", "Cut open": for the menu.
    QList<QAction*> actions() const { return {m_resetAction, m_cutAction}; }

    void resetView();
    Cut cut() const { return m_cut; }
    void setCut(Cut cut);
    /// Nothing while there is no measurement.
    std::optional<SectionMap> map() const;
    /// The fine surface; null while there is none.
    const core::AppendageSurface* surface() const { return m_fine ? &*m_fine : nullptr; }
    bool isWorking() const { return m_job.isRunning(); }
    /// Lines in the patient over the surface: the outline of the chosen size.
    void setLines(std::vector<SurfaceLine> lines);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void remake();
    void makeCoarse();
    void turn(double rightDeg, double downDeg);
    void zoom(double factor);
    /// Draws coarsely until nothing has moved for a moment.
    void moving();
    std::optional<core::Plane> cutPlane() const;
    /// The surface for this moment; null while there is none.
    const core::AppendageSurface* shown() const;
    QString title() const;
    QString emptyText() const;

    Session& m_session;
    ViewState& m_state;
    Maker m_maker;
    JobRunner m_job;
    std::shared_ptr<const core::AppendageMeasurement> m_measured; ///< what the surfaces were made from
    std::optional<core::AppendageSurface> m_coarse, m_fine;
    std::optional<core::Error> m_failure;
    double m_progress = 0.0;
    SurfaceDrawer m_drawer;
    std::uint64_t m_stamp = 0;   ///< of the coarse surface; the fine one has the next
    double m_fineFrameMs = 0.0; ///< of the fine surface when it was drawn last
    std::vector<SurfaceLine> m_lines;
    core::SectionFrame m_orientation;
    bool m_oriented = false;
    double m_zoom = 1.0;
    QPointF m_offset;
    Cut m_cut = Cut::Whole;
    std::optional<QPointF> m_dragFrom, m_panFrom;
    QTimer m_still;
    QAction *m_resetAction, *m_cutAction;
    int m_wheelRest = 0;
};

} // namespace gauge::app
