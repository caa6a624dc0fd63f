// A simulated radiograph as a picture, and what of the patient is drawn over it through the same camera: contours, axis, marks,
// lines of a device. Used by the view and by the report.
#pragma once

#include "app/drawing/marks_drawing.h"
#include "app/drawing/palette.h"
#include "core/anatomy/appendage.h"
#include "core/volume/radiograph.h"

#include <QImage>
#include <QPainter>
#include <QTransform>
#include <vector>

namespace gauge::app {

/// Grey as on an X-ray screen: what attenuates more is darker. From `lowMm` (light) to `highMm` (dark), mm of water.
using RadiographWindow = core::AttenuationRange;

/// What a pixel is whose ray meets nothing: outside the CT there is no picture; beside a chamber that is shown alone there is light.
enum class EmptyRay { NoPicture, Light };

QImage radiographImage(const core::Radiograph& picture, const RadiographWindow& window, EmptyRay empty);

/// A line in the patient, or a marked place (one point), in the style of its role.
struct PatientLine {
    Role role = Role::Device;
    std::vector<core::PatientPoint> points;
    bool closed = false;
    QString label; ///< empty: none; one of several lines of a role carries it
};

/// Ostium, landing zone, axis and the mark of the circumflex artery; null: without. What there is, of each.
std::vector<PatientLine> appendageLines(const core::AppendageMeasurement* measurement, const core::LandingZone* landing,
                                        const core::AppendageMarks* marks);

/// @param screenFromPixel  from the camera's pixels to the painter's. Labels keep off each other and inside `area`; nothing is
/// written on `kept`.
void drawPatientLines(QPainter& painter, const QRectF& area, const core::PinholeCamera& camera, const QTransform& screenFromPixel,
                      const std::vector<PatientLine>& lines, const std::vector<QRectF>& kept = {});

} // namespace gauge::app
