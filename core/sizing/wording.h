// Numbers inside the sentences of core/sizing. Values themselves stay unrounded.
#pragma once

#include <string>

namespace gauge::core {

std::string mmText(double mm);             ///< "22.5 mm"
std::string mmRange(double lo, double hi); ///< "20.1 to 24.9 mm"
std::string pressureText(double mmHg);     ///< "12 mmHg", "7.5 mmHg"
std::string percentText(double percent);   ///< "11.8 %"
std::string chanceText(double chance);     ///< "63 %", "below 1 %", "above 99 %"

/// How an implant of that nominal size sits in that width: "compressed by 11.8 %", or, where the appendage is the wider of the
/// two, "narrower than the appendage by 1.6 mm". Percent of the nominal size (percent.h); never a negative compression.
std::string compressionText(double nominalMm, double diameterMm);

} // namespace gauge::core
