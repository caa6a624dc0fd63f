// Readings sorted for the model: which count, by which state and kind, and what is known of each state's pressure.
// Private to core/pressure.
#pragma once

#include "core/pressure/observation.h"
#include "core/pressure/priors.h"
#include "core/result.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace gauge::core {

/// Mean pressure of one state before any width is read: normal, mmHg.
struct PressureState {
    std::string name;
    double meanMmHg = 0.0;
    double sdMmHg = 0.0;
    bool measured = false;
    std::optional<double> vWaveMmHg;
    bool phaseMatters = false; ///< some counted reading of unknown phase has a v wave beside it
};

/// A reading that counts.
struct CountedReading {
    std::size_t index = 0; ///< among the observations
    std::size_t state = 0;
    int kind = -1; ///< into PreparedReadings::kinds; -1: a CT contour
    Phase phase = Phase::Unknown;
    double valueMm = 0.0; ///< on the contour's scale
    double standardUncertaintyMm = 0.0;
};

/// Readings of one kind share one bias.
struct ReadingKind {
    Modality modality = Modality::Echo2d;
    Derivation derivation = Derivation::EllipseFromAngles;
    SpreadPrior bias;
};

struct PreparedReadings {
    std::vector<PressureState> states;
    std::vector<CountedReading> counted;
    std::vector<ReadingKind> kinds;
    std::vector<std::string> reasons; ///< per observation: why it does not count, or empty
    std::vector<Notice> notices;
};

/// @errors as core::posterior.
Result<PreparedReadings> prepareReadings(std::span<const Observation>, Quantity, const Priors&);

/// "2D echo (ellipse from probe angles), 23.1 mm, state \"repaired\""
std::string describe(const Observation&);

/// Number for a sentence, with that many decimals and no trailing zeros.
std::string numberText(double value, int decimals = 1);

} // namespace gauge::core
