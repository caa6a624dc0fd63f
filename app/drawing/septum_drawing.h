// The septal face with its map. Used by the page, the report and the pictures of the program alike.
//
// The map: lines of equal height (solid, labelled in mm over the named datum), bands of equal angle (fill of one hue, dotted lines
// labelled in degrees; the limit dashed), the outline of the fossa, the region that serves (hatched and labelled), the crossing.
#pragma once

#include "app/drawing/grey_image.h"
#include "app/drawing/labels.h"
#include "app/drawing/palette.h"
#include "app/models/septum_point.h"
#include "app/models/septum_state.h"

#include <QPainter>
#include <QRectF>
#include <optional>
#include <vector>

namespace gauge::app {

/// From the face's frame to pixels: v up; seen from the left atrium u to the right, from the right atrium mirrored.
struct FaceMap {
    QPointF zero;
    double pixelsPerMm = 10.0;
    bool fromRight = false;

    QPointF from(const Eigen::Vector2d& place) const {
        return {zero.x() + (fromRight ? -1.0 : 1.0) * place.x() * pixelsPerMm, zero.y() - place.y() * pixelsPerMm};
    }
    Eigen::Vector2d placeOf(const QPointF& pixel) const {
        return {(fromRight ? -1.0 : 1.0) * (pixel.x() - zero.x()) / pixelsPerMm, (zero.y() - pixel.y()) / pixelsPerMm};
    }
};

/// The outline with room for its labels, in the middle of `area`.
FaceMap faceMap(const core::SeptalFace& face, const QRectF& area, bool fromRight);

/// How the face is looked at.
struct FaceLook {
    bool fromRight = false;
    bool focused = false;                 ///< the keys move the crossing
};

/// Where the signs of crossing and proposal stand, and the labels: none of these lies over another, or over a sign.
struct FacePlaces {
    std::vector<QRectF> signs, labels;
};

/// Precondition: state.scene.
FacePlaces drawSeptalFace(QPainter& painter, const QRectF& area, const SeptumState& state, const FaceLook& look);
/// What is told of the place under the pointer, in the upper right corner: over the face, which need not be drawn again.
void drawFaceHover(QPainter& painter, const QRectF& area, const SeptumState& state, const Eigen::Vector2d& place);

/// What the lines and the fill mean, for beside or below the map.
QString faceLegend(const SeptumState& state);
/// Values at a place: both heights, angle, distance; one line each.
QStringList faceValues(const core::CrossingValues& values);

/// The place shown when none is chosen: the answer's, else the middle of the fossa.
Eigen::Vector2d shownPlace(const SeptumState& state);

/// Marked points over a scanner-axis section, each kind in its shape: annulus circle, coaptation cross, fossa square, root circle with
/// a cross. Full near the plane, faint farther off. Returns the words and numbers of the armed kind, to be written when all is drawn.
std::vector<Label> drawSeptumPoints(QPainter& painter, const QRectF& area, const SectionMap& map, const core::SeptumMarks& marks,
                                    std::optional<SeptumPoint> armed);
void drawSeptumMarker(QPainter& painter, const QPointF& at, SeptumPoint kind, double opacity = 1.0, Ground ground = Ground::Image);

} // namespace gauge::app
