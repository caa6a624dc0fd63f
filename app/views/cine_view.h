// One cine or still of echo or X-ray: a frame with play and step, scrubber with beats, window for grey frames, zoom and pan;
// straight lines drawn on it with their lengths; the scale in words with its origin, and its calibration by hand.
//
//   Space plays, "," and "." (or arrows) step, Home and End go to the ends, "[" and "]" change the speed, R repeats,
//   + − 0 zoom, K calibrates; the wheel steps, Ctrl and wheel zooms, middle drag pans, right drag changes the window.
//   While a line is to be drawn: drag, or two clicks; or Ctrl and arrows move a crosshair (with Shift faster), X sets an end.
//   A click on a line selects it, Delete removes it.
#pragma once

#include "app/document/evidence_images.h"
#include "app/document/picture_scale.h"
#include "app/interaction/drags.h"
#include "app/models/cine_player.h"
#include "app/models/view_state.h"

#include <QFrame>
#include <QTransform>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>

class QDoubleSpinBox;
class QLabel;

namespace gauge::app {

/// What two clicks on a picture mean for its scale.
enum class Calibration { KnownLength, CatheterWidth, CatheterShadow };

class CineView : public QWidget {
    Q_OBJECT
public:
    CineView(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent = nullptr);

    void setEvidence(const QString& id);
    const QString& evidence() const { return m_evidence; }
    /// Of the record; null when it has no such evidence.
    const core::Evidence* content() const;
    /// Null while nothing is open.
    const CineData* data() const { return m_cine ? m_cine->data() : nullptr; }
    CinePlayer& player() { return m_player; }
    const CinePlayer& player() const { return m_player; }

    /// The next straight line plays this part. Escape leaves.
    void armLine(core::DrawingRole role);
    void disarm();
    bool isArmed() const { return m_armed; }
    /// Id of the selected drawing; empty for none.
    const std::string& selected() const { return m_selected; }
    void select(const std::string& drawing);
    /// Drawn over the picture, in the view's pixels, under the drawings.
    void setOverlay(std::function<void(QPainter&, const QTransform&)> overlay);
    /// The next click on the picture is handed over as picture coordinates, instead of anything else; empty: none.
    void pickPlace(std::function<void(const Eigen::Vector2d&)> picked);

    /// Two clicks and a typed length make a scale. Escape leaves.
    void startCalibration(Calibration kind);
    bool isCalibrating() const { return m_calibration.has_value(); }
    /// With both marks set: calibrates with this length, mm.
    void finishCalibration(double knownMm);

    QTransform screenFromPixel() const;
    /// What is said of the scale.
    QString scaleText() const;
    /// Why there is no picture; empty when there is one.
    QString problem() const;
    void resetView();

    QSize minimumSizeHint() const override { return {160, 150}; }

signals:
    /// The person has turned to this view.
    void entered();
    void frameShown(int frame);
    void opened();
    /// A line has been drawn, or drawing was given up.
    void disarmed();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void onOpened();
    QImage picture(const CineFrame& frame);
    void hideNames(QImage& image) const;
    QRectF pictureArea() const;
    QRectF scrubberArea() const;
    double frameX(int frame) const;
    void scrubTo(double x);
    void paintScrubber(QPainter& painter);
    void paintWords(QPainter& painter);
    void paintCalibration(QPainter& painter, const QTransform& screen);
    void zoomBy(double factor, const QPointF& at);
    bool isKey(int key) const;
    std::optional<core::Result<core::HandScale>> byHand() const;
    void askLength();
    void leaveCalibration();
    bool showsDrawing(const core::Drawing& drawing) const;
    void paintDrawings(QPainter& painter, const QTransform& screen);
    void paintLine(QPainter& painter, const QPointF& from, const QPointF& to, core::DrawingRole role, bool chosen);
    QString captionOf(const std::string& id, const core::Drawing& drawing) const;
    std::string drawingAt(const QPointF& at) const;
    void setEnd(const Eigen::Vector2d& pixel);
    bool lineKey(QKeyEvent* event);

    struct CalibrationMarks {
        Calibration kind;
        std::vector<Eigen::Vector2d> points;
        int frame = 0;
    };

    Session& m_session;
    ViewState& m_state;
    EvidenceImages& m_images;
    QString m_evidence;
    std::shared_ptr<EvidenceCine> m_cine;
    CinePlayer m_player;
    core::DrawingRole m_role = core::DrawingRole::None;
    bool m_armed = false;
    std::optional<Eigen::Vector2d> m_from;      ///< first end of the line being drawn
    std::optional<Eigen::Vector2d> m_crosshair; ///< where the second end, or the keyboard, stands
    QPointF m_pressedAt;
    std::string m_selected;
    std::function<void(QPainter&, const QTransform&)> m_overlay;
    std::function<void(const Eigen::Vector2d&)> m_picked;
    std::optional<CalibrationMarks> m_calibration;
    std::optional<dicomio::Window> m_window; ///< of grey frames; none: as the file says
    double m_zoom = 1.0;
    QPointF m_pan;
    std::optional<PanDrag> m_panDrag;
    std::optional<std::pair<QPointF, dicomio::Window>> m_windowDrag;
    bool m_scrubbing = false;
    int m_wheelRest = 0;
    QImage m_shown;
    QFrame* m_ask;
    QLabel* m_askText;
    QDoubleSpinBox* m_askMm;
};

} // namespace gauge::app
