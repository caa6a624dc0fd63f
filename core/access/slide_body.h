// How far a body that takes the form of the wall slides along a straight line, and what stops it.
#pragma once

#include "core/access/body_section.h"

namespace gauge::core {

/// What stops a body that slides along the line.
struct SheathStop {
    enum class By {
        Narrow,   ///< by the chart's own measure the section leaves less than the narrowest width
        Aside,    ///< the middle between opposite sides has moved off the line by more than half of what the width gives way
        Indented, ///< wall stands into the section deeper than one side gives way: a trabecula, a strand, a fold
        Ahead,    ///< the wall lies across the line
        Open,     ///< nothing within the box
    } by = By::Open;
    bool atOnce = false; ///< already at t = 0
    double tMm = 0.0;    ///< reach of the body from the origin
    PatientPoint contact; ///< the wall that stops it; meaningless when open
    double leftMm = 0.0; ///< the measure of the section where it is stopped
};

/// The greatest t up to which the body, sliding from t = 0, is stopped by nothing. The section at t = 0 may lie off the line: only what
/// it moves aside from there on counts. A rigid round body of the narrowest width that fits everywhere fits here too.
/// Accuracy: 0.01 mm along the line for the grain's rays.
SheathStop slideBody(const SeatWall& wall, const SheathWalls& around, const BodyLimits& limits);

} // namespace gauge::core
