// What is drawn over the surface of the blood: contours of ostium and landing zone, the axis, marks, orientation letters
// and scale bar. What the surface hides is drawn faint.
#pragma once

#include "app/drawing/palette.h"
#include "app/drawing/surface_raster.h"
#include "core/anatomy/appendage.h"

#include <QPainter>
#include <vector>

namespace gauge::app {

/// A line in the patient, such as one of the chosen size, in the style of its role.
struct SurfaceLine {
    Role role = Role::Device;
    std::vector<core::PatientPoint> points;
    QString label;
    bool closed = true;
};

struct SurfaceOverlay {
    const core::AppendageMeasurement* measurement = nullptr;
    const core::AppendageMarks* marks = nullptr;
    const core::LandingZone* landing = nullptr;
    const core::ProfileSection* shown = nullptr; ///< cross-section at a free depth
    std::vector<SurfaceLine> lines;
    bool cutOpen = false; ///< the axis can be seen
    QRectF title; ///< of the view, in its upper left corner
};

/// A map that shows the appendage in the middle of `area`, seen as the long section at that turn is seen.
SectionMap surfaceMap(const core::AppendageMeasurement& measurement, const core::SectionFrame& orientation,
                      const QRectF& area, double zoom);

void drawSurfaceOverlay(QPainter& painter, const QRectF& area, const SectionMap& map, const SurfacePicture& picture,
                        const SurfaceOverlay& overlay);

} // namespace gauge::app
