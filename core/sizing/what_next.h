// For each possible next act the chance that it would change the size: readings that the act may give are
// drawn from what is known, the sizes are judged again with each, and the changes are counted. The same input
// gives the same chance.
#pragma once

#include "core/sizing/chart_question.h"

namespace gauge::core {

struct WhatNextOptions {
    int draws = 192;  ///< by act; standard error of a chance at most 0.036. 0 leaves the acts out
    int points = 512; ///< of the model, in each draw
};

enum class Act { MeasurePressure, OneMoreAngle, Echo3d, RemeasureAfterFilling };

const char* name(Act act); ///< "measure-la-pressure", "one-more-angle", "3d-echo", "re-measure-after-filling"

struct NextAct {
    Act act = Act::MeasurePressure;
    double chance = 0.0;
    std::string text; ///< what was simulated, in a sentence
};

/// What an act would add to the readings, before its outcome is known. The acts take place in the state of
/// the latest counted reading; where that reading is from another day (before the procedure), a new echo is
/// one taken today at the decision pressure, and a pressure measured today says less about that day
/// (PressureSource::ProcedureStart).
/// - MeasurePressure: directly. Nothing to gain where it was measured directly already.
/// - OneMoreAngle: another ellipse from probe angles, with its own reading error and the bias that all such
/// readings share.
/// - Echo3d: a contour by 3D echo.
/// - RemeasureAfterFilling: an echo at the decision pressure, or at the least pressure that the chart advises
/// if that is higher.
struct PlannedAct {
    Act act = Act::MeasurePressure;
    bool possible = true;
    std::string text;
    std::string state; ///< whose pressure is measured
    PressureSource source = PressureSource::Direct;
    std::optional<FurtherReading> reading;  ///< none for MeasurePressure
    std::optional<Observation> observation; ///< as it enters the readings, value still to come
};

std::vector<PlannedAct> plannedActs(const DeviceChart& chart, const ChartAnswer& answer,
                                    const std::vector<Observation>& readings);

/// The readings after the act: a pressure of that value for its state, or a further reading of that value.
std::vector<Observation> after(const PlannedAct& act, const std::vector<Observation>& readings, double value);

/// @param leading  the size now.
Result<std::vector<NextAct>> whatNext(const DeviceChart& chart, const ChartAnswer& answer,
                                      const std::vector<Observation>& readings, std::size_t leading,
                                      const WhatNextOptions& options);

/// The size with the greatest fit chance, by fit chance alone.
std::size_t leadingSize(const DeviceChart& chart, const Posterior& posterior);

} // namespace gauge::core
