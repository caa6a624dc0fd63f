#include "core/sizing/wording.h"

#include "core/number_text.h"

#include "core/sizing/percent.h"

#include <cmath>

namespace gauge::core {
std::string mmText(double mm) {
    return fixed(mm, 1) + " mm";
}

std::string mmRange(double lo, double hi) {
    return fixed(lo, 1) + " to " + mmText(hi);
}

std::string pressureText(double mmHg) {
    const bool whole = std::abs(mmHg - std::round(mmHg)) < 0.05;
    return fixed(mmHg, whole ? 0 : 1) + " mmHg";
}

std::string percentText(double percent) {
    return fixed(percent, 1) + " %";
}

std::string chanceText(double chance) {
    if (chance < 0.01) return "below 1 %";
    if (chance > 0.99) return "above 99 %";
    return fixed(100.0 * chance, 0) + " %";
}

std::string compressionText(double nominalMm, double diameterMm) {
    if (diameterMm > nominalMm) return "narrower than the appendage by " + mmText(diameterMm - nominalMm);
    return "compressed by " + percentText(compressionPercent(nominalMm, diameterMm));
}

} // namespace gauge::core
