// An echo frame beside the CT cut in the frame's own plane, at the same size; where the probe was is fitted to places that are
// marked in both. Below, why CT and echo differ: the difference taken apart into plane, pressure, modality and the rest.
#pragma once

#include "app/document/evidence_images.h"
#include "app/drawing/labels.h"
#include "app/models/view_state.h"
#include "app/views/cine_view.h"
#include "app/views/when_shown.h"
#include "core/echo/probe_pose.h"
#include "core/echo/same_cut.h"
#include "core/echo/view_coordinates.h"
#include "core/pressure/difference_split.h"

#include <QPainterPath>
#include <QWidget>

class QComboBox;
class QLabel;

namespace gauge::app {

/// The parts of a difference as one signed bar, each with its words.
class DifferenceBar : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    void setSplit(const std::optional<core::DifferenceSplit>& split);
    const std::optional<core::DifferenceSplit>& split() const { return m_split; }
    QSize sizeHint() const override { return {400, 34}; }
    QSize minimumSizeHint() const override { return {200, 34}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<core::DifferenceSplit> m_split;
};

class Seats;

class SameCutPage : public QWidget {
    Q_OBJECT
public:
    SameCutPage(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent = nullptr);

    /// Lays the chosen size, where it was planned, over the echo frame and the CT.
    void setSeats(const Seats& seats);

    QList<QAction*> actions() const { return m_actions; }
    CineView& view() { return *m_view; }
    const DifferenceBar& bar() const { return *m_bar; }
    /// Where the probe was, or why that is not known; of the moment that is shown.
    core::Result<core::ProbePose> pose() const;
    /// The CT cut's frame in the plane of the echo frame; nothing without a pose or a probe angle.
    std::optional<core::SectionFrame> cutFrame() const;
    QString text() const;
    /// The next click on the echo frame marks the place in CT that is chosen.
    void markLandmark();
    /// Adds a landmark; undoable.
    void addLandmark(const core::PatientPoint& ct, const Eigen::Vector2d& echoPixel, const QString& label);

private:
    class CutView;
    void refresh() { m_upToDate.want(); }
    void bringUpToDate();
    void refreshViews();
    void goToPlace();
    QString mostMarked() const;
    std::optional<core::ViewCoordinates> coordinatesOf(const std::string& evidence) const;
    std::optional<core::DifferenceSplit> split(const core::Result<core::ProbePose>& pose, QString& words) const;
    std::string moment() const;
    std::vector<core::EchoLine> landingLines() const;
    QString depthWords(const core::ProbePose& pose) const;
    QPainterPath drawPlannedSize(QPainter& painter, const QTransform& screen) const;
    LabelPlaces drawLandmarks(QPainter& painter, const QTransform& screen) const;

    Session& m_session;
    ViewState& m_state;
    EvidenceImages& m_images;
    const Seats* m_seats = nullptr;
    QList<QAction*> m_actions;
    QComboBox* m_views;
    QComboBox* m_places;
    CineView* m_view;
    bool m_chosen = false; ///< the view, by the person; else it follows what is marked
    CutView* m_cut;
    DifferenceBar* m_bar;
    QLabel* m_words;
    WhenShown m_upToDate{*this, [this] { bringUpToDate(); }};
};

} // namespace gauge::app
