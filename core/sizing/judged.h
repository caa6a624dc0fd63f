// Everything that the sentences about a patient are made from. Private to core/sizing.
#pragma once

#include "core/sizing/sizing.h"

namespace gauge::core {

struct Judged {
    const SizingQuestion& question;
    const ChartAnswer& answer;
    LivingRange living;
    WidthsAt widths;
    const std::vector<SizeFit>& fits;
    std::optional<std::size_t> leading;

    bool counts(std::size_t reading) const { return answer.weights[reading].reason.empty(); }
    /// What the readings leave of a state's mean pressure; none for a state of which no reading counts.
    const StatePressure* state(const std::string& name) const {
        for (const StatePressure& s : answer.posterior.states())
            if (s.state == name) return &s;
        return nullptr;
    }
    /// The pressure that was recorded for a state; none where it was not measured.
    std::optional<double> recordedMmHg(const std::string& name) const {
        for (const Observation& o : question.observations)
            if (o.state == name && o.pressureMmHg) return o.pressureMmHg;
        return std::nullopt;
    }
};

/// Two directions in which a size can be wrong because the pressure changed (situation.cpp):
/// undersized-if-pressure-returns, too-large-after-lasting-fall.
void addSituations(const Judged& judged, std::vector<Notice>& warnings);

/// How the sizes compare (choice_warnings.cpp): nothing-fits, between-two-sizes, depth-short-for-all.
void addChoice(const Judged& judged, std::vector<Notice>& warnings);

/// About the readings (reading_warnings.cpp): pressure-unknown, pressure-after-repair-unknown,
/// no-reading-after-repair, read-below-advised-pressure, not-largest-phase, mixed-beats, modalities-disagree,
/// extrapolated, oval-landing-zone, sharp-early-bend.
void addReadings(const Judged& judged, std::vector<Notice>& warnings);

/// What was assumed (sizing_notices.cpp): living-range-assumed, pressure-outside-living-range, phase-unknown,
/// sized-by-2d, depth-unknown, depth-less-landing-offset, slope-mostly-prior, cause-unknown.
void addAssumptions(const Judged& judged, std::vector<Notice>& notices);

} // namespace gauge::core
