// Labels, points, orientation letters and scale bar: what every image view draws over its picture.
#pragma once

#include "app/drawing/palette.h"
#include "core/geometry/plane.h"

#include <QPainter>
#include <QRectF>
#include <initializer_list>
#include <vector>

namespace gauge::app {

/// Side of an anchor on which a label stands.
enum class LabelSide { Right, Left, Above, Below };

/// Behind labels on pictures of the patient.
inline const QColor kImagePlate{8, 10, 12, 200};

/// Text on a plate beside `anchor`, kept inside `bounds`. Returns the plate.
QRectF drawLabel(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
                 LabelSide side, const QRectF& bounds, int pixelSize = 12, const QColor& plate = kImagePlate);

/// Where drawLabel puts its plate.
QRectF labelPlate(const QPointF& anchor, const QString& text, LabelSide side, const QRectF& bounds, int pixelSize = 12);

/// Labels that keep off each other.
class LabelPlaces {
public:
    /// Nothing is written here.
    void keepFree(const QRectF& place) { m_taken.push_back(place); }
    /// Draws the label on the first side where it covers no other; false, and nothing drawn, where there is none.
    bool draw(QPainter& painter, const QPointF& anchor, const QString& text, const QColor& colour,
              std::initializer_list<LabelSide> sides, const QRectF& bounds, int pixelSize = 12,
              const QColor& plate = kImagePlate);
    const std::vector<QRectF>& taken() const { return m_taken; }

private:
    std::vector<QRectF> m_taken;
};

/// Width of the plate that drawLabel makes for a text.
double labelWidth(const QString& text, int pixelSize = 12);

/// A marked point in the shape of its role: atrium and aorta circle, tip triangle, circumflex square, ridge
/// diamond. Faint when the point lies off the shown plane.
void drawMarker(QPainter& painter, const QPointF& at, Role role, double opacity = 1.0, double radius = 5.0);

/// A line with its dark halo.
void drawHaloLine(QPainter& painter, const QPointF& from, const QPointF& to, const QPen& pen);
void drawHaloPath(QPainter& painter, const QPainterPath& path, const QPen& pen);

/// Letters of the patient's directions at the four edges of a section view (u right, v down). The upper one
/// stands in the middle, or right of `topFrom` where a title takes the middle. Returns where they stand.
std::vector<QRectF> drawOrientation(QPainter& painter, const QRectF& area, const core::SectionFrame& frame,
                     double topFrom = 0.0);

/// A bar of 10 mm (or 1, 5, 20, 50 as it fits) at the lower left. Returns its place with its words.
QRectF drawScaleBar(QPainter& painter, const QRectF& area, double pixelsPerMm);

} // namespace gauge::app
