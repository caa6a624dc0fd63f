// The long section: the plane through the ostium's centre that contains the direction of the axis there, and
// turns about it.
//
//   atrium            ostium                 tip
//      ------------------o------------------->  u: the ostium's normal, to the right; distance from the
//      ostium
//                        |
//                        v  v: downwards, turned about u
#pragma once

#include "app/drawing/grey_image.h"
#include "core/anatomy/appendage.h"
#include "core/sizing/seat.h"

#include <QPainter>
#include <functional>
#include <optional>
#include <vector>

namespace gauge::app {

/// Horizontal axis shared by the long section and the depth strip: the ostium's pixel and the scale.
struct DepthScale {
    double zeroX = 100.0;
    double pixelsPerMm = 8.0;

    double xFromMm(double mm) const { return zeroX + mm * pixelsPerMm; }
    double mmFromX(double x) const { return (x - zeroX) / pixelsPerMm; }
    bool operator==(const DepthScale&) const = default;
};

/// The plane at `turnDeg`; at 0 it contains the tip (or, of a straight axis, points to the feet) and its v
/// points to the feet rather than to the head.
core::SectionFrame longSectionFrame(const core::AppendageMeasurement& measurement, double turnDeg);

struct LongSectionScene {
    const core::AppendageMeasurement* measurement = nullptr;
    const core::AppendageMarks* marks = nullptr; ///< drawn when given
    std::vector<const core::LandingZone*> landings;
    std::optional<double> cursorMm; ///< depth of the shown cross-section, when neither ostium nor landing
    QRectF title;                   ///< of the view, in its upper left corner
    std::function<void(QPainter&)> handles; ///< over the planes, under the words
    const core::Seat* seat = nullptr; ///< the size that is drawn
    std::vector<QRectF> keepFree;   ///< no label is written here: handles
};

/// "landing zone 10.0 mm", "landing zone 10.0 mm, tilted 8.0°", "plug plane, 12.0 mm beyond the ridge".
QString landingWords(const core::LandingZone& landing);

/// Lines and labels over the picture cut with `map` (whose frame is `longSectionFrame`). Labels keep off each other, off the
/// letters of the directions, the scale bar and the title. Returns all these places; the labels come last.
std::vector<QRectF> drawLongSection(QPainter& painter, const QRectF& area, const SectionMap& map,
                     const LongSectionScene& scene);

} // namespace gauge::app
