#include "core/pressure/pressure_law.h"

#include "core/pressure/priors.h"

#include <algorithm>
#include <cmath>

namespace gauge::core {

namespace {

constexpr double kSlopePressureMmHg = 12.0; // where k is the slope of the logarithmic law

} // namespace

std::string_view word(PressureLaw law) { return law == PressureLaw::Logarithmic ? "log" : "linear"; }

std::optional<PressureLaw> pressureLawFromWord(std::string_view text) {
    if (text == "log") return PressureLaw::Logarithmic;
    if (text == "linear") return PressureLaw::StraightLine;
    return std::nullopt;
}

double pressureTerm(PressureLaw law, double mmHg, double referenceMmHg) {
    const double p = std::max(mmHg, kLeastPressureMmHg);
    const double q = std::max(referenceMmHg, kLeastPressureMmHg);
    return law == PressureLaw::Logarithmic ? kSlopePressureMmHg * std::log(p / q) : p - q;
}

double wideningFactor(const Priors& priors, double mmHg) {
    const double distance =
        std::max({0.0, priors.lowestValidMmHg.value - mmHg, mmHg - priors.highestValidMmHg.value});
    return 1.0 + distance / priors.wideningMmHg.value;
}

double distendingPressure(double meanMmHg, double vWaveMmHg, double share) {
    return std::max(kLeastPressureMmHg, meanMmHg + share * (vWaveMmHg - meanMmHg));
}

} // namespace gauge::core
