// The depth strip: widths against distance along the axis, under the long section and on the same horizontal axis. With an
// answer: the perimeter-derived width at three pressures, each with its 95 % interval, and the chosen size's outline.
// Without: three widths of the CT, each with the band of its standard uncertainty.
#pragma once

#include "app/drawing/long_section_drawing.h"
#include "app/models/strip_answer.h"

#include <QPainter>
#include <optional>

namespace gauge::app {

/// The three widths of the strip, told apart by line style.
enum class StripCurve { PerimeterDerived, Longest, Shortest };

QString wordOf(StripCurve curve);
QPen penOf(StripCurve curve);
const core::Estimate& estimateOf(const core::Section& section, StripCurve curve);

/// Vertical axis: 0 mm at the bottom of the plot, `topMm` at its top.
struct WidthScale {
    QRectF plot;
    double topMm = 40.0;

    double yFromMm(double mm) const { return plot.bottom() - mm / topMm * plot.height(); }
};

struct DepthStripScene {
    const core::AppendageMeasurement* measurement = nullptr;
    const StripAnswer* answer = nullptr;      ///< widths at three pressures instead of the CT's curves
    std::optional<core::Estimate> usableMm;   ///< straight usable depth beyond the first landing zone
    std::vector<double> landingsMm; ///< the first is the one to drag
    std::optional<double> cursorMm; ///< depth of the shown cross-section
    std::optional<double> hoverMm;
    bool active = false; ///< the landing marker is being dragged or pointed at
};

/// The plot inside a strip of the given area, scaled so that every curve fits.
WidthScale widthScale(const DepthStripScene& scene, const QRectF& area);

/// Paints curves, ostium, landing zones and tip. Curves are drawn where the profile was measured.
void drawDepthStrip(QPainter& painter, const QRectF& area, const DepthScale& depth,
                    const DepthStripScene& scene);

/// The profile section nearest to `mm`, or null when the profile is empty.
const core::ProfileSection* nearestProfile(const core::AppendageMeasurement& measurement, double mm);

} // namespace gauge::app
