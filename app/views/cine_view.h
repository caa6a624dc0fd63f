// One cine or still of echo or X-ray: a frame with play and step, scrubber with beats, window for grey frames, zoom and pan;
// measurements drawn on it; the scale in words with its origin, and its calibration by hand.
//
//   Space plays, "," and "." (or left and right) step, Home and End go to the ends, up and down (or "]" and "[") change the
//   speed, R repeats, + − 0 zoom, K calibrates; the wheel steps, Ctrl and wheel zooms, middle drag pans, right drag changes the window.
//   Drawings: as on the CT (drawing_layer.h), whose keys come first: while a tool is in hand or a drawing is selected, arrows and
//   Space are theirs. While something is being drawn, the frame stays.
#pragma once

#include "app/document/evidence_images.h"
#include "app/document/picture_scale.h"
#include "app/interaction/drags.h"
#include "app/interaction/drawing_layer.h"
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

class CineView : public QWidget, public DrawingHost {
    Q_OBJECT
public:
    CineView(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent = nullptr);

    void setEvidence(const QString& id);
    const QString& evidence() const { return m_evidence; }
    /// Of the record; null when it has no such evidence.
    const core::Evidence* content() const;
    /// SOP Instance UID of the picture: of the evidence, else of the file that is open. Empty while neither tells.
    std::string sopInstanceUid() const;
    /// Null while nothing is open.
    const CineData* data() const { return m_cine ? m_cine->data() : nullptr; }
    CinePlayer& player() { return m_player; }
    /// Stops and shows this frame; as soon as there is one, where the pictures are still being opened.
    void showFrame(int frame);
    const CinePlayer& player() const { return m_player; }

    /// Turns to this view with a straight line in hand that plays this part. Escape leaves.
    void armLine(core::DrawingRole role);
    /// Something is begun on this view and not complete.
    bool isDrawing() const { return m_layer->isDrawing(); }
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

    std::optional<core::Drawing> blank(core::DrawingKind kind) const override;
    bool shows(const core::Drawing& drawing) const override;
    QTransform screenFrom(const core::Drawing&) const override { return screenFromPixel(); }
    bool isPicture(const QPointF& at) const override;
    bool isBusy() const override { return m_calibration.has_value() || m_picked; }

    QSize minimumSizeHint() const override { return {160, 150}; }

signals:
    /// The person has turned to this view.
    void entered();
    void frameShown(int frame);
    void opened();

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
    bool holdsFrame();

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
    std::optional<int> m_wantedFrame; ///< while nothing is open
    DrawingLayer* m_layer;
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
