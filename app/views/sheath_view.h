// The way of the sheath from the crossing to the ostium in the section of the CT through both and the proximal axis.
#pragma once

#include "app/drawing/septum_drawing.h"
#include "app/drawing/sheath_drawing.h"
#include "app/models/septum_model.h"
#include "app/models/view_state.h"

#include <QImage>
#include <QWidget>

namespace gauge::app {

class SheathView : public QWidget {
    Q_OBJECT
public:
    SheathView(SeptumModel& model, ViewState& state, QWidget* parent = nullptr);

    /// Shows the way from this place instead of from the chosen crossing, while there is one.
    void setPlace(const std::optional<Eigen::Vector2d>& place);

    QSize sizeHint() const override { return {300, 240}; }
    QSize minimumSizeHint() const override { return {200, 150}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    SeptumModel& m_model;
    ViewState& m_state;
    std::optional<Eigen::Vector2d> m_place;
};

} // namespace gauge::app
