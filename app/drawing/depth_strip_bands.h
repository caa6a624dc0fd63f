// The part of the depth strip that answers: widths at three pressures as bands, the chosen size's outline inside them.
#pragma once

#include "app/drawing/long_section_drawing.h"
#include "app/models/strip_answer.h"

#include <QPainter>
#include <QPen>

namespace gauge::app {

struct WidthScale;

/// Line of a band's median, told apart by its style.
QPen penOf(StripBand band);

/// Bands from lowest to highest pressure; the decision's on top.
void drawBands(QPainter& painter, const WidthScale& widths, const DepthScale& depth, const StripAnswer& answer);

/// The chosen size, compressed to the width at the decision pressure, its disc before it.
void drawDevice(QPainter& painter, const WidthScale& widths, const DepthScale& depth, const core::DeviceOutline& device);

/// Greatest width that is drawn, mm.
double greatestWidthMm(const StripAnswer& answer);

} // namespace gauge::app
