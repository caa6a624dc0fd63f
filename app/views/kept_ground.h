// What a view draws anew only when it has changed, kept as pixels between.
//
//   KeptGround m_ground;
//   void paintEvent(…) { m_ground.draw(painter, *this, [this](QPainter& ground) { drawSlowly(ground); }); drawPointer(painter); }
#pragma once

#include <QPaintEngine>
#include <QPainter>
#include <QPixmap>
#include <QWidget>

namespace gauge::app {

class KeptGround {
public:
    /// What it shows has changed.
    void forget() { m_pixels = {}; }

    /// With the pixels of the last time while they fit the view. On what is not made of pixels `drawing` draws itself: lines and letters
    /// stay lines and letters there.
    template <class Drawing>
    void draw(QPainter& painter, const QWidget& view, const Drawing& drawing) {
        if (painter.paintEngine()->type() != QPaintEngine::Raster) return drawing(painter);
        const QSize size = (QSizeF(view.size()) * view.devicePixelRatioF()).toSize();
        if (m_pixels.size() != size) {
            m_pixels = QPixmap(size);
            m_pixels.setDevicePixelRatio(view.devicePixelRatioF());
            m_pixels.fill(Qt::transparent);
            QPainter ground(&m_pixels);
            drawing(ground);
        }
        painter.drawPixmap(0, 0, m_pixels);
    }

private:
    QPixmap m_pixels;
};

} // namespace gauge::app
