// How a diameter follows the pressure that distends the appendage.
//
//   logarithmic   D(p) = D(q) + k 12 mmHg ln(p / q)      gain falls as pressure rises
//   straight      D(p) = D(q) + k (p - q)
//
// with k the slope at 12 mmHg in both. The logarithm is an assumption (curvilinear loading curves in dogs); the
// straight line is offered beside it. Both hold for 3 mmHg and more: lower pressures count as 3.
#pragma once

#include <optional>
#include <string_view>

namespace gauge::core {

struct Priors;

enum class PressureLaw { Logarithmic, StraightLine };

/// "log", "linear"
std::string_view word(PressureLaw);
std::optional<PressureLaw> pressureLawFromWord(std::string_view);

/// (D(p) - D(reference)) / k in mmHg; both pressures in mmHg and cut at 3.
double pressureTerm(PressureLaw, double mmHg, double referenceMmHg);

/// By how much the SD of the pressure term grows at that pressure: 1 in the valid range, 1 + distance / 10 outside.
double wideningFactor(const Priors&, double mmHg);

/// Distending pressure of a reading: mean + share (v - mean), cut at 3 mmHg.
double distendingPressure(double meanMmHg, double vWaveMmHg, double share);

} // namespace gauge::core
