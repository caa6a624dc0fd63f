// Words on plates beside what they name, in pictures and plots.
#pragma once

#include "app/drawing/palette.h"

#include <QPainter>
#include <QRectF>
#include <QString>
#include <initializer_list>
#include <vector>

namespace gauge::app {

/// Side of an anchor on which a label stands.
enum class LabelSide { Right, Left, Above, Below };

/// Behind labels on pictures of the patient.
inline const QColor kImagePlate{8, 10, 12, 200};

/// Width of the plate that drawLabel makes for a text on one line.
double labelWidth(const QString& text, int pixelSize = 12);

/// Where drawLabel puts its plate: inside `bounds`; a text wider than these is wrapped between its words.
QRectF labelPlate(const QPointF& anchor, const QString& text, LabelSide side, const QRectF& bounds, int pixelSize = 12);

/// Text on a plate beside `anchor`, kept inside `bounds`. Returns the plate.
QRectF drawLabel(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
                 LabelSide side, const QRectF& bounds, int pixelSize = 12, const QColor& plate = kImagePlate);

/// The room of a sign that reaches `reach` pixels from its middle.
inline QRectF around(const QPointF& middle, double reach) {
    return {middle - QPointF(reach, reach), QSizeF(2 * reach, 2 * reach)};
}

/// The title of a view, at its upper left.
QRectF titlePlate(const QString& title, const QRectF& area, int pixelSize = 12);
QRectF drawTitle(QPainter& painter, const QString& title, const QRectF& area, const QColor& colour = tone::onImage, int pixelSize = 12);

/// A label, and where it may stand: at each place in turn, on each of its sides; then farther up and down.
struct Label {
    struct Spot {
        QPointF anchor;
        std::vector<LabelSide> sides;
    };
    QString text;
    QColor colour;
    std::vector<Spot> spots;
    int pixelSize = 12;
    QColor plate = kImagePlate;
};

/// Labels that keep off each other. They are drawn when all lines are, so that none lies under one.
class LabelPlaces {
public:
    /// Nothing is written here.
    void keepFree(const QRectF& place) { m_taken.push_back(place); }
    /// Draws the label on the first side where it covers no other; false, and nothing drawn, where there is none.
    bool draw(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
              std::initializer_list<LabelSide> sides, const QRectF& bounds, int pixelSize = 12,
              const QColor& plate = kImagePlate);
    bool draw(QPainter& painter, const Label& label, const QRectF& bounds);
    const std::vector<QRectF>& taken() const { return m_taken; }

private:
    std::vector<QRectF> m_taken;
};

} // namespace gauge::app
