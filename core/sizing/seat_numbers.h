// The numbers of one size on one line: what seat.cpp asks again for every line within the placement's spread. Private to
// core/sizing.
#pragma once

#include "core/access/slide_body.h"
#include "core/sizing/seat.h"

#include <optional>
#include <span>
#include <vector>

namespace gauge::core {

/// Dimensions of a size along the line.
struct SeatMeasures {
    BodyLimits limits;
    double nearMm = 0.0, farMm = 0.0; ///< where the chart wants the body's ends, t
    std::optional<double> discRadiusMm;
    double discMm = 0.0; ///< t of the disc's face towards the tip
};
SeatMeasures seatMeasures(const SeatQuestion& question, const ChartSize& size);

struct SeatNumbers {
    SheathStop stop; ///< the rest is empty where this is at once
    double standsBackMm = 0.0;
    std::optional<SeatedBody> seated;
    std::optional<double> beyondCircumflexPercent;
    std::optional<double> coverPercent, overlapMm;
    PatientVector leastOverlapAt;
    std::optional<double> gapSuperiorMm, gapInferiorMm;
    std::vector<double> clearancesMm; ///< one a neighbour
};

/// @param around  the line through the landing zone's middle.
SeatNumbers seatNumbers(const SeatWall& wall, const SheathWalls& around, const SeatQuestion& question, const SeatMeasures& size);

/// The patient's head as it lies square to `direction`, unit; nothing where the line runs within 17 degrees of head to foot.
std::optional<PatientVector> superiorAcross(const PatientVector& direction);

/// Area that a closed polygon and a circle about the origin share, mm2. Exact.
double areaWithinCircle(std::span<const Eigen::Vector2d> polygon, double radiusMm);

} // namespace gauge::core
