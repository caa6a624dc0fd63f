// The simulated radiograph: what a fluoroscopy at these angles of the C-arm would show of the CT, with ostium, landing zone,
// circumflex artery, the chosen size and the septal crossing drawn over it through the same camera. While it turns, a coarser picture is
// made in the background, the newest angles next; when nothing has moved for a moment, a sharp one.
//
//   Drag turns the heart; arrow keys move the C-arm by 1° (with Shift 10°); A: type the angles ("RAO 30 CAUD 12"); Home: back to the
//   angles it was given; F: what is filled with contrast medium; right drag: window, W: as found; + − field of view
#pragma once

#include "app/document/session.h"
#include "app/drawing/radiograph_drawing.h"
#include "core/fluoro/c_arm_place.h"
#include "core/volume/radiograph_scene.h"

#include <QAction>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>

class QComboBox;
class QLineEdit;

namespace gauge::app {

class Seats;

/// A fluoroscopic frame whose view is to be simulated.
struct FrameGeometry {
    core::CArm arm; ///< what the file does not tell is 0; its isocentre is never known
    /// Where the middle of the landing zone was drawn on the frame; nothing: it is put in the middle.
    std::optional<Eigen::Vector2d> landingPixel;
    bool operator==(const FrameGeometry& other) const;
};

class RadiographView : public QWidget {
    Q_OBJECT
public:
    /// What is filled with contrast medium.
    enum class Filling { Nothing, Appendage, AtriumAndAppendage, AppendageAlone, AtriumAndAppendageAlone };
    Q_ENUM(Filling)

    explicit RadiographView(Session& session, QWidget* parent = nullptr);

    /// Angles that the C-arm shows: the room's. How the patient lies under it is in the picture.
    const core::CArmAngles& angles() const { return m_angles; }
    /// Turns there; `Home` comes back to them.
    void setAngles(const core::CArmAngles& angles);
    /// Turns there for the moment: `Home` comes back to what was set.
    void turnTo(core::CArmAngles angles);
    /// Simulates a frame's own view: its angles, distances and detector; nothing: the view stands for itself.
    void setFrame(const std::optional<FrameGeometry>& frame);

    Filling filling() const { return m_filling; }
    void setFilling(Filling filling);
    /// A box to choose the filling from; it follows the keys too.
    QComboBox* makeFillingBox(QWidget* parent);
    /// Where a frame does not tell its own; nothing: assumed.
    void setDistances(const std::optional<core::CArmDistances>& distances);
    /// Draws the chosen size where it would sit.
    void setSeats(const Seats& seats);

    /// The C-arm that is wanted now; nothing while there is nothing to simulate.
    std::optional<core::CArm> arm() const;
    /// How the patient lies under the arm; an error says why no view can be simulated.
    core::Result<core::PatientTurn> turn() const;
    /// The picture shown; null while there is none.
    const core::Radiograph* picture() const { return m_picture ? &*m_picture : nullptr; }
    /// True when the picture shown is the sharp one of the angles wanted.
    bool isSharp() const { return m_isSharp; }
    bool isWorking() const { return m_job.isRunning() || m_chamberJob.isRunning() || m_still.isActive(); }
    /// From pixels of the picture shown to those of the view. Precondition: picture().
    QTransform screenFromPixel() const;
    /// What is said below the picture: what is assumed.
    QString note() const;
    /// Why there is no picture; empty when there is one or one is being made.
    QString problem() const;
    QList<QAction*> actions() const { return m_actions; }

    QSize minimumSizeHint() const override { return {160, 150}; }
    /// Whatever was typed: turns there, or says what was not understood.
    void typeAngles(const QString& text);

signals:
    /// By hand or by setAngles().
    void anglesChanged(const gauge::core::CArmAngles& angles);
    void fillingChanged();
    void pictureShown();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    struct Chambers {
        std::shared_ptr<const core::Volume> appendage, both;
    };
    void makeActions();
    void askAngles();
    void refreshChambers();
    void makeChambers();
    /// A coarse picture soon, a sharp one when nothing moves any more.
    void moved();
    void makeCoarse();
    void makeSharp();
    void make(int greatestSide, int everySlice, bool sharp);
    core::RadiographScene scene() const;
    core::PatientPoint aim() const;
    QSizeF fieldPixels() const;
    std::vector<PatientLine> lines() const;
    QString title() const;
    QString fillingWords() const;
    void zoom(double factor);

    Session& m_session;
    core::CArmAngles m_angles{-30.0, -15.0}, m_home{-30.0, -15.0}; ///< a usual working view, from memory
    std::optional<FrameGeometry> m_frame;
    Filling m_filling = Filling::Appendage;
    double m_fieldMm; ///< at the isocentre, across the shorter side
    const Seats* m_seats = nullptr;
    std::optional<core::CArmDistances> m_distances; ///< as the person set them
    std::optional<core::PatientTurn> m_turn;        ///< of the picture that was begun last; nothing: refused

    Chambers m_chambers;
    bool m_chambersAreNew = true; ///< of a measurement whose chambers are not made yet: made when shown
    JobRunner m_chamberJob, m_job;
    std::optional<core::Radiograph> m_picture;
    std::optional<core::Error> m_failure;
    bool m_isSharp = false, m_jobIsSharp = false, m_isMovedSince = false;
    QTimer m_still;
    QImage m_shown;
    std::optional<RadiographWindow> m_window; ///< by hand; nothing: as found in each picture
    RadiographWindow m_found;

    std::optional<QPointF> m_dragFrom;
    core::CArmAngles m_dragAngles;
    std::optional<std::pair<QPointF, RadiographWindow>> m_windowDrag;
    QLineEdit* m_ask;
    QList<QAction*> m_actions;
};

} // namespace gauge::app
