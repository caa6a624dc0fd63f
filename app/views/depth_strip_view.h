// The depth strip. Dragging the landing-zone marker moves the landing plane; a click elsewhere shows the
// cross-section at that depth; hovering reads the widths.
#pragma once

#include "app/document/session.h"
#include "app/models/strip_answer.h"
#include "app/models/view_state.h"

#include <QWidget>
#include <optional>

namespace gauge::app {

class DepthStripView : public QWidget {
    Q_OBJECT
public:
    DepthStripView(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// From then on the strip shows widths at three pressures as soon as they are known.
    void setAnswers(Answers& answers);
    const StripAnswer* answer() const { return m_answer ? &*m_answer : nullptr; }
    QSize minimumSizeHint() const override { return {290, 150}; }
    /// Pixel of the landing-zone marker; nothing when there is none.
    std::optional<double> landingX() const;

signals:
    /// Depth under the pointer; nothing when it has left.
    void hovered(std::optional<double> mm);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    bool isOnMarker(double x) const;
    void refreshAnswer();
    void setHover(std::optional<double> mm);

    Session& m_session;
    ViewState& m_state;
    Answers* m_answers = nullptr;
    std::optional<StripAnswer> m_answer;
    std::optional<double> m_hover;
    std::optional<double> m_dragFromMm; ///< depth of the marker minus that under the pointer, while dragging
    int m_gesture = 0;
};

} // namespace gauge::app
