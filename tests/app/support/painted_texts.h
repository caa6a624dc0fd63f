// The words that a widget paints itself, as plots and pictures do: no label holds them, so they are taken from its painting.
#pragma once

#include <QList>
#include <QRectF>
#include <QString>

class QWidget;

namespace gauge::layout {

struct PaintedText {
    QString text; ///< spaces as plain ones
    QRectF box;   ///< of the letters, in pixels of the widget
    QRectF seen;  ///< what of the box is painted: less where the painter's clip ends it
    double under = 0.0; ///< share of the most covered letter's own pixels that lines, areas or pictures are painted over later, 0 to 1
    int pixelSize = 0;
};

enum class Children { Painted, LeftOut };

/// In the order of painting, a line of text at a time, also of its shown children if they are wanted; what is scrolled or hidden
/// away is not painted.
QList<PaintedText> paintedTexts(QWidget& widget, Children children = Children::Painted);

} // namespace gauge::layout
