// The septal face with its map. The crossing is dragged with the mouse, or moved with the arrow keys (0.5 mm, with Shift 2 mm);
// values under the pointer are told beside it.
#pragma once

#include "app/drawing/septum_drawing.h"
#include "app/models/septum_model.h"
#include "app/views/kept_ground.h"

#include <QWidget>

namespace gauge::app {

class SeptalFaceView : public QWidget {
    Q_OBJECT
public:
    explicit SeptalFaceView(SeptumModel& model, QWidget* parent = nullptr);

    bool isFromRight() const { return m_look.fromRight; }
    void setFromRight(bool fromRight);
    /// Where a place of the face is drawn; nothing while there is no face.
    std::optional<FaceMap> map() const;

    QSize sizeHint() const override { return {420, 380}; }
    QSize minimumSizeHint() const override { return {240, 220}; }

signals:
    /// The place under the pointer within the fossa, or nothing.
    void hovered(std::optional<Eigen::Vector2d> place);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// Draws the face anew when it is shown next.
    void forgetFace();
    void moveTo(const QPointF& pixel);
    QString emptyText() const;

    SeptumModel& m_model;
    FaceLook m_look;
    std::optional<Eigen::Vector2d> m_hover; ///< values are told here
    KeptGround m_ground;                    ///< the face, without what the pointer tells
    int m_gesture = 0; ///< while dragging
};

} // namespace gauge::app
