// The texts that a widget paints, with their places: also those of pictures and plots, which no label holds.
#pragma once

#include <QList>
#include <QRectF>
#include <QString>

class QWidget;

namespace gauge::layout {

struct PaintedText {
    QString text;
    QRectF box;       ///< of its letters, pixels of the widget
    int pixelSize = 0;
};

/// In the order of painting, a line of text at a time; what is scrolled or hidden away is not painted. Spaces are plain.
QList<PaintedText> paintedTexts(QWidget& widget);

} // namespace gauge::layout
