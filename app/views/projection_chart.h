// The views of the C-arm, to look at and to take: dome or curve (drawing/projection_drawing.h).
//
//   pointer over the picture: what that view shows is told · drag, or arrow keys: the C-arm turns with it
//   click or Enter: takes the view
//   arrows: 1°, with Shift 10° · Home: straight from the front · E: onto the edge-on views · Escape: no view
#pragma once

#include "app/drawing/projection_drawing.h"
#include "app/views/kept_ground.h"

#include <QWidget>

namespace gauge::app {

class ProjectionChart : public QWidget {
    Q_OBJECT
public:
    explicit ProjectionChart(ProjectionForm form, QWidget* parent = nullptr);

    /// Pointer and arm of the picture are this widget's own.
    void show(ProjectionPicture picture);
    const ProjectionPicture& picture() const { return m_picture; }
    void setPointer(const std::optional<core::CArmAngles>& view);
    /// Where the C-arm of the simulated radiograph stands.
    void setArm(const std::optional<core::CArmAngles>& view);
    /// In place of the picture while there is nothing to draw.
    void setEmptyText(const QString& text);
    ProjectionMap map() const { return {m_form, QRectF(rect())}; }

    QSize sizeHint() const override { return m_form == ProjectionForm::Dome ? QSize(300, 300) : QSize(420, 300); }
    QSize minimumSizeHint() const override { return m_form == ProjectionForm::Dome ? QSize(180, 170) : QSize(180, 130); }

signals:
    /// Another view is pointed at; nothing when none is.
    void pointed(const std::optional<gauge::core::CArmAngles>& view);
    /// The C-arm is to turn there: by drag or by the keys.
    void held(const gauge::core::CArmAngles& view);
    void taken(const gauge::core::CArmAngles& view);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    static core::CArmAngles edgeOnNear(const core::PatientVector& normal, const core::CArmAngles& view);
    bool event(QEvent* event) override;

private:
    /// The view there, to the whole degree; that of a mark when one is near.
    std::optional<core::CArmAngles> viewUnder(const QPointF& place) const;
    void point(const std::optional<core::CArmAngles>& view);
    /// Points there, and the C-arm turns.
    void hold(const core::CArmAngles& view);
    void forgetGround();

    ProjectionForm m_form;
    ProjectionPicture m_picture;
    QString m_emptyText;
    KeptGround m_ground, m_words; ///< below and above arm and pointer
    std::optional<QPointF> m_pressed;
    bool m_isDrag = false;
};

} // namespace gauge::app
