// Numbers in messages: with a point whatever the language of the person's system, which printf does not promise.
#pragma once

#include <string>

namespace gauge::core {

/// `value` with so many digits after the point, rounded to nearest: "12.0", "-0.5"; what rounds to zero has no sign.
/// Not a number and infinities come out as "nan", "inf", "-inf".
std::string fixed(double value, int decimals);

/// `value` with at most so many significant digits and no trailing zeros: "0.25", "12", "1e-07".
std::string general(double value, int digits = 6);

} // namespace gauge::core
