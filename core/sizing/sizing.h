// The decision: every size of a chart against everything that was read of one appendage, at the pressure at
// which the chart wants its reading and over the pressures that the implant will live with. Nothing here
// recommends a size: the answer says how well each fits, what that rests on, what would change it, and what
// speaks against it.
#pragma once

#include "core/sizing/chart_question.h"
#include "core/sizing/pressure_change.h"
#include "core/sizing/room_card.h"
#include "core/sizing/size_fit.h"
#include "core/sizing/what_next.h"

namespace gauge::core {

struct SizingQuestion {
    DeviceChart chart;
    std::vector<Observation> observations;
    AppendageFacts facts;
    std::optional<double> decisionPressureMmHg;    ///< absent: the chart's
    std::optional<double> lowestMmHg, highestMmHg; ///< living range; absent: 5 and 20 mmHg, with a notice
    PressureChange cause = PressureChange::Unknown;
    PressureLaw law = PressureLaw::Logarithmic;
    Priors priors;
    PosteriorOptions posterior;
    WhatNextOptions whatNext;
};

/// Widths that the implant will meet if the change of pressure is of that kind: from the decision pressure up
/// to the highest (passing), from the lowest up to the newest measured pressure (lasting); outer ends of the
/// 95 % intervals.
struct LivingWidths {
    PressureChange cause = PressureChange::Passing;
    LivingRange pressures;
    Band interval95Mm;
};

struct SizingAnswer {
    ChartQuestion question;
    DiameterAt diameter; ///< at the decision pressure
    SlopeEstimate slope;
    std::vector<ReadingWeight> weights; ///< one per observation
    std::vector<StatePressure> states;
    LivingRange living;
    std::vector<LivingWidths> livingWidths; ///< one by cause; two when it is unknown
    Band livingInterval95Mm;                ///< around them all
    std::vector<SizeFit> sizes;             ///< one per size of the chart, with its warnings
    std::optional<std::size_t> leading;     ///< the size with the greatest fit chance
    std::vector<Notice> warnings;           ///< about the patient and the readings
    std::vector<Notice> notices;            ///< what was assumed
    std::vector<NextAct> whatNext;
    RoomCard card;
    bool planStopped = false;
    bool sizeMayBeSigned = true;
};

/// @errors InvalidArgument: no decision pressure here nor in the chart; pressures outside 3 to 60 mmHg;
/// lowest not below highest. NothingToSize: no reading answers the chart. ObservationsInvalid: readings that
/// contradict each other. Accuracy: that of core/pressure (quantiles within 2 % of the SD of brute force).
Result<SizingAnswer> sizeImplant(const SizingQuestion& question);

} // namespace gauge::core
