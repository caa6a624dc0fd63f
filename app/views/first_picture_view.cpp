#include "app/views/first_picture_view.h"

#include "app/drawing/grey_image.h"
#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

core::SectionImage imageOf(const dicomio::FirstSlice& slice) {
    core::SectionImage image;
    image.grid.columns = slice.columns;
    image.grid.rows = slice.rows;
    image.values.assign(slice.hounsfield.begin(), slice.hounsfield.end());
    return image;
}

/// The slice as large as it fits, in its own proportions.
QRectF fitted(const dicomio::FirstSlice& slice, const QRectF& area) {
    const QSizeF mm(slice.columns * slice.alongRowMm, slice.rows * slice.alongColumnMm);
    QRectF place(QPointF(), mm.scaled(area.size(), Qt::KeepAspectRatio));
    place.moveCenter(area.center());
    return place;
}

} // namespace

FirstPictureView::FirstPictureView(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state) {
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("First picture of the CT that is being loaded"));
    connect(&session, &Session::firstPictureChanged, this, [this] {
        setAccessibleDescription(title());
        update();
    });
    connect(&session, &Session::workChanged, this, [this] { m_share = 0.0; });
    connect(&session, &Session::progressed, this, [this](double share) {
        m_share = share;
        update();
    });
    connect(&state, &ViewState::windowChanged, this, qOverload<>(&QWidget::update));
}

QString FirstPictureView::title() const {
    const FirstPicture* first = m_session.firstPicture();
    if (!first) return {};
    const QString slice = tr("slice %1 of %2").arg(first->slice.number).arg(first->slice.count);
    const QString series = first->description.empty() ? slice : tr("%1 of “%2”").arg(slice, QString::fromStdString(first->description));
    return first->phaseLabel.empty() ? series : tr("%1, phase %2").arg(series, QString::fromStdString(first->phaseLabel));
}

QString FirstPictureView::progressWords() const {
    return tr("%1 % loaded. Measuring begins when all slices are here and their places are proved.")
        .arg(static_cast<int>(std::floor(100.0 * std::clamp(m_share, 0.0, 1.0))));
}

void FirstPictureView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QRectF area(rect());
    painter.fillRect(area, tone::image);
    const FirstPicture* first = m_session.firstPicture();
    if (!first) return;
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(fitted(first->slice, area), greyImage(imageOf(first->slice), m_state.window()));
    const core::SectionFrame frame{{}, {first->slice.rowDirection}, {first->slice.columnDirection},
                                   {first->slice.rowDirection.cross(first->slice.columnDirection)}};
    drawOrientation(painter, area, frame, titlePlate(title(), area));
    drawTitle(painter, title(), area);
    drawLabel(painter, QPointF(area.center().x(), area.bottom() - 26), progressWords(), tone::onImage, LabelSide::Above, area, 13);
}

} // namespace gauge::app
