// An X-ray frame with its C-arm angles, beside it the radiograph that the CT simulates at the same angles, and below them what was
// drawn on the frame against what the CT predicts there.
//
//   Shift+O, Shift+L, Shift+D draw · K calibrates by a known length, Shift+C by a catheter's two edges, Shift+E by its shadow
#pragma once

#include "app/document/evidence_images.h"
#include "app/models/view_state.h"
#include "app/views/cine_view.h"
#include "app/views/radiograph_view.h"
#include "app/views/when_shown.h"
#include "core/fluoro/width_comparison.h"
#include "core/record/picture_readings.h"

#include <QActionGroup>
#include <QWidget>

class QComboBox;
class QLabel;
class QSplitter;

namespace gauge::app {

class Seats;

class FluoroPage : public QWidget {
    Q_OBJECT
public:
    FluoroPage(Session& session, ViewState& state, EvidenceImages& images, QWidget* parent = nullptr);

    /// Lays the chosen size, where it was planned, over the frame beside the CT's outlines.
    void setSeats(const Seats& seats);

    QList<QAction*> actions() const { return m_actions; }
    CineView& view() { return *m_view; }
    RadiographView& radiograph() { return *m_radiograph; }
    /// What is said beside the frame, without markup.
    QString text() const;
    /// What stands below frame and words.
    void setBelow(QWidget* widget);

signals:
    /// Angles of the C-arm in the frame shown; nothing where the file does not tell them, or no run is shown.
    void anglesShown(const std::optional<gauge::core::CArmAngles>& angles);

protected:
    void hideEvent(QHideEvent* event) override;

private:
    void makeActions();
    void refreshRuns();
    void refreshText();
    void bringUpToDate();
    void goToPlace();
    void drawOutlines(QPainter& painter, const QTransform& screen) const;
    void drawPlannedSize(QPainter& painter, const QTransform& screen) const;
    void refreshRadiograph();
    std::optional<core::CArmAngles> anglesOf(int frame) const;
    /// Of the frame shown, as far as its file tells; nothing without angles.
    std::optional<FrameGeometry> frameGeometry() const;
    /// The drawing of this role on the frame shown, with its length.
    struct Drawn {
        std::string id;
        const core::Drawing* drawing;
        core::Estimate lengthMm;
    };
    std::optional<Drawn> drawn(core::DrawingRole role, int frame) const;
    std::vector<core::PatientPoint> contourOf(core::DrawingRole role) const;
    QString comparisonWords(core::DrawingRole role, const QString& title) const;

    Session& m_session;
    ViewState& m_state;
    const Seats* m_seats = nullptr;
    CineView* m_view;
    RadiographView* m_radiograph;
    QComboBox* m_runs;
    QLabel* m_words;
    QSplitter* m_split;
    QList<QAction*> m_actions;
    QActionGroup* m_roles;
    WhenShown m_upToDate{*this, [this] { bringUpToDate(); }};
};

} // namespace gauge::app
